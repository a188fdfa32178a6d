/**
 * Practicals by the thousand, to measure what a long course costs. Each is drawn from a seed and right by construction: its salts are ones
 * the paper allows and a bottle can hold, its parts are standard tests, its record is what the engine predicts, and what these tests leave
 * open is said. So the check has everything to do and nothing to complain about.
 */
import { stringify } from "yaml";
import { cannotBe, pairsOf } from "../../src/engine/bench/allowed-salts.ts";
import { createPredictor, type Predictor } from "../../src/engine/bench/predictor.ts";
import { recordInTable } from "../../src/engine/bench/record-in-table.ts";
import { formKey, TooManyReadings } from "../../src/engine/bench/tabulate.ts";
import { ION_LISTS } from "../../src/engine/constants/ions.ts";
import { STANDARD_TESTS } from "../../src/engine/constants/standard-tests.ts";
import { undecided } from "../../src/engine/deduction/deduce.ts";
import { createSolver, phrase, readPractical, tabulate } from "../../src/engine/index.ts";

/** Tests an ordinary paper asks for. */
const ASKED = ["sodium-hydroxide", "ammonia", "halide", "sulfate", "carbonate", "sulfuric-acid", "iodide", "flame"];
const STRENGTHS = [0.05, 0.1, 0.2];
const LABELS = ["A", "B", "C", "D"];
/** Ions a paper offers, parts it has, samples it gives. */
const [CATIONS, ANIONS, PARTS, SAMPLES] = [5, 3, 3, 2];
/** Draws that leave too few salts, or more sights than a line holds, are drawn again so many times. */
const MOST_DRAWS = 50;

export interface SyntheticPractical {
  /** Its file, without the ending. */
  name: string;
  text: string;
}

/** One predictor for all: practicals that share a salt, a strength and a part share the prediction. */
export function createGenerator(predictor: Predictor = createPredictor(createSolver())) {
  return (seed: number): SyntheticPractical => {
    const random = drawing(seed);
    for (let draws = 0; draws < MOST_DRAWS; draws++) {
      const text = drawOne(random, seed, predictor);
      if (text !== undefined) return { name: `synthetic-${String(seed).padStart(4, "0")}`, text };
    }
    throw new Error(`Seed ${seed} gave no practical in ${MOST_DRAWS} draws.`);
  };
}

function drawOne(random: () => number, seed: number, predictor: Predictor): string | undefined {
  const school = ION_LISTS.school;
  const paper = { cations: pick(school.cations, CATIONS, random), anions: pick(school.anions, ANIONS, random) };
  const strength = pick(STRENGTHS, 1, random)[0];
  const tests = pick(ASKED, PARTS, random).map(
    (id) => STANDARD_TESTS.find((test) => test.id === id) as (typeof STANDARD_TESTS)[0],
  );
  const form = { given: "solution" as const, concentration: { molPerDm3: strength } };
  const nothing = { share: [], differ: [], same: [], contains: [] };
  const possible = pairsOf({ ...paper, ...nothing } as Parameters<typeof pairsOf>[0]).filter(
    (salt) => cannotBe(salt, form, predictor.solve) === undefined,
  );
  if (possible.length < SAMPLES) return undefined;
  const salts = pick(possible, SAMPLES, random);
  const frontmatter = {
    title: `Two bottles from shelf ${seed}`,
    summary: `Two solutions without labels, from an invented shelf with the number ${seed}.`,
    level: "core",
    minutes: 60,
    order: seed + 1,
    samples: salts.map(({ formula }, index) => ({
      label: LABELS[index],
      given: "solution",
      concentration: `${strength} mol/dm3`,
      salt: formula,
    })),
    paper,
    parts: tests.map(({ title, tests: lines }, index) => ({
      label: "abcdefgh"[index],
      title,
      tests: lines.map((steps) => ({ steps })),
    })),
  };
  const read = readPractical({ ...frontmatter, record: {} });
  if ("faults" in read) throw new Error(`Seed ${seed}: ${read.faults.map(({ message }) => message).join("; ")}`);
  try {
    const { table, predictions } = tabulate(read.practical, predictor, phrase);
    const record = Object.fromEntries(
      read.practical.samples.map((sample, index) => {
        const shown = predictions.get(formKey(sample))?.get(salts[index].formula) ?? new Map();
        return [sample.label, Object.fromEntries([...shown].map(([cell, { readings }]) => [cell, readings[0]]))];
      }),
    );
    const left = undecided(table, recordInTable(table, record, phrase));
    const open = read.practical.samples.flatMap(({ label }, index) => {
      const others = left[label].map((salt) => table.salts[salt].formula).filter((one) => one !== salts[index].formula);
      return others.length > 0 ? [[label, others]] : [];
    });
    return page({ ...frontmatter, record, ...(open.length > 0 && { undecided: Object.fromEntries(open) }) });
  } catch (error) {
    if (error instanceof TooManyReadings) return undefined;
    throw error;
  }
}

const page = (frontmatter: object) => `---
${stringify(frontmatter, { aliasDuplicateObjects: false })}---

Two bottles stand on a shelf that nobody has looked at for years. Do the tests in the order of the paper, one fresh tube for each sample,
and write down what you see before you think about what it means. This text stands for what an author would say.
`;

/** Some of a list, each once, in the list's own order. */
function pick<T>(list: readonly T[], count: number, random: () => number): T[] {
  const left = list.map((_, index) => index);
  const taken = Array.from(
    { length: Math.min(count, list.length) },
    () => left.splice(Math.floor(random() * left.length), 1)[0],
  );
  return taken.sort((a, b) => a - b).map((index) => list[index]);
}

/** Numbers from 0 to 1 from a seed: Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (2003) 14, triple 13, 17, 5. From memory. */
function drawing(seed: number): () => number {
  let state = (seed + 1) * 2_654_435_761;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
