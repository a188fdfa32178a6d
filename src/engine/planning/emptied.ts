/** What is emptied together: every tube by the kinds of waste it may hold, and apart from what it must not meet. */
import { broughtBy, notMixedIn } from "../bench/unsafe-mixtures.ts";
import { SAMPLE_CAUTIONS } from "../constants/bench-cautions.ts";
import { EMPTIED_APART, type EmptiedApart } from "../constants/emptied-apart.ts";
import type { NotMixed } from "../constants/not-mixed.ts";
import type { Waste } from "../constants/reagents.ts";
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
  /** Nothing to neutralise: water is enough. */
  drain?: true;
}

/** A second bottle of one kind: the parts it is for, and what would come together in the usual one. */
type OwnBottle = Filling & Required<Pick<Filling, "mixture">>;

/** What one part leaves of one sample: tubes, or the watch glass of a flame test, and what went in. */
export interface Filled {
  part: string;
  sample: string;
  plan: Pick<TubePlan, "tubes" | "uses" | "acid">;
}

/** Everything filled, with the collected kinds of waste it may hold, grouped by where and how it is emptied. */
export function emptied(filled: readonly Filled[], paper: Pick<Statement, "cations" | "anions">): Emptied[] {
  const ions = [...paper.cations, ...paper.anions];
  const held = COLLECTED.filter((waste) => ions.some((ion) => SAMPLE_CAUTIONS[ion]?.waste === waste));
  const groups: Emptied[] = [];
  const bottles = new Map<Waste, Filling[]>();
  const all = filled.map((one) => {
    const holds = new Set([...ions, ...one.plan.uses.flatMap(({ id }) => broughtBy(id))]);
    return { ...one, holds, apart: EMPTIED_APART.filter((row) => row.holds.some((ion) => holds.has(ion))) };
  });
  // What asks for nothing takes the usual bottle.
  for (const { part, sample, plan, holds, apart } of all.toSorted((a, b) => a.apart.length - b.apart.length)) {
    const reagents = plan.uses.map(({ id }) => reagentOf(id));
    const kinds = COLLECTED.filter((waste) => held.includes(waste) || reagents.some((one) => one.waste === waste));
    const first = apart.flatMap((row) => (row.first && (row.first.takes === "it" || plan.acid > 0) ? [row.first] : []));
    for (const gone of apart.flatMap((row) => (row.first?.takes === "it" ? row.holds : []))) holds.delete(gone);
    const own = kinds[0] && ownBottle(bottles, kinds[0], part, holds);
    const key = JSON.stringify([kinds, apart, first]);
    let group = groups.find((one) => one.own === own && JSON.stringify([one.kinds, one.apart, one.first]) === key);
    if (!group) {
      group = { kinds, tubes: [], because: [], apart, first, own };
      groups.push(group);
    }
    group.tubes.push(
      ...(plan.tubes.length > 0 ? plan.tubes.map(({ label }) => label) : [`${sample} ${part} watch glass`]),
    );
    if (held.includes(kinds[0])) group.because.push("what the samples may hold");
    group.because.push(...reagents.filter(({ waste }) => waste === kinds[0]).map(({ name }) => name));
  }
  return groups.sort((a, b) => place(a) - place(b));
}

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
