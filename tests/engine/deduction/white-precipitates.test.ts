/** The example table must say what the published notes say: each cited record is read and compared. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { recordOf, whitePrecipitates } from "./white-precipitates.ts";

interface Published {
  id: string;
  ion: string;
  reagent: string;
  observation: { precipitate: boolean | "slight" | null; colour: string | null; solubleInExcess: boolean | null };
}
const file = new URL("../../reference/qualitative-tables.json", import.meta.url);
const published = new Map<string, Published>(
  JSON.parse(readFileSync(file, "utf8")).records.map((row: Published) => [row.id, row]),
);

/** Ion as published, ion as named here, test, and the records that say what is seen. */
const CITED: [string, string, "a(i)" | "a(ii)" | "b(i)" | "b(ii)" | "c" | "d" | "e", string[]][] = [
  ["Zn2+", "Zn^2+", "a(i)", ["Q040"]],
  ["Al3+", "Al^3+", "a(i)", ["Q001"]],
  ["Pb2+", "Pb^2+", "a(i)", ["Q036"]],
  ["Ca2+", "Ca^2+", "a(i)", ["Q008"]],
  ["Mg2+", "Mg^2+", "a(i)", ["Q044"]],
  ["Zn2+", "Zn^2+", "a(ii)", ["Q041"]],
  ["Al3+", "Al^3+", "a(ii)", ["Q002"]],
  ["Pb2+", "Pb^2+", "a(ii)", ["Q037"]],
  ["Ca2+", "Ca^2+", "a(ii)", ["Q009"]],
  ["Mg2+", "Mg^2+", "a(ii)", ["Q045"]],
  ["Zn2+", "Zn^2+", "b(i)", ["Q042"]],
  ["Al3+", "Al^3+", "b(i)", ["Q003"]],
  ["Pb2+", "Pb^2+", "b(i)", ["Q038"]],
  ["Ca2+", "Ca^2+", "b(i)", ["Q012", "Q014"]],
  ["Mg2+", "Mg^2+", "b(i)", ["Q046"]],
  ["Zn2+", "Zn^2+", "b(ii)", ["Q043"]],
  ["Al3+", "Al^3+", "b(ii)", ["Q004"]],
  ["Pb2+", "Pb^2+", "b(ii)", ["Q039"]],
  ["Ca2+", "Ca^2+", "b(ii)", ["Q013", "Q015"]],
  ["Mg2+", "Mg^2+", "b(ii)", ["Q047"]],
  ["Cl-", "Cl-", "c", ["Q084"]],
  ["SO4 2-", "SO4^2-", "d", ["Q097"]],
  ["Pb2+", "Pb^2+", "e", ["Q196"]],
  ["Al3+", "Al^3+", "e", ["Q200"]],
  ["Zn2+", "Zn^2+", "e", ["Q201"]],
  ["Ca2+", "Ca^2+", "e", ["Q202"]],
  ["Mg2+", "Mg^2+", "e", ["Q203"]],
];

/** A published row in the words of the example table. */
function seenIn({ observation: { precipitate, colour, solubleInExcess } }: Published, cell: string) {
  if (precipitate === false) return "none";
  if (cell.endsWith("(ii)")) return solubleInExcess ? "dissolves" : "remains";
  if (precipitate === "slight") return "slight";
  if (colour === "white" || colour === "yellow") return colour;
  throw new Error(`no word for a ${colour} precipitate`);
}

describe("the example table follows the published notes", () => {
  test.each(CITED)("%s (%s) in test %s: %j", (publishedIon, ion, cell, ids) => {
    for (const id of ids) {
      const row = published.get(id);
      expect(row?.ion).toBe(publishedIon);
      if (!row) return;
      const { samples } = deduce(whitePrecipitates(["P"]), recordOf({ P: { [cell]: seenIn(row, cell) } }));
      expect(samples[0].ions.find((one) => one.ion === ion)?.standing).not.toBe("impossible");
    }
  });
});
