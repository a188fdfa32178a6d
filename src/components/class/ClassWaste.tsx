import type { ClassSheet } from "../../engine/planning/class/class-sheet.ts";
import { STRAIGHT } from "../../engine/planning/vessels.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

type Row = ClassSheet["waste"][number];

/** A tenth of a dm3 is as good as such an estimate gets. */
const volumeOf = (cm3: number) => (cm3 >= 1000 ? `${Math.ceil(cm3 / 100) / 10}\u00a0dm³` : amount(cm3, "cm3"));
const bottleOf = ({ into, collected, classCm3, count, sizeCm3 }: Row) => {
  if (into === STRAIGHT) return "nothing";
  if (!collected) return "a beaker at each place";
  if (classCm3 === 0) return "one for the class";
  return `${count}\u00a0× ${volumeOf(sizeCm3)}`;
};

/** What comes back, and what stands ready for it. */
export function ClassWaste({ rows }: { rows: readonly Row[] }) {
  return (
    <table class="stack">
      <caption>Waste to expect, one rinse of every tube included</caption>
      <thead>
        <tr>
          <th scope="col">Into</th>
          <th scope="col">About</th>
          <th scope="col">Set out</th>
          <th scope="col">How</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.into} ${row.how}`}>
            <th scope="row">
              <b>{row.into}</b>
            </th>
            <td data-head="About">{row.classCm3 > 0 ? volumeOf(row.classCm3) : "a little"}</td>
            <td data-head="Set out">{bottleOf(row)}</td>
            <td data-head="How">
              <Words of={row.how} /> {row.truly && <b>{row.truly}</b>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
