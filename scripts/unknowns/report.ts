/** The list of unknowns to choose from, as plain lines of text. */

import { HARDNESS_RULE, OTHER_NUMBER, STANDINGS as STANDING_WORDS } from "#words/choose.ts";
import type { Unknowns } from "../../src/build/unknowns.ts";
import { capital } from "../../src/components/capital.ts";
import { wordAbout, wordCount, wordHazards, wordSet, wordTerms } from "../../src/components/choose/set-words.ts";
import { wordBorders, wordNearest } from "../../src/components/conclude/certificate-words.ts";
import { list, plain } from "../../src/components/sentence.ts";
import { BOUNDS, chooseUnknowns, judge } from "../../src/engine/deduction/choose-unknowns.ts";
import { type Judged, STANDINGS, type Standing } from "../../src/engine/deduction/hardness.ts";
import { forSamples } from "../../src/engine/deduction/other-samples.ts";

export interface Wanted {
  title: string;
  /** Salts (indices) to choose from. */
  store: readonly number[];
  leftOut: readonly string[];
  samples?: number;
  hardness?: Standing;
  list: number;
}

/** The command looks at more sets than the page does: nobody waits with a finger on the glass. */
const THOROUGH = 10;

export function reportUnknowns(of: Unknowns, wanted: Wanted): string {
  const isOwn = wanted.samples === undefined || wanted.samples === of.table.samples.length;
  const table = isOwn ? of.table : forSamples(of.table, wanted.samples as number);
  const choice = chooseUnknowns(table, wanted.store, {
    listed: wanted.list,
    looked: BOUNDS.looked * THOROUGH,
    steps: BOUNDS.steps * THOROUGH,
  });
  const entry = (salts: readonly number[], { nearest, borders }: Pick<Judged, "nearest" | "borders">): string[] => [
    wordNearest(nearest),
    ...(borders.length > 0 ? [wordBorders(borders)] : []),
    ...wordAbout(table, salts, of.tests),
    ...wordHazards(table, salts, of.hazards),
  ];
  const own = isOwn ? judge(table, of.own) : undefined;
  const kinds = wanted.hardness ? [wanted.hardness] : STANDINGS;
  const lines = [
    `Unknowns for: ${wanted.title}`,
    "",
    `Samples: ${list(table.samples.map(({ label }) => label))}. ${[...(isOwn ? [] : [OTHER_NUMBER]), ...wordTerms(table)].join(" ")}`,
    `Store: ${wanted.store.map((salt) => table.salts[salt].formula).join(", ")}.`,
    ...wanted.leftOut.map((words) => `Left out: ${words}`),
    ...of.leftOut.map(({ test, why }) => `Not looked at as a further test, ${test}: ${why}.`),
    wordCount(choice),
    HARDNESS_RULE,
    ...(own
      ? [
          "",
          `The walkthrough's own set, ${STANDING_WORDS[own.standing]}: ${wordSet(table, of.own)}`,
          ...indented(entry(of.own, own)),
        ]
      : []),
    ...kinds.flatMap((standing) => [
      "",
      `${capital(STANDING_WORDS[standing])}: ${choice.found[standing]}${choice.sets[standing].length < choice.found[standing] ? `, here ${choice.sets[standing].length}` : ""}`,
      ...choice.sets[standing].flatMap((one) => [wordSet(table, one.salts), ...indented(entry(one.salts, one))]),
    ]),
    "",
    "Hazards are those of the school store's list, many from memory: your supplier's data and your school's own rules come first.",
  ];
  return lines.map(plain).join("\n");
}

const indented = (lines: readonly string[]): string[] => lines.map((line) => `    ${line}`);
