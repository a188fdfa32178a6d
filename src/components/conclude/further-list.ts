/** The standard tests as the page needs them where the paper's own leave something open. Made at build; a reader's page fetches it. */
import { THE_SAMPLE } from "#words/further-tests.ts";
import { reagentName } from "#words/steps.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { reagents } from "../../engine/constants/reagents.ts";
import type { FurtherPredictions } from "../../engine/deduction/further-predictions.ts";
import { cautionsFor } from "../carry-out/part-cautions.ts";
import { type Bench, wordSteps } from "../carry-out/step-words.ts";
import { link } from "../link.ts";

/** Of a caution what stands beside a test, and what it covers. */
export interface CautionText {
  id: string;
  data: { title: string; summary: string; covers: readonly string[]; kind: string };
}

export interface FurtherList extends Pick<PredictionTable, "cells" | "sets"> {
  /** In the order of the cells: the test's name, what is done up to here in sentences, and the cautions by number. */
  tests: { title: string; does: string; cautions: number[] }[];
  cautions: { title: string; says: string; href: string }[];
}

/** A bench that has every bottle, at its usual strength. */
const bench: Bench = {
  reagents: reagents.map(({ id, name, concentration }) => ({
    id,
    name: reagentName(id, name),
    ...(concentration !== null && { concentration: `${concentration} mol/dm3` }),
  })),
  sample: { words: THE_SAMPLE, letters: "", several: false },
  excess: {},
  dry: false,
  heated: false,
};

export function furtherList({ table, cells }: FurtherPredictions, all: readonly CautionText[]): FurtherList {
  const used: CautionText[] = [];
  const tests = cells.map(({ part, index }, c) => {
    const tests = part.tests.slice(0, index + 1);
    const mine = table.cells.slice(c - index, c + 1);
    const gases = mine.flatMap(({ comesOff }) => comesOff.map(({ gas }) => gas));
    const cautions = cautionsFor({ ...part, tests }, gases, [], all).map((one) => {
      if (!used.includes(one)) used.push(one);
      return used.indexOf(one);
    });
    const does = tests.flatMap(({ steps }, n) => wordSteps(steps, bench, mine[n].comesOff.length > 0)).join(" ");
    return { title: part.title, does, cautions };
  });
  return {
    // What deduction and the page do not look at would only weigh.
    cells: table.cells.map((cell) => ({ ...cell, readings: [], comesOff: [] })),
    sets: table.sets,
    tests,
    cautions: used.map(({ id, data }) => ({ title: data.title, says: data.summary, href: link(`/cautions/${id}/`) })),
  };
}
