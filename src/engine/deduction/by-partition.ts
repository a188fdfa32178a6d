/**
 * In how many ways the samples can hold their salts where statements tie groups of them together for cations and for anions both: over
 * every pair of partitions, one for each kind (partitions.ts), the ways in which the samples of a block agree in their ion of that kind.
 * Each pair falls into parts that have nothing to do with one another (agreeing-samples.ts).
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { type Agreeing, agreeingSamples } from "./agreeing-samples.ts";
import type { Ways } from "./ion-by-ion.ts";
import { casesOf, type Options } from "./named-ions.ts";
import { offersOf } from "./offers.ts";
import { type Partition, partitionsFor } from "./partitions.ts";
import type { Kind, Rule } from "./rules.ts";
import { spend, type Work } from "./work.ts";

/** Laying two partitions over each other, in steps of the other ways of counting. */
const LAID = 60;

/** What the paper says of groups and numbers, for each kind. */
export interface Partitions {
  cations: Partition[];
  anions: Partition[];
  /** Counting over all pairs takes some such number of steps, more where the choices of the samples differ. */
  steps: number;
}

/** @throws TooMuchWork */
export function partitionsOf(samples: number, rules: readonly Rule[], work: Work): Partitions {
  const about = rules.flatMap((rule) => rule.about);
  const partitions = (kind: Kind) =>
    partitionsFor(
      samples,
      about.filter(({ ion }) => ion === kind),
      work,
    );
  const [cations, anions] = [partitions("cations"), partitions("anions")];
  return { cations, anions, steps: LAID * cations.length * anions.length };
}

/**
 * @param options options[s]: salts (indices) sample s may hold
 * @param partitions those of the rules
 * @returns undefined where this way of counting does not do: salts with several ions of a kind, or sums of terms of both signs too large
 *   to be exact
 * @throws TooMuchWork
 */
export function countByPartition(
  { salts }: PredictionTable,
  options: Options,
  rules: readonly Rule[],
  { cations, anions, steps }: Partitions,
  work: Work,
): Ways | undefined {
  if (options.some((list) => list.some((salt) => salts[salt].cations.length > 1 || salts[salt].anions.length > 1)))
    return undefined;
  const about = rules.flatMap((rule) => rule.about);
  const sum: Ways = { assignments: 0, ways: options.map((list) => list.map(() => 0)) };
  let magnitude = 0;
  for (const { times, options: within } of casesOf(salts, options, about, work)) {
    spend(work, steps);
    const counted = countWithin(salts, within, cations, anions, work);
    magnitude += counted.magnitude;
    sum.assignments += times * counted.assignments;
    options.forEach((list, s) => {
      list.forEach((salt, i) => {
        sum.ways[s][i] += times * (counted.ways[s].get(salt) ?? 0);
      });
    });
  }
  // Every number made on the way is a part of this.
  return magnitude > Number.MAX_SAFE_INTEGER ? undefined : sum;
}

interface Counted {
  assignments: number;
  /** The same without signs: bounds what rounding could do. */
  magnitude: number;
  /** For each sample, the assignments in which it holds a salt. */
  ways: Map<number, number>[];
}

function countWithin(
  salts: PredictionTable["salts"],
  options: Options,
  cations: readonly Partition[],
  anions: readonly Partition[],
  work: Work,
): Counted {
  const offers = offersOf(salts, options);
  const agreeing = agreeingSamples(offers, work);
  const number = numbered();
  /** Parts by their blocks, and how often the ways of each count. */
  const parts = new Map<number, Agreeing & { times: number }>();
  const partOf = (bits: number, cation: Partition, anion: Partition) => {
    const key = number(cation, bits) * 2 ** 24 + number(anion, bits);
    const known = parts.get(key);
    if (known) return known;
    const part = { ...agreeing(bits, cation.blocks, anion.blocks), times: 0 };
    parts.set(key, part);
    return part;
  };
  let [assignments, magnitude] = [0, 0];
  for (const cation of cations) {
    for (const anion of anions) {
      const here = apart(cation.blocks, anion.blocks).map((bits) => partOf(bits, cation, anion));
      const ways = here.reduce((product, part) => product * part.ways, cation.times * anion.times);
      if (ways === 0) continue;
      assignments += ways;
      magnitude += Math.abs(ways);
      for (const part of here) part.times += ways / part.ways;
    }
  }
  // The same ways are added up once for each sample.
  const shares = options.map(() => new Map<Float64Array, number>());
  for (const { samples, held, times } of parts.values())
    samples.forEach((s, i) => {
      shares[s].set(held[i], (shares[s].get(held[i]) ?? 0) + times);
    });
  const ways = options.map((list, s) => {
    const pairs = offers.salts[s].map(() => 0);
    for (const [held, times] of shares[s])
      for (let pair = 0; pair < pairs.length; pair++) pairs[pair] += times * held[pair];
    const count = pairs.map(() => 0);
    for (const salt of list) count[offers.pairOf(salt)]++;
    // The salts of a pair share alike.
    return new Map(list.map((salt) => [salt, pairs[offers.pairOf(salt)] / count[offers.pairOf(salt)]]));
  });
  return { assignments, magnitude, ways };
}

/** The samples as bits, in parts that no block reaches out of. */
function apart(cations: readonly number[], anions: readonly number[]): number[] {
  let parts = [...cations];
  for (const block of anions) {
    let merged = 0;
    const others: number[] = [];
    for (const part of parts) {
      if (part & block) merged |= part;
      else others.push(part);
    }
    others.push(merged);
    parts = others;
  }
  return parts;
}

/** Numbers for what a partition says of some of the samples, the same for the same blocks. */
function numbered(): (partition: Partition, bits: number) => number {
  const numbers = new Map<string, number>();
  const known = new Map<Partition, number[]>();
  return (partition, bits) => {
    const own = known.get(partition) ?? [];
    known.set(partition, own);
    if (own[bits] !== undefined) return own[bits];
    const key = partition.blocks.filter((block) => block & bits).join();
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    own[bits] = number;
    return number;
  };
}
