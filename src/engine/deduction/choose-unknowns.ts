/**
 * Which unknowns to give out: the sets from a store that the tests decide, and how hard each is. A set is decided when the record it would
 * give, of the likeliest sight of each test, leaves it and nothing else, over all salts the paper allows, whether in the store or not. All figures of a set are exact. The number
 * of sets can be too large to look at each: then so many are looked at, from all over the store, and the answer says so.
 */
import type { PredictionTable } from "../bench/prediction-table.ts";
import { type OtherSight, openAtBorder, otherSights } from "./border-sights.ts";
import { type Judged, oneObservationAway, STANDINGS, type Standing, standingOf } from "./hardness.ts";
import { nearestOther } from "./nearest-other.ts";
import { type Paths, pathsOf } from "./paths.ts";
import { type Rule, rulesOf } from "./rules.ts";
import { rowOf, type Separations, separationsOf } from "./separations.ts";
import {
  countSets,
  interchangeable,
  isSafe,
  type SetsFound,
  setsOfUnknowns,
  type UnknownSet,
} from "./sets-of-unknowns.ts";
import type { Work } from "./work.ts";

/** A set with its figures. */
export interface JudgedSet extends Judged {
  salts: UnknownSet;
}

export interface Choice {
  /** How many sets there are and how many of them are decided. Absent where the paper ties samples together and not all were looked at. */
  inAll?: { sets: number; decided: number };
  /** Sets looked at. */
  looked: number;
  /** Sets looked at, by standing. */
  found: Record<Standing, number>;
  /** Decided sets looked at that a sight at the border would leave open. */
  bordering: number;
  /** For each standing the sets to choose from, at most `listed` of them: different from one another first, then as `ranked` has it. */
  sets: Record<Standing, JudgedSet[]>;
}

export interface Bounds {
  /** Sets of each standing to name. */
  listed: number;
  /** Sets to look at. */
  looked: number;
  /** Steps from one sample to the next, over all sets: 2 million take about a quarter of a second. */
  steps: number;
}

export const BOUNDS: Bounds = { listed: 12, looked: 7_000, steps: 2_000_000 };

/**
 * @param store salts (indices into the table's) to choose from; one that cannot be a sample as given, or that a test done on it is unsafe
 * for, is never chosen for it
 */
export function chooseUnknowns(table: PredictionTable, store: readonly number[], bounds: Bounds = BOUNDS): Choice {
  const rules = rulesOf(table);
  const apart = separationsOf(table);
  const paths = pathsOf(table, rules);
  const within = (salts: readonly number[], share: number): SetsFound =>
    setsOfUnknowns(table, rules, paths, salts, bounds.looked * share, { left: (bounds.steps / 2) * share });
  const whole = within(store, 1);
  // A set of salts that are each decided by themselves is decided: of too many sets, half are looked for among these.
  const sure = store.filter((salt) => apart.every((of, s) => of[salt] === undefined || aloneDecided(apart, s, salt)));
  const sets = whole.complete
    ? whole.sets
    : [
        ...new Map(
          [...within(sure, 0.5).sets, ...within(store, 0.5).sets].map((set): [string, UnknownSet] => [set.join(), set]),
        ).values(),
      ];
  const work: Work = { left: bounds.steps };
  const judgeOne = judgeWith(table, paths, apart);
  const judged: JudgedSet[] = [];
  for (const salts of sets) {
    const one = judgeOne(salts, work);
    if (!one) break;
    judged.push({ ...one, salts });
  }
  const found = Object.fromEntries(
    STANDINGS.map((standing) => [standing, judged.filter((one) => one.standing === standing).length]),
  ) as Choice["found"];
  const all = whole.complete && judged.length === sets.length;
  const inAll = all
    ? { sets: judged.length, decided: judged.length - found.undecided }
    : countedApart(table, rules, apart, store);
  return {
    ...(inAll && { inAll }),
    looked: judged.length,
    found,
    bordering: judged.filter(({ borders }) => borders.length > 0).length,
    sets: Object.fromEntries(
      STANDINGS.map((standing) => {
        const own = judged.filter((one) => one.standing === standing);
        return [standing, different(ranked(table, own), bounds.listed)];
      }),
    ) as Choice["sets"],
  };
}

/**
 * The figures of one set, whatever store it is from.
 * @param salts index of the salt of each sample
 * @returns undefined when the set breaks what the paper says, when a sample cannot be its salt, or when it would take too many steps
 */
export function judge(table: PredictionTable, salts: UnknownSet, steps = BOUNDS.steps): Judged | undefined {
  const paths = pathsOf(table, rulesOf(table));
  let state: number | undefined = 0;
  for (const [s, salt] of salts.entries()) {
    state = paths.from(s, state).find((step) => step.salt === salt)?.state;
    if (state === undefined) return undefined;
  }
  return judgeWith(table, paths, separationsOf(table))(salts, { left: steps });
}

/** Judges one set after the other; what is asked of a salt at a place again is not looked for again. */
function judgeWith(table: PredictionTable, paths: Paths, apart: Separations) {
  const known = table.samples.map((): OtherSight[][] => []);
  const sightsOf = (salt: number, s: number): OtherSight[] => {
    if (known[s][salt]) return known[s][salt];
    const record = { [table.samples[s].label]: rowOf(table, s, salt) };
    known[s][salt] = otherSights(table, record, s, salt);
    return known[s][salt];
  };
  return (salts: UnknownSet, work: Work): Judged | undefined => {
    const rows = salts.map((salt, s) => apart[s][salt]);
    const nearest = nearestOther(paths, rows, work);
    if (!nearest) return undefined;
    const isDecided = nearest.observations > 0;
    const borders = isDecided ? openAtBorder(table, paths, rows, salts.map(sightsOf), work) : [];
    if (!borders) return undefined;
    const leaning = salts.filter((salt, s) => !aloneDecided(apart, s, salt)).length;
    return { standing: standingOf({ nearest, leaning, borders }, salts.length), nearest, leaning, borders };
  };
}

/** Its own observations leave no other salt. */
const aloneDecided = (apart: Separations, s: number, salt: number): boolean =>
  apart[s][salt].reduce((fitting, clashes) => fitting + (clashes === 0 ? 1 : 0), 0) === 1;

/** Where the paper ties no samples together, a set is decided when each of its salts is by itself. */
function countedApart(
  table: PredictionTable,
  rules: readonly Rule[],
  apart: Separations,
  store: readonly number[],
): Choice["inAll"] {
  if (rules.length > 0) return undefined;
  const group = interchangeable(table, rules);
  const groups = (allowed: (s: number, salt: number) => boolean) =>
    [...new Set(group)].map((first) => ({
      places: group.filter((one) => one === first).length,
      salts: store.filter(
        (salt) => apart[first][salt] !== undefined && isSafe(table, first, salt) && allowed(first, salt),
      ),
    }));
  return {
    sets: countSets(groups(() => true)),
    decided: countSets(groups((s, salt) => aloneDecided(apart, s, salt))),
  };
}

/**
 * Most ions first, for a set of six different ions shows more than one of four; then the fewest samples that need another one, then the
 * fewest places where a sight at the border would leave it open, then the fewest answers one observation away, then the order of the table.
 */
function ranked(table: PredictionTable, sets: readonly JudgedSet[]): JudgedSet[] {
  const ions = ({ salts }: JudgedSet) =>
    new Set(salts.flatMap((salt) => [...table.salts[salt].cations, ...table.salts[salt].anions])).size;
  return sets
    .map((one) => ({ one, ions: ions(one) }))
    .sort((a, b) => b.ions - a.ions || byFigures(a.one, b.one) || inTableOrder(a.one.salts, b.one.salts))
    .map(({ one }) => one);
}

function byFigures(a: JudgedSet, b: JudgedSet): number {
  if (a.standing === "undecided") return a.nearest.assignments - b.nearest.assignments || a.leaning - b.leaning;
  return (
    a.leaning - b.leaning ||
    a.borders.length - b.borders.length ||
    oneObservationAway(a.nearest) - oneObservationAway(b.nearest)
  );
}

const inTableOrder = (a: UnknownSet, b: UnknownSet): number =>
  a.map((salt, s) => salt - b[s]).find((difference) => difference !== 0) ?? 0;

/** So many of a ranked list that its salts come up evenly: each time the first set whose salts were named least. */
function different(sets: readonly JudgedSet[], most: number): JudgedSet[] {
  const named: number[] = [];
  const chosen = new Set<JudgedSet>();
  while (chosen.size < Math.min(most, sets.length)) {
    let next: JudgedSet | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const one of sets) {
      let times = 0;
      for (const salt of one.salts) times += named[salt] ?? 0;
      if (times >= least || chosen.has(one)) continue;
      next = one;
      least = times;
    }
    if (!next) break;
    for (const salt of next.salts) named[salt] = (named[salt] ?? 0) + 1;
    chosen.add(next);
  }
  return [...chosen];
}
