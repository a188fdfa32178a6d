/** A sight is put down to an ion only where it is the ion's doing: the notes' own tables, with one salt made an exception. */
import { expect, test } from "vitest";
import { NOT_FORETOLD } from "#words/read.ts";
import { sightsOf } from "../../../src/components/read/purpose-words.ts";
import { purposes } from "../../../src/engine/deduction/purposes.ts";
import { saltNamed, whitePrecipitates } from "../../engine/deduction/white-precipitates.ts";

/** Each sight of a test with those that show it, after the given salts were made to show another reading, or left without a prediction. */
function sights(
  id: string,
  others: [cation: string, anion: string, reading?: number][] = [],
): Record<string, string[]> {
  const table = whitePrecipitates(["P"]);
  const c = table.cells.findIndex((cell) => cell.id === id);
  const [set] = table.sets;
  for (const [cation, anion, reading] of others)
    set.accepts[set.salts.indexOf(saltNamed(cation, anion))][c] = reading === undefined ? 0 : 1 << reading;
  const purpose = purposes(table).find(({ cell }) => cell === id);
  if (!purpose) throw new Error(`no purpose for ${id}`);
  return Object.fromEntries(sightsOf(purpose, table.cells[c].words, table).map((one) => [one.seen, one.shownBy]));
}
const YELLOW = 3;

test("an ion stands for its salts where all of them show the sight", () => {
  expect(sights("a(ii)")).toEqual({ dissolves: ["Zn^2+", "Al^3+", "Pb^2+"], remains: ["Ca^2+", "Mg^2+"] });
});

test("one salt that shows something of its own is named, and excepted from its ion", () => {
  expect(sights("d", [["Zn^2+", "NO3-", YELLOW]])).toEqual({
    white: ["SO4^2-"],
    yellow: ["Zn^2+ NO3-"],
    none: ["Cl-", "NO3- (not Zn^2+ NO3-)"],
  });
});

test("where many salts of an ion show something else, those that show the sight are named", () => {
  const others = ["Zn^2+", "Al^3+", "Mg^2+"].map((cation): [string, string, number] => [cation, "NO3-", YELLOW]);
  expect(sights("d", others)).toMatchObject({
    yellow: ["Zn^2+ NO3-", "Al^3+ NO3-", "Mg^2+ NO3-"],
    none: ["Cl-", "Pb^2+ NO3-", "Ca^2+ NO3-"],
  });
});

test("of what nothing is foretold is said last, an ion for all its salts", () => {
  const anions = ["Cl-", "NO3-"].map((anion): [string, string] => ["Ca^2+", anion]);
  const told = sights("a(ii)", anions);
  expect(Object.keys(told).at(-1)).toBe(NOT_FORETOLD);
  expect(told).toEqual({ dissolves: ["Zn^2+", "Al^3+", "Pb^2+"], remains: ["Mg^2+"], [NOT_FORETOLD]: ["Ca^2+"] });
});
