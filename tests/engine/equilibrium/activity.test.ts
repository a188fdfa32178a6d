/** Activity coefficients and constants at a temperature, against calculations by hand. */
import { describe, expect, test } from "vitest";
import { CAPPED_IONIC_STRENGTH, davies, daviesA } from "../../../src/engine/equilibrium/activity.ts";
import { logKAt } from "../../../src/engine/equilibrium/system.ts";
import { entries } from "./mixtures.ts";

describe("Davies", () => {
  // I = 0.1: sqrt 0.316228, over 1.316228 = 0.240253, less 0.03 = 0.210253. log gamma = -0.510025 z^2 f: z = 1 -0.10723, z = 2 -0.42894.
  // gamma 0.7812 and 0.3724; tables of the Davies equation print 0.78 and 0.37 (Stumm and Morgan, from memory).
  test("at 0.1 mol/kg", () => {
    const { f, neutral } = davies(0.1, 0.5);
    expect(f).toBeCloseTo(0.210253, 6);
    expect(10 ** (-daviesA(25) * f)).toBeCloseTo(0.7812, 4);
    expect(10 ** (-daviesA(25) * 4 * f)).toBeCloseTo(0.3724, 4);
    expect(neutral).toBeCloseTo(0.01, 12);
  });

  // I = 0.5: sqrt 0.707107, over 1.707107 = 0.414214, less 0.15 = 0.264214.
  test("is held above the cap, and not without one", () => {
    expect(CAPPED_IONIC_STRENGTH).toBe(0.5);
    expect(davies(0.5, 0.5).f).toBeCloseTo(0.264214, 6);
    expect(davies(3, 0.5)).toMatchObject({ f: davies(0.5, 0.5).f, slope: 0, neutral: 0.05, neutralSlope: 0 });
    // I = 3: sqrt 1.732051, over 2.732051 = 0.633975, less 0.9 = -0.266025.
    expect(davies(3, Number.POSITIVE_INFINITY).f).toBeCloseTo(-0.266025, 6);
  });

  test("has the slope of its function", () => {
    for (const I of [1e-6, 1e-3, 0.02, 0.1, 0.49]) {
      const step = I * 1e-4;
      const measured = (davies(I + step, 0.5).f - davies(I - step, 0.5).f) / (2 * step);
      expect(davies(I, 0.5).slope / measured).toBeCloseTo(1, 6);
    }
  });

  test("without ions is ideal", () => {
    expect(davies(0, 0.5).f).toBeCloseTo(0, 5);
  });
});

// eps(60) = 87.740 - 24.005 + 3.383 - 0.305 = 66.814; eps(25) = 78.303. (66.814 x 333.15)/(78.303 x 298.15) = 0.95343;
// to the power -1.5 = 1.07415; times 0.51002 = 0.54784. Robinson and Stokes print 0.545 (from memory): within 1 %.
test("A grows with temperature", () => {
  expect(daviesA(25)).toBeCloseTo(0.510025, 6);
  expect(daviesA(60)).toBeCloseTo(0.54784, 4);
  expect(Math.abs(daviesA(60) / 0.545 - 1)).toBeLessThan(0.01);
});

// van 't Hoff by hand: dH/(R ln 10) = -35.2/0.01914476 = -1838.62 K; 1/298.15 - 1/373.15 = 6.74129e-4 /K; product -1.23947.
test("log K of ammonia gas at 100 C", () => {
  const ammonia = entries.get("NH3(g)");
  if (!ammonia) throw new Error("no row for NH3(g)");
  expect(ammonia).toMatchObject({ logK: 1.797, dH: -35.2 });
  expect(logKAt(ammonia, 25)).toBeCloseTo(1.797, 12);
  expect(logKAt(ammonia, 100)).toBeCloseTo(1.797 - 1.23947, 4);
});

test("log K of a row without an enthalpy stays", () => {
  const still = entries.get("Ag2SO3(s)");
  if (!still) throw new Error("no row for Ag2SO3(s)");
  expect(still.dH).toBe(0);
  expect(logKAt(still, 100)).toBe(still.logK);
});
