/** Where each tube is emptied: one bottle for each, and which bottles have to stand ready. */
import { SAMPLE_CAUTIONS } from "../constants/bench-cautions.ts";
import { type Waste, wastes } from "../constants/reagents.ts";
import type { Statement } from "../practical.ts";
import type { BenchPlan, WasteRow } from "./bench-plan.ts";
import { DELIVERY, type GasKit } from "./gas-plan.ts";
import { reagentOf } from "./reagent-plan.ts";
import type { TubePlan } from "./tube-plan.ts";

/**
 * Kinds of waste that are collected. A tube that holds several goes into the bottle of the first: the order of the waste page, lead before
 * all. Common practice, no source.
 */
export const COLLECTED: readonly Waste[] = ["lead", "chromium(VI)", "silver", "barium", "heavy metal"];

/** What the others in a bottle ask for, besides a word on its label. */
const ALSO: Partial<Record<Waste, string>> = { barium: "Add a little of a sulfate first, for the barium." };

/** Silver and ammonia kept together can explode, so nothing with ammonia reaches silver before it is acid. */
const BESIDE_SILVER = "Silver goes into this bottle too: make anything with ammonia acidic first.";

const SINK = "Acid and alkali neutralised, then down the sink with plenty of water, when your teacher says so.";

/** The tubes that a gas was led or bubbled into, as the waste list names them. */
export const LIMEWATER_TUBES = "limewater tubes";

/** Tubes filled with the same kinds of waste, by part. */
export interface Emptied {
  /** Bottle, and the other collected kinds the tube may hold. */
  kinds: Waste[];
  tubes: string[];
  because: string[];
  /** Nothing to neutralise: water is enough. */
  drain?: true;
}

/** The tubes of each plan with the collected kinds of waste they may hold, grouped. */
export function emptied(
  plans: readonly Pick<TubePlan, "tubes" | "uses">[],
  paper: Pick<Statement, "cations" | "anions">,
): Emptied[] {
  const held = COLLECTED.filter((waste) =>
    [...paper.cations, ...paper.anions].some((ion) => SAMPLE_CAUTIONS[ion]?.waste === waste),
  );
  const groups = new Map<string, Emptied>();
  for (const { tubes, uses } of plans) {
    if (tubes.length === 0) continue;
    const reagents = uses.map(({ id }) => reagentOf(id));
    const adds = (waste: Waste) => reagents.some((one) => one.waste === waste);
    const kinds = COLLECTED.filter((waste) => held.includes(waste) || adds(waste));
    const group = groups.get(kinds.join()) ?? { kinds, tubes: [], because: [] };
    group.tubes.push(...tubes.map(({ label }) => label));
    if (held.includes(kinds[0])) group.because.push("what the samples may hold");
    group.because.push(...reagents.filter(({ waste }) => waste === kinds[0]).map(({ name }) => name));
    groups.set(kinds.join(), group);
  }
  return [...groups.values()].sort((a, b) => place(a) - place(b));
}

/** Place of its bottle on the bench; the sink comes last. */
const place = ({ kinds: [first] }: Emptied): number => (first ? COLLECTED.indexOf(first) : COLLECTED.length);

/** The table of tubes and bottles. */
export function wasteRows(groups: readonly Emptied[]): WasteRow[] {
  const takesSilver = (bottle: Waste) =>
    bottle !== "silver" && groups.some(({ kinds }) => kinds[0] === bottle && kinds.includes("silver"));
  return groups.map(({ kinds: [first, ...others], tubes, drain }) => {
    if (!first) return { tubes, kinds: [], how: drain ? wastes.drain : SINK };
    if (first === "solid")
      return { tubes, kinds: [first], bottle: "solid waste", how: "Wet, into the solid waste, not the sink." };
    const label = others.length > 0 ? [`May also hold ${others.join(" and ")}: write it on the bottle.`] : [];
    const how = [wastes[first], ...label, ...others.flatMap((other) => ALSO[other] ?? [])];
    if (takesSilver(first)) how.push(BESIDE_SILVER);
    return { tubes, kinds: [first, ...others], bottle: bottleOf(first), how: how.join(" ") };
  });
}

/** What the tests of gases leave: tubes of limewater and used papers, in the order of the tests. */
export function emptiedBesides(tests: readonly GasKit[]): Emptied[] {
  const left = new Map<Waste | undefined, Set<string>>();
  for (const test of tests) {
    const row = LEFT[test];
    if (row) left.set(row.waste, (left.get(row.waste) ?? new Set()).add(row.what));
  }
  return [...left].map(([waste, what]) => ({
    ...(waste ? { kinds: [waste] } : { kinds: [], drain: true }),
    tubes: [...what],
    because: ["used papers"],
  }));
}

/** Common practice, no source. What is in no row is a splint or a rod: the one is burnt, the other rinsed. */
const LEFT: Partial<Record<GasKit, { what: string; waste?: Waste }>> = {
  limewater: { what: LIMEWATER_TUBES },
  [DELIVERY]: { what: LIMEWATER_TUBES },
  "damp red litmus": { what: "used papers", waste: "solid" },
  "damp blue litmus": { what: "used papers", waste: "solid" },
  "acidified manganate(VII) paper": { what: "used papers", waste: "solid" },
  "acidified dichromate(VI) paper": { what: "used dichromate(VI) papers", waste: "chromium(VI)" },
  "cobalt(II) chloride paper": { what: "used cobalt(II) chloride papers", waste: "heavy metal" },
};

/** One bottle for each kind that some tube is emptied into. */
export function wasteBottles(groups: readonly Emptied[]): BenchPlan["extras"] {
  return COLLECTED.flatMap((waste) => {
    const because = new Set(groups.filter(({ kinds }) => kinds[0] === waste).flatMap((group) => group.because));
    if (because.size === 0) return [];
    return [{ what: bottleOf(waste), count: 1, because: [...because].join("; ") }];
  });
}

const bottleOf = (waste: Waste): string => `${waste} waste bottle`;
