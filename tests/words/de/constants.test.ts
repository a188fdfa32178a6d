/** Every sentence of the constants that a page says has its German. */
import { expect, test } from "vitest";
import { saidOnSheet } from "#words/class-recipes.ts";
import { said } from "#words/constants.ts";
import { gateName } from "#words/gates.ts";
import { nameOnBottle } from "#words/salts.ts";
import { DISTURBANCES } from "../../../src/engine/bench/interference/disturbances.ts";
import { ACTION_CAUTIONS, SAMPLE_CAUTIONS } from "../../../src/engine/constants/bench-cautions.ts";
import { EMPTIED_APART } from "../../../src/engine/constants/emptied-apart.ts";
import { GAS_SAFETY } from "../../../src/engine/constants/gas-safety.ts";
import { hazardLimits } from "../../../src/engine/constants/hazard-limits.ts";
import { INDICATORS } from "../../../src/engine/constants/indicators.ts";
import * as kinetic from "../../../src/engine/constants/kinetic-gates.ts";
import { LATER_LOOKS } from "../../../src/engine/constants/later-looks.ts";
import { NOT_GIVEN_OUT } from "../../../src/engine/constants/not-given-out.ts";
import { NOT_MIXED } from "../../../src/engine/constants/not-mixed.ts";
import { ALSO_SOLD, classTrial, makings, sampleNotes, WHO_DECIDES } from "../../../src/engine/constants/preparation.ts";
import { firstAids, reagents, wastes } from "../../../src/engine/constants/reagents.ts";
import { salts } from "../../../src/engine/constants/salts.ts";
import { STARCH } from "../../../src/engine/constants/starch.ts";
import { stocks } from "../../../src/engine/constants/stocks.ts";
import { SPOILERS } from "../../../src/engine/planning/order-of-work/spoilers.ts";

test.each([
  [
    "actions and samples",
    [...Object.values(ACTION_CAUTIONS), ...Object.values(SAMPLE_CAUTIONS)].map(({ text }) => text),
  ],
  ["reagents", reagents.flatMap(({ hazards }) => hazards)],
  ["gases", Object.values(GAS_SAFETY).flatMap(({ hazard, have }) => [hazard, have])],
  ["waste", Object.values(wastes)],
  [
    "what is emptied apart",
    EMPTIED_APART.flatMap(({ first, because }) => [first?.says, because].filter((one) => one !== undefined)),
  ],
  ["what is not done in class", NOT_GIVEN_OUT.map(({ reason }) => reason)],
  ["what is not mixed", NOT_MIXED.flatMap(({ what, reason }) => [what, reason])],
  ["what spoils an observation", [...SPOILERS.map(({ says }) => says), ...DISTURBANCES.map(({ remedy }) => remedy)]],
  ["indicators", Object.values(INDICATORS).map(({ form }) => form)],
])("%s", (_, sentences) => {
  expect(sentences.length).toBeGreaterThan(0);
  expect(sentences.filter((sentence) => said(sentence) === sentence)).toEqual([]);
});

test.each([
  ["who decides, and the day before", [WHO_DECIDES, ...classTrial.map(({ text }) => text)]],
  ["first aid", Object.values(firstAids)],
  [
    "how it is made up",
    Object.values(makings).flatMap(({ method, grams }) => [method ?? [], (grams ?? []).map(({ what }) => what)].flat()),
  ],
  ["stocks", stocks.flatMap(({ name, care }) => [name, care])],
  ["notes on samples", Object.values(sampleNotes).map(({ text }) => text)],
  ["notes on reagents", reagents.flatMap(({ notes }) => notes ?? [])],
  ["notes on salts", salts.flatMap(({ note }) => note ?? [])],
  ["hazards of salts", salts.map(({ hazard }) => hazard)],
  [
    "limits",
    Object.values(hazardLimits).flatMap((rows) =>
      rows.flatMap(({ bands, note }) => [...bands.map(({ words }) => words), ...(note ? [note] : [])]),
    ),
  ],
])("on the sheet of a class: %s", (_, sentences) => {
  expect(sentences.length).toBeGreaterThan(0);
  expect(sentences.filter((sentence) => saidOnSheet(sentence) === sentence)).toEqual([]);
});

test("every bottle of a store has its German name", () => {
  const bottles = [...salts, ...ALSO_SOLD];
  expect(bottles.filter(({ formula, name }) => nameOnBottle(formula, name) === name)).toEqual([]);
});

test("every gate that a page names has its German name", () => {
  const { SLOW_SOLIDS, SEEN_FIRST, LOCAL_SOLIDS, SOLID_TO_SOLID, HEAT_OPENS } = kinetic;
  const gates = [...SLOW_SOLIDS, ...SEEN_FIRST, ...LATER_LOOKS, ...LOCAL_SOLIDS, SOLID_TO_SOLID, ...HEAT_OPENS, STARCH];
  expect(gates.filter(({ id, name }) => gateName(id, name) === name)).toEqual([]);
});
