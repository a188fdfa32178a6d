import * as say from "#words/class-sheet.ts";
import { STRAIGHT } from "#words/vessels.ts";
import type { ClassSheet } from "../../engine/planning/class/class-sheet.ts";
import { figures } from "../figures.ts";
import { list } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

type Row = ClassSheet["waste"][number];

/** A tenth of a dm3 is as good as such an estimate gets. */
const volumeOf = (cm3: number) => (cm3 >= 1000 ? `${figures(Math.ceil(cm3 / 100) / 10)}\u00a0dm³` : amount(cm3, "cm3"));
const bottleOf = ({ into, collected, classCm3, count, sizeCm3 }: Row) => {
  if (into === STRAIGHT) return say.NO_VESSEL;
  if (!collected) return say.BEAKER;
  if (classCm3 === 0) return say.ONE_FOR_CLASS;
  return `${count}\u00a0× ${volumeOf(sizeCm3)}`;
};

/** What comes back, and what stands ready for it. */
export function ClassWaste({ rows }: { rows: readonly Row[] }) {
  return (
    <table class="stack">
      <caption>{say.WASTE_CAPTION}</caption>
      <thead>
        <tr>
          <th scope="col">{say.WASTE_HEADS.into}</th>
          <th scope="col">{say.WASTE_HEADS.about}</th>
          <th scope="col">{say.WASTE_HEADS.setOut}</th>
          <th scope="col">{say.WASTE_HEADS.how}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.into} ${row.how}`}>
            <th scope="row">
              <b>{row.into}</b>
            </th>
            <td data-head={say.WASTE_HEADS.about}>{row.classCm3 > 0 ? volumeOf(row.classCm3) : say.A_LITTLE}</td>
            <td data-head={say.WASTE_HEADS.setOut}>{bottleOf(row)}</td>
            <td data-head={say.WASTE_HEADS.how}>
              <Words of={row.how} />{" "}
              {row.first.length > 0 && (
                <b>
                  {say.standsFirst(
                    list(row.first.map(({ name, cm3 }) => say.ofIt(amount(cm3, "cm3"), name))),
                    row.count,
                  )}
                </b>
              )}{" "}
              {row.truly && <b>{row.truly}</b>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
