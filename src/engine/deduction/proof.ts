/**
 * The fewest observations that prove something: with them alone, and what the paper says, nothing else is left. Every assignment that would
 * disprove it must clash with one of them, so they are a smallest set that hits the clashes of each. Those assignments are too many to
 * write down; the few that matter are found one after the other (the implicit hitting set method: Moreno-Centeno and Karp, Operations
 * Research 61 (2013) 453, from memory): a smallest set for those known so far either refutes all the others as well, or one that it does
 * not refute is added to them.
 */
import type { PredictionTable, TableRecord } from "../bench/prediction-table.ts";
import { type Candidate, candidates } from "./candidates.ts";
import type { Place } from "./conclusion.ts";
import { fewestClashes } from "./fewest-clashes.ts";
import { type Elements, smallestHittingSet } from "./hitting-sets.ts";
import { joint } from "./joint.ts";
import { inWords, type Kind, type Rule, rulesOf } from "./rules.ts";
import { aPagesWork } from "./work.ts";

export interface Proof {
  /** In the order of the samples, then of the paper. */
  places: Place[];
  /** The statements of the paper without which these observations would not do, in words; absent when they need none. */
  statement?: string;
  /** Other sets of as many observations prove it too. */
  several: boolean;
}

/** What is to be refuted: for each entry, that the sample (index) holds one of the salts that `holds` picks. */
type Refuted = { sample: number; holds: (salt: number) => boolean }[];

/** Counter-examples taken at once: the cheaper they are, the more they say. */
const AT_ONCE = 8;

/**
 * Proof that a sample holds an ion.
 * @param sample index
 * @returns undefined when the record does not prove it
 * @throws TooMuchWork
 */
export function proofOfIon(
  table: PredictionTable,
  record: TableRecord,
  sample: number,
  kind: Kind,
  ion: string,
): Proof | undefined {
  return prove(table, record, [{ sample, holds: (salt) => !table.salts[salt][kind].includes(ion) }]);
}

/**
 * Proof that the samples hold these salts and no others: what decides a practical.
 * @param answers index of the salt of each sample
 * @returns undefined when the record leaves something else possible too
 * @throws TooMuchWork
 */
export function proofOfAnswers(
  table: PredictionTable,
  record: TableRecord,
  answers: readonly number[],
): Proof | undefined {
  return prove(
    table,
    record,
    answers.map((answer, sample) => ({ sample, holds: (salt) => salt !== answer })),
  );
}

function prove(table: PredictionTable, record: TableRecord, refuted: Refuted): Proof | undefined {
  const work = aPagesWork();
  const rules = rulesOf(table);
  const all = table.samples.map((_, s) => candidates(table, record, s));
  const width = table.cells.length;
  /** Assignments that would disprove it and agree with the observations of `kept`, as the numbers of the places they clash with. */
  const against = (kept: Elements, under: readonly Rule[]): Elements[] => {
    const seen = new Set(kept);
    const agree = all.map((list, s) =>
      list.filter(({ clashes }) => !clashes.some((cell) => seen.has(s * width + cell))),
    );
    return refuted.flatMap(({ sample, holds }) => {
      const lists = agree.map((list, s): Candidate[] => (s === sample ? list.filter(({ salt }) => holds(salt)) : list));
      return fewestClashes(table, lists, under, AT_ONCE, work).map((cells) =>
        cells.flatMap((own, s) => own.map((cell) => s * width + cell)),
      );
    });
  };
  const left = all.map((list) => list.flatMap(({ salt, clashes }) => (clashes.length === 0 ? [salt] : [])));
  // From a record that fits nothing anything would follow.
  if (joint(table, left, rules, work).assignments === 0) return undefined;
  const known: Elements[] = [];
  /** A smallest set without the spared element that leaves nothing to refute; `undefined` when none has as few as `limit` elements. */
  const search = (limit?: number, spared?: number): Elements | undefined => {
    for (;;) {
      const sets = spared === undefined ? known : known.map((set) => set.filter((place) => place !== spared));
      const set = smallestHittingSet(sets, work, limit);
      if (!set) return undefined;
      const missed = against(set, rules);
      if (missed.length === 0) return set;
      known.push(...missed);
    }
  };
  const places = search();
  if (!places) return undefined;
  // Another set of as many lacks one of these.
  const several = places.some((place) => search(places.length, place) !== undefined);
  const without = inWords(rules, (kept) => against(places, kept).length === 0);
  return {
    places: places.map((place) => ({
      sample: table.samples[Math.floor(place / width)].label,
      cell: table.cells[place % width].id,
    })),
    ...(without && { statement: without }),
    several,
  };
}
