import * as say from "#words/class-sheet.ts";
import type { PreparedSupply } from "../../engine/planning/class/class-sheet.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

/** What stands at each group's place, and what is written on it. */
export function Bottles({ supplies, groups }: { supplies: readonly PreparedSupply[]; groups: number }) {
  const given = supplies.filter(({ bottles, tubesG }) => bottles || tubesG !== undefined);
  return (
    <table class="stack">
      <caption>{say.BOTTLES}</caption>
      <thead>
        <tr>
          <th scope="col">{say.BOTTLE_HEADS.label}</th>
          <th scope="col">{say.BOTTLE_HEADS.in}</th>
          <th scope="col">{say.BOTTLE_HEADS.fill}</th>
          <th scope="col" class="num">
            {say.BOTTLE_HEADS.count}
          </th>
        </tr>
      </thead>
      <tbody>
        {given.map(({ kind, label, of, bottles, tubesG = 0 }) => (
          <tr key={`${label} ${of}`}>
            <th scope="row">
              {kind === "sample" ? (
                <>
                  <b>{label}</b> <span class="soft">{say.LETTER_ONLY}</span>
                </>
              ) : (
                <>
                  <b>
                    <Words of={label} />
                  </b>{" "}
                  <span class="soft">{say.AND_DATE}</span>
                </>
              )}
            </th>
            <td data-head={say.BOTTLE_HEADS.in}>
              <Words of={bottles?.size ?? say.STOPPERED_TUBE} />
            </td>
            <td data-head={say.BOTTLE_HEADS.fill}>{bottles ? amount(bottles.fillCm3, "cm3") : amount(tubesG, "g")}</td>
            <td data-head={say.BOTTLE_HEADS.count} class="num">
              {bottles?.count ?? groups}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
