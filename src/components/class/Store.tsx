import type { ClassSheet } from "../../engine/planning/class/class-sheet.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

/** What leaves the store for the whole class: look before you promise the lesson. */
export function Store({ rows }: { rows: ClassSheet["store"] }) {
  return (
    <table>
      <caption>For all bottles together, by the first bottle named</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" class="num">
            Amount
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
                  <b>Scarce:</b> {scarce}.
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
