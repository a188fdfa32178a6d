/** Where each tube is emptied, in words, and which bottles have to stand ready. */
import { type Waste, wastes } from "../constants/reagents.ts";
import { listed } from "../wording/listed.ts";
import type { BenchPlan, WasteRow } from "./bench-plan.ts";
import { COLLECTED, type Emptied } from "./emptied.ts";
import { DELIVERY, type GasKit } from "./gas-plan.ts";
import { printed } from "./portions.ts";
import { reagentOf } from "./reagent-plan.ts";
import type { StandsInWaste } from "./stands-in-waste.ts";
import { BEAKER, STRAIGHT } from "./vessels.ts";

/** What the others in a bottle ask for, besides a word on its label. */
const ALSO: Partial<Record<Waste, string>> = { barium: "The sulfate that stands in it is for the barium." };

/** Silver and ammonia kept together can explode, so nothing with ammonia reaches silver before it is acid. */
const AMMONIA =
  "It holds ammonia, and silver goes into this bottle: pour it into the acid that stands there as soon as you have written down what you saw.";

const SINK = "Acid and alkali neutralised, then down the sink with plenty of water, when your teacher says so.";

/** The tubes that a gas was led or bubbled into, as the waste list names them. */
export const LIMEWATER_TUBES = "limewater tubes";

const AT_ONCE = "Straight down the sink, one tube at a time, with much water, where your teacher allows it.";

export function bottleOf({ kinds: [first], own, apart = [] }: Emptied): string {
  if (!first) return apart.length > 0 ? STRAIGHT : BEAKER;
  if (first === "solid") return "solid waste";
  if (!own) return `${first} waste bottle`;
  return `${first} waste bottle for ${own.parts.size > 1 ? "parts" : "part"} ${listed([...own.parts], "and")}`;
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

/** What is written on a bottle besides its own kind. */
export const alsoHolds = (others: readonly Waste[]): string =>
  `May also hold ${others.join(" and ")}: write it on the bottle.`;

function how({ kinds, apart = [], first: added = [], ammonia, own, drain }: Emptied): string[] {
  const [first, ...others] = kinds;
  const before = added.map(({ says }) => says);
  const because = apart.flatMap((row) => row.because ?? []);
  if (!first && apart.length > 0) return [...before, AT_ONCE, ...because];
  if (!first) return [drain ? wastes.drain : SINK];
  if (first === "solid") return ["Wet, into the solid waste, not the sink."];
  const beside = own
    ? [`A bottle of its own: the other would bring together ${own.mixture.what}, and ${own.mixture.reason}.`]
    : [];
  const label = others.length > 0 ? [alsoHolds(others)] : [];
  const also = others.flatMap((other) => ALSO[other] ?? []);
  return [
    ...before,
    wastes[first],
    ...beside,
    ...label,
    ...also,
    ...(ammonia === undefined ? [] : [AMMONIA]),
    ...because,
  ];
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
    barium: 0,
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

/** The bottles that tubes are emptied into, with what stands in them. */
export function wasteBottles(groups: readonly Emptied[], stand: readonly StandsInWaste[]): BenchPlan["extras"] {
  const collected = COLLECTED.flatMap((waste) => groups.filter(({ kinds }) => kinds[0] === waste));
  return [...new Set(collected.map(bottleOf))].map((what) => {
    const because = collected.filter((one) => bottleOf(one) === what).flatMap((one) => one.because);
    const first = stand
      .filter(({ into }) => into === what)
      .map(({ id, cm3 }) => `${printed(cm3)} cm3 of ${reagentOf(id).name}`);
    return {
      what,
      count: 1,
      ...(first.length > 0 && { prepare: `Before the first tube, put in ${listed(first, "and")}.` }),
      because: [...new Set(because)].join("; "),
    };
  });
}
