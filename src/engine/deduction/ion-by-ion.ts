/**
 * In how many ways the samples can hold their salts, counted ion by ion instead of sample by sample. Where every salt has one ion of each
 * kind, each ion of a kind is held by a set of samples, the sets of all ions fill the samples exactly, and each statement about that kind
 * asks something of every such set by itself. So nothing need be remembered of which ions were used: only which samples have theirs.
 *
 * That takes care of one kind. The other may then be bound only by a number in all, and exactly m of n ions is a sum over the sets T of at
 * most m ions from which all samples are served (inclusion and exclusion: Stanley, Enumerative Combinatorics 1, chapter 2, from memory):
 * the sum of (-1)^(m - |T|) C(n - |T|, m - |T|) f(T). Ions that every sample treats alike are counted, not named, and samples that have the
 * same choices and stand in the same statements are counted too.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { type Count, countedSets, type Family } from "./counted-sets.ts";
import type { Constraint, Kind, Rule } from "./rules.ts";
import { type Kin, servings } from "./servings.ts";
import { spend, type Work } from "./work.ts";

export interface Ways {
  assignments: number;
  /** ways[s][i]: assignments in which sample s holds the i-th of its salts. */
  ways: number[][];
}

const OTHER = { cations: "anions", anions: "cations" } as const;

/**
 * @param options options[s]: salts (indices) sample s may hold
 * @returns undefined where this way of counting does not do: salts with several ions of a kind, statements about groups for both kinds, or
 *   sums of terms of both signs too large to be exact. What is returned is exact up to 2^53.
 * @throws TooMuchWork
 */
export function countIonByIon(
  { salts }: PredictionTable,
  options: readonly (readonly number[])[],
  rules: readonly Rule[],
  work: Work,
): Ways | undefined {
  const about = rules.flatMap((rule) => rule.about);
  spend(
    work,
    options.reduce((sum, list) => sum + list.length, 0),
  );
  const used = [...new Set(options.flat())];
  if (used.some((salt) => salts[salt].cations.length > 1 || salts[salt].anions.length > 1)) return undefined;
  const ionsOf = (kind: Kind) => [...new Set(used.map((salt) => salts[salt][kind][0]))];
  const [drawn] = (["anions", "cations"] as const)
    .filter((kind) => about.every((one) => one.ion !== kind || one.says === "in all"))
    .map((kind) => ({ kind, ions: ionsOf(kind), count: inAll(about, kind) }))
    .sort((a, b) => (a.count === undefined ? 0 : a.ions.length) - (b.count === undefined ? 0 : b.ions.length));
  if (!drawn) return undefined;
  const kind = OTHER[drawn.kind];
  const ions = ionsOf(kind);
  const mine = about.filter((one) => one.ion === kind);
  // An ion that none can hold is not given out, so what is said of it must be seen to here.
  const missing = mine.some((one) => one.says === "contains" && one.least > 0 && !ions.includes(one.which));
  if (missing || options.some((list) => list.length === 0))
    return { assignments: 0, ways: options.map((list) => list.map(() => 0)) };
  const kin = kinOf(options, mine);

  /** places[x][k * ions + y]: how many salts of kin k hold ion x of the kind drawn and ion y of the other. */
  const places = drawn.ions.map((x) => {
    const place = new Float64Array(kin.length * ions.length);
    kin.forEach(({ samples: [s] }, k) => {
      for (const salt of options[s]) {
        if (salts[salt][drawn.kind][0] === x) place[k * ions.length + ions.indexOf(salts[salt][kind][0])]++;
      }
    });
    return place;
  });
  const families = familiesOf(places);
  const sum: Count = {
    assignments: 0,
    magnitude: 0,
    held: families.map(() => new Float64Array(kin.length * ions.length)),
  };
  const serve = servings(kin, ions, mine, work);
  for (const set of countedSets(families, drawn.count, work)) serve(set, sum);
  // Every number made on the way is a part of one of these; with one set nothing is taken away again.
  if (drawn.count !== undefined && sum.magnitude * options.length > Number.MAX_SAFE_INTEGER) return undefined;

  const kinOfSample = options.map((_, s) => kin.findIndex(({ samples }) => samples.includes(s)));
  const familyOf = new Map(families.flatMap(({ members }, f) => members.map((x) => [drawn.ions[x], f] as const)));
  const place = (s: number, salt: number) => kinOfSample[s] * ions.length + ions.indexOf(salts[salt][kind][0]);
  return {
    assignments: sum.assignments,
    ways: options.map((list, s) =>
      list.map((salt) => sum.held[familyOf.get(salts[salt][drawn.kind][0]) as number][place(s, salt)]),
    ),
  };
}

const inAll = (about: readonly Constraint[], kind: Kind): number | undefined =>
  about.flatMap((one) => (one.ion === kind && one.says === "in all" ? [one.count] : []))[0];

/** Samples with the same choices that stand in the same statements. */
function kinOf(options: readonly (readonly number[])[], about: readonly Constraint[]): Kin[] {
  const kin = new Map<string, Kin>();
  options.forEach((list, s) => {
    const within = about.map((one) => "samples" in one && one.samples.includes(s));
    const key = `${list.join()} ${within.join()}`;
    const known = kin.get(key);
    if (known) known.samples.push(s);
    else kin.set(key, { samples: [s], within });
  });
  return [...kin.values()];
}

function familiesOf(places: Float64Array[]): Family[] {
  const families = new Map<string, Family>();
  places.forEach((place, x) => {
    const key = place.join();
    const known = families.get(key);
    if (known) known.members.push(x);
    else families.set(key, { members: [x], places: place });
  });
  return [...families.values()];
}
