/** A paper's salts as a table: which cannot be such a sample and why, and solids beside solutions. */
import { describe, expect, test } from "vitest";
import { cannotBe } from "../../../src/engine/bench/allowed-salts.ts";
import { createPredictor } from "../../../src/engine/bench/predictor.ts";
import { saltOf } from "../../../src/engine/bench/salt.ts";
import { tabulate } from "../../../src/engine/bench/tabulate.ts";
import { plainly } from "../../../src/engine/deduction/plainly.ts";
import { procedure, statement } from "../../../src/engine/practical.ts";
import { phrase } from "../../../src/engine/wording/phrase.ts";
import { solve } from "./show.ts";

const solution = { given: "solution", concentration: { molPerDm3: 0.1 } } as const;

// Solubilities, CRC Handbook from memory: PbCl2 0.036 mol/dm3 (0.1 leaves about 0.064 mol, 18 g), CaSO4 0.015 mol/dm3 (0.085 mol of
// gypsum, 15 g). Copper(II) iodide does not exist in water.
describe("no 0.1 mol/dm3 solution of", () => {
  test.each([
    ["Pb^2+", "Cl-", "lead(II) chloride does not dissolve to 0.1 mol/dm3: 17 g/dm3 stays solid"],
    ["Ca^2+", "SO4^2-", "calcium sulfate does not dissolve to 0.1 mol/dm3: 15 g/dm3 stays solid"],
    ["Cu^2+", "I-", "copper(II) iodide oxidises itself, so there is no such solution"],
    ["Fe^3+", "I-", "iron(III) iodide oxidises itself, so there is no such solution"],
    // Thiosulfate takes the blue from copper(II) (textbook, from memory): no store keeps their salt.
    ["Cu^2+", "S2O3^2-", "copper(II) thiosulfate oxidises itself, so there is no such solution"],
    ["Al^3+", "CO3^2-", "water splits aluminium carbonate at 0.1 mol/dm3: 16 g/dm3 of another solid comes out"],
  ])("%s %s", (cation, anion, reason) => {
    expect(cannotBe(saltOf(cation, anion), solution, solve)).toBe(reason);
  });

  test.each([
    ["Pb^2+", "NO3-"],
    ["Al^3+", "Cl-"],
    ["Fe^3+", "NO3-"],
    ["NH4+", "CO3^2-"],
    ["Cu^2+", "SO4^2-"],
  ])("but there is one of %s %s", (cation, anion) => {
    expect(cannotBe(saltOf(cation, anion), solution, solve)).toBeUndefined();
  });

  test("lead(II) chloride dissolves to 0.01 mol/dm3", () => {
    const thin = { given: "solution", concentration: { molPerDm3: 0.01 } } as const;
    expect(cannotBe(saltOf("Pb^2+", "Cl-"), thin, solve)).toBeUndefined();
  });
});

test("a solid must not fall apart in water or of itself", () => {
  expect(cannotBe(saltOf("Ca^2+", "CO3^2-"), { given: "solid" }, solve)).toBeUndefined();
  expect(cannotBe(saltOf("Cu^2+", "I-"), { given: "solid" }, solve)).toBe(
    "copper(II) iodide oxidises itself, so there is no such solid",
  );
  expect(cannotBe(saltOf("Al^3+", "CO3^2-"), { given: "solid" }, solve)).toBe(
    "water takes aluminium carbonate apart at once, so there is no such solid to give out",
  );
  // Oxide and hydroxide are stronger bases than ammonia, carbonate only just (pKa 9.25 against 10.33, from memory): ammonium carbonate is sold as a solid.
  expect(cannotBe(saltOf("NH4+", "O^2-"), { given: "solid" }, solve)).toBe(
    "ammonium oxide turns into ammonia, so there is no such solid to give out",
  );
  expect(cannotBe(saltOf("NH4+", "CO3^2-"), { given: "solid" }, solve)).toBeUndefined();
});

describe("a table of a solid and a solution", () => {
  const { table, predictions } = tabulate(
    {
      samples: [
        { label: "J", given: "solid" },
        { label: "L", given: "solution", concentration: { molPerDm3: 0.1 } },
        { label: "M", given: "solution", concentration: { molPerDm3: 0.1 } },
      ],
      paper: statement.parse({ cations: ["Na+", "Ca^2+", "Pb^2+"], anions: ["CO3^2-", "Cl-", "SO4^2-"] }),
      parts: procedure.parse([
        {
          label: "a",
          title: "Acid on the solid",
          samples: ["J"],
          tests: [{ steps: [{ take: "0.1 g" }, { add: "HCl(aq)", volume: "3 cm3" }, { testGas: "limewater" }] }],
        },
        {
          label: "b",
          title: "Barium chloride",
          samples: ["L", "M"],
          tests: [{ steps: [{ take: "1 cm3" }, { add: "BaCl2(aq)", volume: "1 cm3" }] }],
        },
      ]),
    },
    createPredictor(solve),
    phrase,
  );
  const cell = (id: string) => table.cells.find((one) => one.id === id);
  const placeOf = (set: number, formula: string, id: string): [row: number, cell: number] => [
    table.sets[set].salts.findIndex((salt) => table.salts[salt].formula === formula),
    table.cells.findIndex((one) => one.id === id),
  ];
  const wordsIn = (mask: number, id: string) => cell(id)?.words.filter((_, reading) => mask & (1 << reading));
  const wordsOf = (set: number, formula: string, id: string) =>
    wordsIn(plainly(table.sets[set], ...placeOf(set, formula, id)), id);

  test("samples given alike share a set, each part is predicted for its own samples only", () => {
    expect(table.samples).toEqual([
      { label: "J", set: 0 },
      { label: "L", set: 1 },
      { label: "M", set: 1 },
    ]);
    expect(table.salts).toHaveLength(9);
    expect(table.cells.map(({ id, samples, dry }) => ({ id, samples, dry }))).toEqual([
      { id: "a", samples: ["J"], dry: true },
      { id: "b", samples: ["L", "M"], dry: undefined },
    ]);
    expect(predictions.size).toBe(2);
    expect(table.sets[0].accepts.every((row) => row[1] === 0)).toBe(true);
    expect(table.sets[1].accepts.every((row) => row[0] === 0)).toBe(true);
  });

  test("says of every salt either what it shows or why it cannot be", () => {
    for (const { salts, cannotBe: out } of table.sets) {
      const told = [...salts, ...out.map(({ salt }) => salt)].sort((a, b) => a - b);
      expect(told).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
      for (const { reason } of out) expect(reason).not.toBe("");
    }
    const lead = table.sets[1].cannotBe.find(({ salt }) => table.salts[salt].formula === "PbCl2");
    expect(lead?.reason).toContain("lead(II) chloride does not dissolve");
  });

  test("marble fizzes and dissolves in acid; sulfate gives a white precipitate, chloride none", () => {
    expect(wordsOf(0, "CaCO3", "a")).toEqual([
      "effervescence, solid dissolves, giving a colourless solution, limewater turns milky",
    ]);
    expect(wordsOf(1, "Na2SO4", "b")).toEqual(["white precipitate"]);
    expect(wordsOf(1, "NaCl", "b")).toEqual(["no visible change"]);
  });

  // 0.1 g of marble is 1 mmol and takes 2 mmol of acid: 3 cm3 of 1 mol/dm3 is enough, of 0.5 mol/dm3 it is not.
  test("what another strength of the acid would show is accepted too, and marked as the border", () => {
    const [row, c] = placeOf(0, "CaCO3", "a");
    const { accepts, atBorder } = table.sets[0];
    const [, , mask] = atBorder.find(([r, at]) => r === row && at === c) ?? [row, c, 0];
    expect(wordsIn(mask, "a")).toEqual(["effervescence, some of the solid dissolves, limewater turns milky"]);
    expect(accepts[row][c] & mask).toBe(mask);
    expect(plainly(table.sets[0], row, c)).toBe(accepts[row][c] & ~mask);
    expect(wordsIn(1 << table.sets[0].main[row][c], "a")).toEqual(wordsOf(0, "CaCO3", "a"));
  });

  test("every reading agrees with itself, and agreement stays within the list", () => {
    for (const { readings, agrees, words } of table.cells) {
      expect(words).toHaveLength(readings.length);
      agrees.forEach((mask, reading) => {
        expect(mask & (1 << reading)).not.toBe(0);
        expect(mask >>> readings.length).toBe(0);
      });
    }
  });

  test("goes through JSON unchanged", () => {
    expect(JSON.parse(JSON.stringify(table))).toEqual(table);
  });
});

describe("five drops of acidified manganate(VII), warmed, on every salt of the advanced list: more sights than a line has room for", () => {
  const advanced = tabulate(
    {
      samples: [{ label: "A", ...solution }],
      paper: statement.parse({ cations: "advanced", anions: "advanced" }),
      parts: procedure.parse([
        {
          label: "a",
          title: "Manganate(VII)",
          tests: [{ steps: [{ take: "1 cm3" }, { add: "acidified KMnO4(aq)", drops: 5 }, { warm: true }] }],
        },
      ]),
    },
    createPredictor(solve),
    phrase,
  ).table;
  const [cell] = advanced.cells;
  const accepted = (formula: string) => {
    const [{ salts, accepts }] = advanced.sets;
    const mask = accepts[salts.findIndex((salt) => advanced.salts[salt].formula === formula)][0];
    return cell.words.filter((_, reading) => mask & (1 << reading));
  };

  test("faint precipitates and plain ones are told as one, and nothing else is", () => {
    expect(cell.readings.length).toBeLessThanOrEqual(31);
    expect(cell.readings.filter(({ precipitate }) => precipitate && precipitate.amount !== "plain")).toEqual([]);
    expect(new Set(cell.words).size).toBe(cell.words.length);
    // Textbooks, from memory: iodides give iodine, nitrites lose it its colour, chlorides leave it.
    expect(accepted("KI")).toEqual(["solution turns brown"]);
    expect(accepted("NaNO2")).toEqual(["effervescence, solution turns colourless"]);
    expect(accepted("NaCl")).toEqual(["solution turns purple", "no visible change (stays purple)"]);
    // Calcium sulfate crystallises slowly: seen, or not yet.
    expect(accepted("CaCl2")).toEqual(expect.arrayContaining(["white precipitate, purple solution"]));
  });
});
