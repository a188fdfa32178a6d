import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BOILING_TUBES, TEST_TUBES } from "../../../src/engine/constants/glassware.ts";
import {
  boreMm,
  brimCapacity,
  depthOfVolume,
  depthRange,
  volumeAtDepth,
} from "../../../src/engine/planning/geometry.ts";
import reference from "../../reference/tube-depths.json" with { type: "json" };

const sizes = [...TEST_TUBES, ...BOILING_TUBES];
const sizeOf = (id: string) => {
  const size = sizes.find((one) => one.id === id);
  if (!size) throw new Error(`no tube size ${id}`);
  return size;
};
/** Largest error of a figure rounded to `step`; the last term is for binary fractions. */
const rounded = (step: number) => step / 2 + 1e-9;
const near = (found: number, expected: number, within: number) =>
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(within);

test("the reference table covers every tube on offer", () => {
  expect(sizes.map(({ id }) => id)).toEqual(reference.tubes.map(({ id }) => id));
});

describe.each(reference.tubes)("$id", (row) => {
  const size = sizeOf(row.id);
  test("wall and bore", () => {
    expect(size.wallMm).toBe(row.wallMm);
    expect(boreMm(size)).toBeCloseTo(row.boreMm, 10);
  });
  test.each(Object.entries(row.depthMm))("depth of %s cm3", (cm3, mm) => {
    near(depthOfVolume(Number(cm3), size), mm, rounded(0.1));
  });
  test.each(Object.entries(row.cm3AtMm))("volume at %s mm", (mm, cm3) => {
    near(volumeAtDepth(Number(mm), size), cm3, rounded(0.01));
  });
  test("brim and its parts", () => {
    const brim = brimCapacity(size);
    near(brim, row.brimCm3, rounded(1));
    near(brim / 5, row.fifthCm3, rounded(0.1));
    near(brim / 10, row.tenthCm3, rounded(0.1));
    near(brim / 3, row.thirdCm3, rounded(0.1));
  });
});

describe("wall of a 16 mm tube", () => {
  test.each(reference.wallSeriesOf16mm)("$wallMm mm", ({ wallMm, boreMm: bore, depthOf1Cm3Mm, cm3At10Mm }) => {
    const tube = { outsideMm: 16, wallMm };
    expect(boreMm(tube)).toBeCloseTo(bore, 10);
    near(depthOfVolume(1, tube), depthOf1Cm3Mm, rounded(0.1));
    near(volumeAtDepth(10, tube), cm3At10Mm, rounded(0.01));
  });
  test("1 cm3 stands between the depths of the thinnest and the thickest wall", () => {
    const [thinnest, , , , thickest] = reference.wallSeriesOf16mm;
    const { leastMm, greatestMm } = depthRange(1, sizeOf("test-tube-125x16"));
    near(leastMm, thinnest.depthOf1Cm3Mm, rounded(0.1));
    near(greatestMm, thickest.depthOf1Cm3Mm, rounded(0.1));
  });
  test.each(sizes)("$id: the assumed wall lies in its range", ({ wallMm, wallRangeMm: [thin, thick] }) => {
    expect(thin).toBeLessThanOrEqual(wallMm);
    expect(wallMm).toBeLessThanOrEqual(thick);
  });
});

const worked = (id: string) => {
  const example = reference.workedExamples.find((one) => one.id === id);
  if (!example) throw new Error(`no worked example ${id}`);
  return example;
};
test("W73: depth of 1 cm3 in a 16 mm tube", () => {
  const { answer, tolerance } = worked("W73");
  near(depthOfVolume(1, { outsideMm: 16, wallMm: 1 }), answer, tolerance);
});
test("W74: volume at 1 cm depth", () => {
  const { answer, tolerance } = worked("W74");
  near(volumeAtDepth(10, { outsideMm: 16, wallMm: 1 }), answer, tolerance);
});

describe("volume and depth", () => {
  const tube = fc.record({
    outsideMm: fc.double({ min: 8, max: 30, noNaN: true }),
    wallMm: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
  });
  test("are each other's inverse", () => {
    fc.assert(
      fc.property(tube, fc.double({ min: 0, max: 80, noNaN: true }), (one, cm3) => {
        const back = volumeAtDepth(depthOfVolume(cm3, one), one);
        expect(Math.abs(back - cm3)).toBeLessThanOrEqual(1e-12 + cm3 * 1e-12);
      }),
    );
  });
  test("rise together", () => {
    fc.assert(
      fc.property(
        tube,
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0.001, max: 5, noNaN: true }),
        (one, cm3, more) => {
          expect(depthOfVolume(cm3 + more, one)).toBeGreaterThan(depthOfVolume(cm3, one));
        },
      ),
    );
  });
  test("nothing stands at the bottom, a full hemisphere at its radius (exact: V = 2/3 pi r^3, h = r)", () => {
    const one = { outsideMm: 16, wallMm: 1 };
    expect(depthOfVolume(0, one)).toBe(0);
    expect(depthOfVolume(((2 / 3) * Math.PI * 7 ** 3) / 1000, one)).toBeCloseTo(7, 10);
  });
});

test("refuses what is no tube, no volume and no depth", () => {
  expect(() => boreMm({ outsideMm: 16, wallMm: 8 })).toThrow(
    "found a wall of 8 mm in a tube 16 mm wide, expected a wall below 8 mm",
  );
  expect(() => depthOfVolume(-1, { outsideMm: 16, wallMm: 1 })).toThrow(
    "found a volume of -1 cm3, expected 0 cm3 or more",
  );
  expect(() => volumeAtDepth(Number.NaN, { outsideMm: 16, wallMm: 1 })).toThrow(
    "found a depth of NaN mm, expected 0 mm or more",
  );
});
