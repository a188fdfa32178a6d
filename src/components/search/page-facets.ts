/** The facets of the pages of each collection. */
import type { CollectionEntry } from "astro:content";
import { GAS_SAFETY } from "../../engine/constants/gas-safety.ts";
import { CATIONS } from "../../engine/constants/ions.ts";
import { reagents } from "../../engine/constants/reagents.ts";
import type { BenchPlan } from "../../engine/planning/bench-plan.ts";
import { cellsOf, type Practical } from "../../engine/practical.ts";
import { cautionsFor } from "../carry-out/part-cautions.ts";
import type { Facets } from "./facets.ts";

type Caution = CollectionEntry<"cautions">;

const isGas = (one: string) => one in GAS_SAFETY;
const isIon = (one: string) => (CATIONS as readonly string[]).includes(one);
const isReagent = (one: string) => reagents.some(({ id }) => id === one);

const hazardsOf = (cautions: readonly Caution[]) => cautions.flatMap(({ data }) => data.hazards);

export function facetsOfCaution({ data }: Caution): Facets {
  return {
    ion: data.covers.filter(isIon),
    gas: data.covers.filter(isGas),
    reagent: data.covers.filter(isReagent),
    hazard: data.hazards,
  };
}

/** @param cautions those the page names */
export function facetsOfIonTest({ data }: CollectionEntry<"ionTests">, cautions: readonly Caution[]): Facets {
  return { ion: data.ions, gas: data.gases, reagent: data.reagents, hazard: hazardsOf(cautions) };
}

/** The ions are those the paper offers: which of them a sample holds is for the reader to find. */
export function facetsOfPractical(practical: Practical, plan: BenchPlan, all: readonly Caution[]): Facets {
  const { paper, parts } = practical;
  const cells = cellsOf(parts);
  const cautions = parts.flatMap((part) => {
    const own = cells.filter((cell) => cell.part === part).map(({ id }) => id);
    const gases = plan.gases.filter(({ cell }) => own.includes(cell)).map(({ gas }) => gas);
    return cautionsFor(part, gases, [...paper.cations, ...paper.anions], all);
  });
  return {
    ion: [...paper.cations, ...paper.anions],
    gas: plan.gases.map(({ gas }) => gas),
    reagent: plan.reagents.map(({ id }) => id),
    hazard: hazardsOf(cautions),
  };
}
