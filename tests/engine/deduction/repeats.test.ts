/** Which of many smallest sets of observations to repeat comes first; all sets of small papers: brute-force.test.ts. */
import { expect, test } from "vitest";
import type { PredictionTable } from "../../../src/engine/bench/prediction-table.ts";
import { deduce } from "../../../src/engine/deduction/deduce.ts";
import { choose } from "./brute-force.ts";

const CELLS = 25;
const PAIRS = choose([...Array(CELLS).keys()], 2);

/** One sample; for every two of 25 tests a salt that clashes with just these, on the border of what is recorded where `border` says so. */
function everyTwo(border: (pair: number[]) => boolean): PredictionTable {
  const [recorded, other] = [0b01, 0b10];
  const shows = (pair: number[]) => Array.from({ length: CELLS }, (_, c) => (pair.includes(c) ? other : recorded));
  return {
    salts: PAIRS.map((pair) => ({ formula: `S${pair.join("-")}`, cations: ["Zn^2+"], anions: ["SO4^2-"] })),
    cells: Array.from({ length: CELLS }, (_, c) => ({
      id: String.fromCharCode(97 + c),
      samples: ["A"],
      readings: [
        { precipitate: { colour: "white", amount: "plain" } },
        { precipitate: { colour: "cream", amount: "plain" } },
      ],
      words: ["white precipitate", "cream precipitate"],
      agrees: [recorded, other],
      comesOff: [],
    })),
    facts: [],
    sets: [
      {
        salts: [...PAIRS.keys()],
        accepts: PAIRS.map(shows),
        main: PAIRS.map((pair) => shows(pair).map((mask) => mask - 1)),
        atBorder: PAIRS.flatMap((pair, row) =>
          border(pair) ? pair.map((c): [number, number, number] => [row, c, recorded]) : [],
        ),
        facts: PAIRS.map(() => Array(CELLS).fill(-1)),
        cannotBe: [],
      },
    ],
    samples: [{ label: "A", set: 0 }],
    paper: { cations: ["Zn^2+"], anions: ["SO4^2-"], share: [], differ: [], same: [], contains: [] },
  };
}

test("the most easily misread of three hundred come first, though they stand last in the paper", () => {
  const late = (pair: number[]) => pair[0] >= 21;
  const table = everyTwo(late);
  const record = { A: Object.fromEntries(table.cells.map(({ id }) => [id, 0])) };
  const { repeats, moreRepeats } = deduce(table, record);
  const told = repeats.map(({ places }) => places.map(({ cell }) => cell.charCodeAt(0) - 97));
  // Tests 21 to 24 in pairs, then the rest in the order of the paper.
  const border = PAIRS.filter(late);
  expect(border).toHaveLength(6);
  expect(told).toEqual([...border, ...PAIRS.filter((pair) => !late(pair))].slice(0, 24));
  expect(moreRepeats).toBe(true);
});
