import type { PreparedSupply } from "../../engine/planning/class/class-sheet.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

/** What stands at each group's place, and what is written on it. */
export function Bottles({ supplies, groups }: { supplies: readonly PreparedSupply[]; groups: number }) {
  return (
    <table class="stack">
      <caption>Bottles and labels</caption>
      <thead>
        <tr>
          <th scope="col">Write on the label</th>
          <th scope="col">In</th>
          <th scope="col">Fill with</th>
          <th scope="col" class="num">
            How many
          </th>
        </tr>
      </thead>
      <tbody>
        {supplies.map(({ kind, label, of, bottles, tubesG = 0 }) => (
          <tr key={`${label} ${of}`}>
            <th scope="row">
              {kind === "sample" ? (
                <>
                  <b>{label}</b> <span class="soft">(the letter and nothing else)</span>
                </>
              ) : (
                <>
                  <b>
                    <Words of={label} />
                  </b>{" "}
                  <span class="soft">and the date</span>
                </>
              )}
            </th>
            <td data-head="In">
              <Words of={bottles?.size ?? "stoppered tube"} />
            </td>
            <td data-head="Fill with">{bottles ? amount(bottles.fillCm3, "cm3") : amount(tubesG, "g")}</td>
            <td data-head="How many" class="num">
              {bottles?.count ?? groups}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
