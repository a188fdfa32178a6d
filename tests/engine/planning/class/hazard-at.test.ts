import { describe, expect, test } from "vitest";
import { hazardLimits, SEVERITIES, type Severity } from "../../../../src/engine/constants/hazard-limits.ts";
import { reagentSources, reagents } from "../../../../src/engine/constants/reagents.ts";
import { bandStart, hazardAt } from "../../../../src/engine/planning/class/hazard-at.ts";
import { reference } from "../../../verification/reference.ts";
import { isAnswer, workedExample } from "../../../verification/worked/example.ts";

const { rows } = reference<{
  rows: { formula: string; molPerDm3: number; severity: Severity; source: string; status: string }[];
}>("hazards-at-strength.json");

test.each(rows)("$formula at $molPerDm3 mol/dm3: $severity ($status: $source)", ({ formula, molPerDm3, severity }) => {
  expect(hazardAt(formula, molPerDm3)?.severity).toBe(severity);
});

// W81 to W84: NaOH 2 % is 0.5, Pb(NO3)2 0.3 % is 0.0091, AgNO3 3 % is 0.18 mol/dm3; tests/reference/worked-examples.json.
test.each([
  ["W82", "NaOH", 2],
  ["W83", "Pb(NO3)2", 0.3],
  ["W84", "AgNO3", 3],
])("%s: a limit in per cent as mol/dm3", (id, formula, percent) => {
  expect(isAnswer(workedExample(id), bandStart(formula, { from: { percent } }))).toBe(true);
});

test("where two sources differ, the stricter is followed and both are shown (school sheet 30: low hazard below 3 mol/dm3)", () => {
  const ammonia = hazardAt("NH3", 2);
  expect(ammonia).toMatchObject({ severity: "damages eyes", differ: true, remembered: true });
  expect(ammonia?.readings.map(({ source, read, severity }) => [source, read, severity])).toEqual([
    ["CLP", false, "damages eyes"],
    ["SSS30", true, "low hazard"],
  ]);
});

test("of two equally strict sources one that was read speaks", () => {
  expect(hazardAt("NaOH", 1)).toMatchObject({ severity: "corrosive", differ: false, remembered: false });
});

test("a substance without limits is not called harmless", () => {
  expect(hazardAt("LiCl", 0.2)).toBeUndefined();
});

describe.each(Object.entries(hazardLimits))("limits of %s", (formula, sources) => {
  test("stand from weak to strong, and never grow milder", () => {
    for (const { bands } of sources) {
      const starts = bands.map((band) => bandStart(formula, band));
      expect(starts).toEqual(starts.toSorted((a, b) => a - b));
      const grades = bands.map(({ severity }) => SEVERITIES.indexOf(severity));
      expect(grades).toEqual(grades.toSorted((a, b) => a - b));
    }
  });

  test("are called read only where the source was", () => {
    for (const { source, read } of sources) if (read) expect(reagentSources[source].read, source).toBe(true);
  });
});

/** What the bands would say of the bottle as it usually stands, with the acid in it. */
const usual = reagents.flatMap(({ id, formula, concentration, sulfuricAcid, hazards, firstAid }) => {
  const known = [
    formula && concentration !== null ? hazardAt(formula, concentration) : undefined,
    sulfuricAcid ? hazardAt("H2SO4", sulfuricAcid) : undefined,
  ].flatMap((hazard) => hazard?.severity ?? []);
  return known.map((severity) => ({ id, severity, words: hazards.join(" "), firstAid }));
});

test.each(usual)(
  "the words for $id do not play down what its limits say: $severity",
  ({ severity, words, firstAid }) => {
    if (severity === "low hazard") return;
    expect(words).not.toMatch(/^(Low|No) hazard/);
    if (severity === "corrosive" || severity === "damages eyes") expect(["corrosive", "toxic"]).toContain(firstAid);
  },
);

/** Every figure after "from" in the words on a reagent's limits, with its unit. */
const spoken = reagents.flatMap(({ id, formula, sulfuricAcid, limits }) => {
  const named = formula === undefined ? [] : [formula, ...(sulfuricAcid ? ["H2SO4"] : [])];
  const figures = limits.flatMap((text) => [...text.matchAll(/from (?:about )?([\d.]+) (mol\/dm3|%)/g)]);
  return named.length === 0 ? [] : figures.map(([, figure, unit]) => ({ id, named, figure: Number(figure), unit }));
});

// Words round: "about 7 mol/dm3" for 6.9, "about 1.5" for 1.53.
const ROUNDED = 0.06;

test.each(spoken)("$id: the limit of $figure $unit in its words is one of its bands", ({ named, figure, unit }) => {
  const known = named.flatMap((formula) =>
    (hazardLimits[formula] ?? []).flatMap(({ bands }) =>
      bands.map((band) => (unit === "%" && "percent" in band.from ? band.from.percent : bandStart(formula, band))),
    ),
  );
  expect(Math.min(...known.map((one) => Math.abs(one / figure - 1)))).toBeLessThan(ROUNDED);
});
