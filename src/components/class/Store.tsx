import * as say from "#words/class-sheet.ts";
import type { ClassSheet } from "../../engine/planning/class/class-sheet.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

/** What leaves the store for the whole class: look before you promise the lesson. */
export function Store({ rows }: { rows: ClassSheet["store"] }) {
  return (
    <table>
      <caption>{say.STORE_CAPTION}</caption>
      <thead>
        <tr>
          <th scope="col">{say.STORE_HEADS.what}</th>
          <th scope="col" class="num">
            {say.STORE_HEADS.amount}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, formula, unit, amount: value, scarce }) => (
          <tr key={what}>
            <th scope="row">
              <Words of={formula ? `${what} (${formula})` : what} />
              {scarce && (
                <span>
                  {" "}
                  <b>{say.SCARCE}</b> {scarce}.
                </span>
              )}
            </th>
            <td class="num">{amount(value, unit)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
