/** A curve read at one volume, on an invented curve whose parts can be counted. */
import { describe, expect, test } from "vitest";
import { drawnTo, ticksTo, unitFor } from "../../../../src/components/carry-out/curve/plot-lines.ts";
import { dropsDrawn, readOut, rowAt, rowsOf, shortName } from "../../../../src/components/carry-out/curve/read-out.ts";
import type { Curve, CurveSeries } from "../../../../src/engine/bench/curve.ts";

const DROP = 0.05;
const solid = (id: string, mol: number[]): CurveSeries => ({ id, kind: "solid", mol });
const dissolved = (id: string, mol: number[]): CurveSeries => ({ id, kind: "dissolved", mol });

/** Half a drop between points, as the engine draws them; 100 mol of zinc, so that an amount is a part in a hundred. */
const invented: Curve = {
  reagent: "NaOH(aq)",
  ion: "Zn^2+",
  x: [0, 0.025, 0.05, 0.075, 0.1, 0.125, 0.15],
  ends: [{ test: 0, x: 0.15 }],
  total: Array(7).fill(100),
  series: [
    solid("Zn(OH)2(s, amorphous)", [0, 31, 62, 40, 20, 10, 0.3]),
    dissolved("Zn^2+", [99, 60, 30, 20, 10, 0, 0]),
    dissolved("[Zn(OH)4]^2-", [0, 8, 4, 36, 66, 86, 99.7]),
  ],
  others: [1, 1, 4, 4, 4, 4, 0],
};

test("the largest part comes first, and traces are not told", () => {
  expect(readOut(invented, 1, DROP)).toBe(
    "0.05 cm3 (1 drop): 62 % Zn(OH)2(s), 30 % Zn^2+, 4 % [Zn(OH)4]^2-, 4 % other.",
  );
  expect(readOut(invented, 0, DROP)).toBe("0 cm3 (0 drops): 99 % Zn^2+, 1 % other.");
  expect(readOut(invented, 3, DROP)).toBe("0.15 cm3 (3 drops): 100 % [Zn(OH)4]^2-.");
});

test("parts and the rest make up the whole", () => {
  for (const drops of [0, 1, 2, 3]) {
    const { parts, others } = rowAt(invented, drops, DROP);
    expect(parts.reduce((sum, part) => sum + part, others)).toBeCloseTo(1, 9);
  }
});

describe("the names", () => {
  test("a form is named only where another form has a line", () => {
    const [one] = invented.series;
    expect(shortName(one, invented.series)).toBe("Zn(OH)2(s)");
    expect(shortName(one, [...invented.series, solid("Zn(OH)2(s, epsilon)", [])])).toBe("Zn(OH)2 (amorphous)");
  });
});

describe("the axis and the rows of the table", () => {
  test("hold whole drops, from none to the end of the axis", () => {
    expect(dropsDrawn(invented, DROP)).toBe(3);
    expect(rowsOf(invented, DROP).map(({ drops }) => drops)).toEqual([0, 1, 2, 3]);
  });

  test("a long curve has few rows, a round number of drops apart", () => {
    const x = Array.from({ length: 171 }, (_, n) => n * 0.025);
    const falling = x.map((cm3) => 100 - 20 * cm3);
    const long = {
      ...invented,
      x,
      ends: [{ test: 0, x: 4.25 }],
      total: x.map(() => 100),
      series: [solid("AgCl(s)", falling)],
    };
    expect(rowsOf({ ...long, others: x.map(() => 0) }, DROP).map(({ drops }) => drops)).toEqual(
      Array.from({ length: 9 }, (_, n) => n * 10),
    );
  });

  test("a curve on which nothing changes is drawn whole", () => {
    const still = { ...invented, series: [dissolved("Zn^2+", Array(7).fill(100))], others: Array(7).fill(0) };
    expect(drawnTo(still)).toBe(0.15);
    expect(readOut(still, 3, DROP)).toBe("0.15 cm3 (3 drops): 100 % Zn^2+.");
  });
});

// A sample of 1 cm3 from 0.02 to 0.5 mol/dm3 holds these amounts, twice as much where a formula unit holds two ions.
test.each([0.02, 0.05, 0.09, 0.1, 0.12, 0.24, 0.3, 0.5, 1])(
  "%d mmol is marked in figures short enough for the margin",
  (mmol) => {
    const { mol } = unitFor(mmol / 1000);
    const marks = ticksTo(mmol / 1000 / mol);
    expect(marks.length).toBeGreaterThanOrEqual(3);
    for (const mark of marks) expect(String(mark).length).toBeLessThanOrEqual(4);
  },
);
