/** Where each tube is emptied, in words, and which bottles have to stand ready. */
import { type Waste, wastes } from "../constants/reagents.ts";
import { listed } from "../wording/listed.ts";
import type { BenchPlan, WasteRow } from "./bench-plan.ts";
import { COLLECTED, type Emptied } from "./emptied.ts";
import { DELIVERY, type GasKit } from "./gas-plan.ts";
import { BEAKER, STRAIGHT } from "./vessels.ts";

/** What the others in a bottle ask for, besides a word on its label. */
const ALSO: Partial<Record<Waste, string>> = { barium: "Add a little of a sulfate first, for the barium." };

/** Silver and ammonia kept together can explode, so nothing with ammonia reaches silver before it is acid. */
const BESIDE_SILVER = "Silver goes into this bottle too: make anything with ammonia acidic first.";

const SINK = "Acid and alkali neutralised, then down the sink with plenty of water, when your teacher says so.";

/** The tubes that a gas was led or bubbled into, as the waste list names them. */
export const LIMEWATER_TUBES = "limewater tubes";

const AT_ONCE = "Straight down the sink, one tube at a time, with much water, where your teacher allows it.";

function into({ kinds: [first], own, apart = [] }: Emptied): string {
  if (!first) return apart.length > 0 ? STRAIGHT : BEAKER;
  if (first === "solid") return "solid waste";
  if (!own) return `${first} waste bottle`;
  return `${first} waste bottle for ${own.parts.size > 1 ? "parts" : "part"} ${listed([...own.parts], "and")}`;
}

/** The table of tubes and bottles. */
export function wasteRows(groups: readonly Emptied[]): WasteRow[] {
  const takesSilver = (bottle: string) =>
    groups.some((one) => into(one) === bottle && one.kinds[0] !== "silver" && one.kinds.includes("silver"));
  return groups.map((group) => {
    const { kinds, tubes } = group;
    const bottle = into(group);
    const adds = group.first?.map(({ adds }) => adds) ?? [];
    return {
      tubes,
      into: bottle,
      kinds,
      ...(adds.length > 0 && { first: adds }),
      how: how(group, takesSilver(bottle)).join(" "),
    };
  });
}

/** What is written on a bottle besides its own kind. */
export const alsoHolds = (others: readonly Waste[]): string =>
  `May also hold ${others.join(" and ")}: write it on the bottle.`;

function how({ kinds, apart = [], first: added = [], own, drain }: Emptied, takesSilver: boolean): string[] {
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
  return [...before, wastes[first], ...beside, ...label, ...also, ...(takesSilver ? [BESIDE_SILVER] : []), ...because];
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

/** The bottles that tubes are emptied into. */
export function wasteBottles(groups: readonly Emptied[]): BenchPlan["extras"] {
  const collected = COLLECTED.flatMap((waste) => groups.filter(({ kinds }) => kinds[0] === waste));
  return [...new Set(collected.map(into))].map((what) => {
    const because = collected.filter((one) => into(one) === what).flatMap((one) => one.because);
    return { what, count: 1, because: [...new Set(because)].join("; ") };
  });
}
