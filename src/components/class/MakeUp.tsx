import * as say from "#words/class-sheet.ts";
import type { PreparedSupply, Taken } from "../../engine/planning/class/class-sheet.ts";
import { Words } from "../Words.tsx";
import { amount } from "./amounts.ts";

/** "2.88 g of zinc sulfate heptahydrate (ZnSO4*7H2O, 287.5 g/mol)" */
const taken = ({ what, formula, gPerMol, amount: value, unit }: Taken) =>
  say.amountOf(amount(value, unit), what) + (formula && gPerMol ? ` (${formula}, ${gPerMol.toFixed(1)} g/mol)` : "");

const cares = (supply: PreparedSupply) => [
  ...new Set(supply.ingredients.flatMap((choices) => choices.flatMap(({ care }) => care ?? []))),
];
const sources = (supply: PreparedSupply) => [
  ...new Set(supply.ingredients.flatMap((choices) => choices.flatMap(({ source }) => source ?? []))),
];

function How({ of }: { of: PreparedSupply }) {
  return (
    <>
      {of.ingredients.map((choices) => (
        <p key={choices[0].what}>
          <Words of={choices.map(taken).join(say.OR)} />
          {of.tubesG !== undefined && say.inTubes(amount(of.tubesG, "g"))}.
        </p>
      ))}
      <p>
        <Words of={of.method} />
        {of.waterFirstCm3 > 0 && say.waterFirst(amount(of.waterFirstCm3, "cm3"))}
      </p>
      {cares(of).map((care) => (
        <p class="caution" key={care}>
          <b>{say.TAKE_CARE}</b> <Words of={care} />
        </p>
      ))}
      {of.notes.map((note) => (
        <p class="soft" key={note.text}>
          <Words of={note.text} /> ({note.source})
        </p>
      ))}
      {sources(of).map((source) => (
        <p class="soft" key={source}>
          {say.STOCK} <Words of={source} />
        </p>
      ))}
    </>
  );
}

/** What is made up, how much of it and how. Names the salts behind the letters. */
export function MakeUp({ supplies }: { supplies: readonly PreparedSupply[] }) {
  return (
    <table class="stack make">
      <caption>{say.MAKE_UP_CAPTION}</caption>
      <thead>
        <tr>
          <th scope="col">{say.MAKE_HEADS.what}</th>
          <th scope="col">{say.MAKE_HEADS.make}</th>
          <th scope="col">{say.MAKE_HEADS.how}</th>
        </tr>
      </thead>
      <tbody>
        {supplies.map((supply) => (
          <tr key={`${supply.label} ${supply.of}`}>
            <th scope="row">
              {supply.kind === "sample" && <b>{supply.label}: </b>}
              <Words of={supply.content} />
            </th>
            <td data-head={say.MAKE_HEADS.make}>
              <b>{supply.of === "solution" ? amount(supply.make, "cm3") : amount(supply.make, "g")}</b>
              <span class="soft"> {say.wanted(amount(supply.wanted, supply.of === "solution" ? "cm3" : "g"))}</span>
            </td>
            <td data-head={say.MAKE_HEADS.how}>
              <How of={supply} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
