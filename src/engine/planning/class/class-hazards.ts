/** What each bottle of a class can do at its own strength, the limits that decide, and first aid. */
import { saidOnSheet, asSolid as wordSolid } from "#words/class-recipes.ts";
import { said } from "#words/constants.ts";
import { AND } from "#words/language.ts";
import { withoutWater } from "../../bench/salt.ts";
import { type FirstAid, firstAids, type SourceKey, type Waste } from "../../constants/reagents.ts";
import { salts as store } from "../../constants/salts.ts";
import type { Sample } from "../../practical.ts";
import type { BenchPlan } from "../bench-plan.ts";
import { hazardsAt, reagentOf } from "../reagent-plan.ts";
import { FIRST_AID_FOR, type HazardAt, hazardAt } from "./hazard-at.ts";
import { bottleLabel, reagentUses } from "./reagent-supplies.ts";
import { bottlesOf } from "./store-bottles.ts";

/** A dissolved substance of a bottle with its limits; none known where `hazard` is absent. */
export interface Dissolved {
  what: string;
  molPerDm3: number;
  hazard?: HazardAt;
}

export interface ClassHazard {
  /** As on the bottle. */
  label: string;
  content: string;
  /** In plain words: what is told for the bottle, then for the solid in the prep room. */
  words: string[];
  dissolved: Dissolved[];
  /** The words ask for more care than any limit does at this strength: follow the words. */
  wordsAreStricter: boolean;
  /** The strength the words are for, mol/dm3, where the bottle is weaker. */
  wordsFor?: number;
  firstAid: string;
  /** Where the words are from. */
  sources: SourceKey[];
  /** Some of it is remembered: confirm it on the supplier's safety data sheet. */
  confirm: boolean;
}

/** From mildest to gravest. */
const FIRST_AIDS: readonly FirstAid[] = ["rinse", "irritant", "gas", "corrosive", "toxic"];
const gravity = (one: FirstAid): number => FIRST_AIDS.indexOf(one);
const gravest = (all: readonly FirstAid[]): string =>
  saidOnSheet(firstAids[all.toSorted((a, b) => gravity(a) - gravity(b)).at(-1) ?? "irritant"]);

/** What the limits of all that is dissolved ask for. */
const byLimits = (dissolved: readonly Dissolved[]): FirstAid[] =>
  dissolved.flatMap(({ hazard }) => (hazard ? FIRST_AID_FOR[hazard.severity] : []));

/** The one bottle nobody has to be warned of. */
const WATER = "H2O(l)";

/** Kinds of waste that tell of a poison. */
const POISONS: readonly Waste[] = ["lead", "barium", "chromium(VI)"];

const dissolvedAs = (what: string, formula: string, molPerDm3: number): Dissolved => {
  const hazard = hazardAt(formula, molPerDm3);
  return { what, molPerDm3, ...(hazard && { hazard }) };
};

const remembered = (dissolved: readonly Dissolved[]): boolean =>
  dissolved.some(({ hazard }) => hazard === undefined || hazard.remembered);

function ofReagent(id: string, molPerDm3: number | null): ClassHazard {
  const reagent = reagentOf(id);
  const dissolved: Dissolved[] = [];
  if (molPerDm3 !== null && reagent.formula) dissolved.push(dissolvedAs(reagent.formula, reagent.formula, molPerDm3));
  if (reagent.sulfuricAcid) dissolved.push(dissolvedAs("H2SO4", "H2SO4", reagent.sulfuricAcid));
  const label = bottleLabel(reagent, molPerDm3);
  const known = byLimits(dissolved);
  const weaker = molPerDm3 !== null && reagent.concentration !== null && molPerDm3 < reagent.concentration;
  return {
    label,
    content: label,
    words: hazardsAt(reagent, molPerDm3).map(said),
    dissolved,
    wordsAreStricter: known.length > 0 && !weaker && known.every((one) => gravity(one) < gravity(reagent.firstAid)),
    ...(weaker && { wordsFor: reagent.concentration ?? undefined }),
    firstAid: gravest([reagent.firstAid, ...known]),
    sources: [...reagent.sources],
    confirm: reagent.confirm === true || remembered(dissolved),
  };
}

function ofSample({ label, salt, given, concentration }: Sample): ClassHazard {
  const salts = salt.split(" + ").map((one) => withoutWater(one.trim()));
  const rows = salts.flatMap((one) => {
    const bottles = bottlesOf(one).map(({ formula }) => formula);
    return store.find(({ formula }) => bottles.includes(formula)) ?? [];
  });
  const strength = concentration?.molPerDm3;
  const dissolved = strength === undefined ? [] : salts.map((one) => dissolvedAs(one, one, strength));
  const names = salts.map((one) => bottlesOf(one)[0].name).join(` ${AND} `);
  const poison: FirstAid[] = rows.some(({ waste }) => POISONS.includes(waste)) ? ["toxic"] : [];
  const known = byLimits(dissolved);
  // No limit known, or a solid given out: by what is said of the solid.
  const asSolid: FirstAid = rows.some(({ hazard }) => /damages eyes|burns/i.test(hazard)) ? "corrosive" : "irritant";
  return {
    label,
    content: strength === undefined ? wordSolid(names) : `${names}, ${strength} mol/dm3`,
    words: rows.map(({ hazard }) => saidOnSheet(hazard)),
    dissolved,
    wordsAreStricter: false,
    firstAid: gravest([...known, ...(known.length === 0 || given !== "solution" ? [asSolid] : []), ...poison]),
    sources: [...new Set(rows.flatMap(({ sources }) => sources))],
    confirm: rows.length < salts.length || rows.some(({ confirm }) => confirm === true) || remembered(dissolved),
  };
}

/** Samples first, then reagents, papers and foil, in the order of the bench. */
export function classHazards(samples: readonly Sample[], plan: Pick<BenchPlan, "reagents" | "besides">): ClassHazard[] {
  const dry = plan.reagents.filter(({ pieces }) => pieces !== undefined).map(({ id }) => ofReagent(id, null));
  const wet = reagentUses(plan).filter(({ id }) => id !== WATER);
  return [...samples.map(ofSample), ...wet.map(({ id, molPerDm3 }) => ofReagent(id, molPerDm3)), ...dry];
}
