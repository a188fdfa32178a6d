/** Where each tube is emptied, in words, and which bottles have to stand ready. */
import { volume } from "#words/bench.ts";
import { said } from "#words/constants.ts";
import * as say from "#words/emptying.ts";
import { BEAKER, STRAIGHT } from "#words/vessels.ts";
import { type Waste, wastes } from "../constants/reagents.ts";
import type { BenchPlan, WasteRow } from "./bench-plan.ts";
import { COLLECTED, type Emptied } from "./emptied.ts";
import { DELIVERY, type GasKit } from "./gas-plan.ts";
import { printed } from "./portions.ts";
import { nameOf } from "./reagent-plan.ts";
import type { StandsInWaste } from "./stands-in-waste.ts";

/** What the others in a bottle ask for, besides a word on its label. */
const ALSO: Partial<Record<Waste, string>> = { barium: say.SULFATE_STANDS };

export function bottleOf({ kinds: [first], own, apart = [] }: Emptied): string {
  if (!first) return apart.length > 0 ? STRAIGHT : BEAKER;
  if (first === "solid") return say.SOLID_WASTE;
  return own ? say.bottleFor(first, [...own.parts]) : say.bottle(first);
}

/** The table of tubes and bottles. */
export function wasteRows(groups: readonly Emptied[]): WasteRow[] {
  return groups.map((group) => {
    const { kinds, tubes } = group;
    const adds = group.first?.map(({ adds }) => adds) ?? [];
    return {
      tubes,
      into: bottleOf(group),
      kinds,
      ...(adds.length > 0 && { first: adds }),
      how: how(group).join(" "),
    };
  });
}

function how({ kinds, apart = [], first: added = [], ammonia, own, drain }: Emptied): string[] {
  const [first, ...others] = kinds;
  const before = added.map(({ says }) => said(says));
  const because = apart.flatMap((row) => (row.because ? said(row.because) : []));
  if (!first && apart.length > 0) return [...before, say.AT_ONCE, ...because];
  if (!first) return [drain ? said(wastes.drain) : say.SINK];
  if (first === "solid") return [say.WET_SOLID];
  const beside = own ? [say.ownBottle(said(own.mixture.what), said(own.mixture.reason))] : [];
  const label = others.length > 0 ? [say.alsoHolds(others)] : [];
  const also = others.flatMap((other) => ALSO[other] ?? []);
  // Silver and ammonia kept together can explode, so nothing with ammonia reaches silver before it is acid.
  const silver = ammonia === undefined ? [] : [say.AMMONIA];
  return [...before, said(wastes[first]), ...beside, ...label, ...also, ...silver, ...because];
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
    because: [say.USED_PAPERS],
    acid: 0,
    barium: 0,
  }));
}

/** Common practice, no source. What is in no row is a splint or a rod: the one is burnt, the other rinsed. */
const LEFT: Partial<Record<GasKit, { what: string; waste?: Waste }>> = {
  limewater: { what: say.LIMEWATER_TUBES },
  [DELIVERY]: { what: say.LIMEWATER_TUBES },
  "damp red litmus": { what: say.USED_PAPERS, waste: "solid" },
  "damp blue litmus": { what: say.USED_PAPERS, waste: "solid" },
  "acidified manganate(VII) paper": { what: say.USED_PAPERS, waste: "solid" },
  "acidified dichromate(VI) paper": { what: say.USED_DICHROMATE, waste: "chromium(VI)" },
  "cobalt(II) chloride paper": { what: say.USED_COBALT, waste: "heavy metal" },
};

/** The bottles that tubes are emptied into, with what stands in them. */
export function wasteBottles(groups: readonly Emptied[], stand: readonly StandsInWaste[]): BenchPlan["extras"] {
  const collected = COLLECTED.flatMap((waste) => groups.filter(({ kinds }) => kinds[0] === waste));
  return [...new Set(collected.map(bottleOf))].map((what) => {
    const because = collected.filter((one) => bottleOf(one) === what).flatMap((one) => one.because);
    const first = stand.filter(({ into }) => into === what).map(({ id, cm3 }) => volume(printed(cm3), nameOf(id)));
    return {
      what,
      count: 1,
      ...(first.length > 0 && { prepare: say.putIn(first) }),
      because: [...new Set(because)].join("; "),
      countedApart: true,
    };
  });
}
