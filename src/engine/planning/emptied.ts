/** What is emptied together: every tube by the kinds of waste it may hold, and apart from what it must not meet. */
import { WATCH_GLASS } from "#words/bench.ts";
import { MAY_HOLD } from "#words/emptying.ts";
import { reagentName } from "#words/steps.ts";
import { broughtBy, notMixedIn } from "../bench/unsafe-mixtures.ts";
import { SAMPLE_CAUTIONS } from "../constants/bench-cautions.ts";
import { EMPTIED_APART, type EmptiedApart } from "../constants/emptied-apart.ts";
import type { NotMixed } from "../constants/not-mixed.ts";
import type { Waste } from "../constants/reagents.ts";
import { molarMass } from "../formula/molar-mass.ts";
import type { Statement } from "../practical.ts";
import { reagentOf } from "./reagent-plan.ts";
import type { TubePlan } from "./tube-plan.ts";

/**
 * Kinds of waste that are collected. A tube that holds several goes into the bottle of the first: the order of the waste page, lead before
 * all. Common practice, no source.
 */
export const COLLECTED: readonly Waste[] = ["lead", "chromium(VI)", "silver", "barium", "heavy metal"];

/** Tubes that are emptied into one vessel in one way. */
export interface Emptied {
  /** Collected kinds it may hold, that of the bottle first. */
  kinds: Waste[];
  tubes: string[];
  because: string[];
  /** Rows of what in it is emptied apart. */
  apart?: EmptiedApart[];
  /** What is added to them first. */
  first?: NonNullable<EmptiedApart["first"]>[];
  /** Its bottle, where that stands beside the usual one. */
  own?: OwnBottle;
  /** Ammonia on its way to silver: alkali that the acid in the bottle has to take, mmol. */
  ammonia?: number;
  /** Acid of the reagents that solid carbonate takes before they are emptied, mmol of H+. */
  acid: number;
  /** Barium that may be in it, mmol. */
  barium: number;
  /** Nothing to neutralise: water is enough. */
  drain?: true;
}

/** A second bottle of one kind: the parts it is for, and what would come together in the usual one. */
type OwnBottle = Filling & Required<Pick<Filling, "mixture">>;

/** What one part leaves of one sample: tubes, or the watch glass of a flame test, and what went in. */
export interface Filled {
  part: string;
  sample: string;
  /** Strength of the sample where it is a solution. */
  molPerDm3?: number;
  plan: Pick<TubePlan, "tubes" | "uses" | "acid" | "solutionCm3" | "solidG">;
}

/** Everything filled, with the collected kinds of waste it may hold, grouped by where and how it is emptied. */
export function emptied(filled: readonly Filled[], paper: Pick<Statement, "cations" | "anions">): Emptied[] {
  const ions = [...paper.cations, ...paper.anions];
  const held = COLLECTED.filter((waste) => ions.some((ion) => SAMPLE_CAUTIONS[ion]?.waste === waste));
  const groups: Emptied[] = [];
  const bottles = new Map<Waste, Filling[]>();
  const all = filled.map((one) => {
    const reagents = one.plan.uses.map(({ id }) => reagentOf(id));
    const kinds = COLLECTED.filter((waste) => held.includes(waste) || reagents.some((each) => each.waste === waste));
    return { ...one, reagents, kinds, ...treated(one.plan, ions) };
  });
  // Bottles into which silver goes: acid stands in them for the ammonia of any tube.
  const withSilver = new Set(all.flatMap(({ kinds }) => (kinds.includes("silver") ? [kinds[0]] : [])));
  // What asks for nothing takes the usual bottle.
  for (const one of all.toSorted((a, b) => a.apart.length - b.apart.length)) {
    const { part, sample, plan, holds, apart, first, reagents, kinds } = one;
    const meetsSilver = withSilver.has(kinds[0]) && holds.delete("NH3");
    if (meetsSilver) holds.add("H+");
    const ammonia = meetsSilver && plan.acid <= 0;
    const own = kinds[0] && ownBottle(bottles, kinds[0], part, holds);
    const key = JSON.stringify([kinds, apart, first, ammonia]);
    const keyOf = (other: Emptied) =>
      JSON.stringify([other.kinds, other.apart, other.first, other.ammonia !== undefined]);
    let group = groups.find((other) => other.own === own && keyOf(other) === key);
    if (!group) {
      group = { kinds, tubes: [], because: [], apart, first, own, acid: 0, barium: 0, ...(ammonia && { ammonia: 0 }) };
      groups.push(group);
    }
    if (group.ammonia !== undefined) group.ammonia -= plan.acid;
    if (first.some(({ takes }) => takes === "acid")) group.acid += Math.max(0, plan.acid);
    group.barium += bariumIn(one, paper);
    group.tubes.push(
      ...(plan.tubes.length > 0 ? plan.tubes.map(({ label }) => label) : [`${sample} ${part} ${WATCH_GLASS}`]),
    );
    if (held.includes(kinds[0])) group.because.push(MAY_HOLD);
    group.because.push(
      ...reagents.filter(({ waste }) => waste === kinds[0]).map(({ id, name }) => reagentName(id, name)),
    );
  }
  return groups.sort((a, b) => place(a) - place(b));
}

/** What a tube holds once that has been added which is added first, and why it is emptied by itself, before and after. */
function treated(plan: Filled["plan"], ions: readonly string[]) {
  const holds = new Set([...ions, ...plan.uses.flatMap(({ id }) => broughtBy(id))]);
  const some = (of: readonly string[] = []) => of.some((ion) => holds.has(ion));
  const rows = () => EMPTIED_APART.filter((row) => some(row.holds) && (!row.beside || some(row.beside)));
  const before = rows();
  const acting = before.filter((row) => row.first && (row.first.takes === "it" || plan.acid > 0));
  for (const { holds: gone, first } of acting) {
    if (first?.takes === "it") for (const ion of gone) holds.delete(ion);
    for (const ion of first?.leaves ?? []) holds.add(ion);
  }
  return {
    holds,
    apart: [...new Set([...before, ...rows()])],
    first: distinct(acting.flatMap(({ first }) => first ?? [])),
  };
}

/** One for each thing that is added. */
const distinct = (all: NonNullable<EmptiedApart["first"]>[]) =>
  all.filter(({ adds }, n) => all.findIndex((one) => one.adds === adds) === n);

/** Barium of the reagents, and of a sample that may hold it: at most all of its solution, or of a solid's mass, mmol. */
function bariumIn({ plan, molPerDm3 = 0 }: Filled, { cations }: Pick<Statement, "cations">): number {
  const poured = plan.uses.reduce((sum, use) => {
    const { components, concentration } = reagentOf(use.id);
    return sum + use.cm3 * (components[BARIUM] ?? 0) * (use.molPerDm3 ?? concentration ?? 0);
  }, 0);
  const taken = plan.solutionCm3 * molPerDm3 + (plan.solidG * 1000) / molarMass("Ba");
  return poured + (cations.includes(BARIUM) ? taken : 0);
}

const BARIUM = "Ba^2+";

/** A bottle as it fills: what is in it, and from which parts. `mixture` is why it stands beside the usual one. */
interface Filling {
  holds: ReadonlySet<string>;
  parts: Set<string>;
  mixture?: NotMixed;
}

/**
 * The bottle of this kind that a tube goes into: the first in which nothing comes together that is not mixed in class, hot or cold, for
 * bottles stand long. A tube that holds such a mixture already meets the tubes of its own part only. Undefined for the usual bottle.
 */
function ownBottle(
  bottles: Map<Waste, Filling[]>,
  waste: Waste,
  part: string,
  holds: ReadonlySet<string>,
): OwnBottle | undefined {
  const ready = bottles.get(waste) ?? [];
  const meets = (bottle: Filling) => notMixedIn(new Set([...bottle.holds, ...holds]));
  let bottle = ready.find((one) => (one.parts.size === 1 && one.parts.has(part)) || meets(one).length === 0);
  if (bottle) {
    bottle.holds = new Set([...bottle.holds, ...holds]);
    bottle.parts.add(part);
  } else {
    bottle = { holds, parts: new Set([part]), ...(ready[0] && { mixture: meets(ready[0])[0] }) };
    bottles.set(waste, [...ready, bottle]);
  }
  return bottle.mixture && (bottle as OwnBottle);
}

/** Place of its bottle on the bench; the sink comes last. */
const place = ({ kinds: [first] }: Emptied): number => (first ? COLLECTED.indexOf(first) : COLLECTED.length);
