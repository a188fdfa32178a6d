/** The conclusion on one sample in a sentence, as the trade says it. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Conclusion, SampleConclusion } from "../../engine/deduction/conclusion.ts";
import { list } from "../sentence.ts";

/** Above this many, ions are counted and not named. */
const NAMED = 4;

const unique = (ions: string[]) => [...new Set(ions)];

/** "Ca^2+ or Mg^2+", or "7 cations" when there are many. */
function open(ions: string[], kind: "cation" | "anion"): string {
  return ions.length > NAMED ? `${ions.length} ${kind}s` : list(ions, "or");
}

/**
 * @param stuck samples whose own observations fit no salt: decides whose fault it is when nothing fits.
 * @returns a sentence with formulas in mhchem notation: "K holds Zn^2+ and SO4^2-."
 */
export function headline(
  table: PredictionTable,
  conclusion: Conclusion,
  of: SampleConclusion,
  stuck: string[],
): string {
  if (conclusion.assignments === 0) {
    if (stuck.includes(of.sample)) return `${of.sample} fits no salt the paper allows.`;
    if (stuck.length > 0) return `${of.sample} is not decided before ${list(stuck)} is put right.`;
    return `${of.sample} alone could be named, but not together with what the paper says of all samples.`;
  }
  const cations = unique(of.salts.map((salt) => table.salts[salt].cation));
  const anions = unique(of.salts.map((salt) => table.salts[salt].anion));
  const { salts } = table.sets[table.samples.find((each) => each.label === of.sample)?.set ?? 0];
  if (cations.length === 1 && anions.length === 1) return `${of.sample} holds ${cations[0]} and ${anions[0]}.`;
  if (of.salts.length === salts.length && salts.length > 1) return `${of.sample}: no salt ruled out yet.`;
  if (cations.length === 1) return `${of.sample} holds ${cations[0]}; ${open(anions, "anion")} still possible.`;
  if (anions.length === 1) return `${of.sample} holds ${anions[0]}; ${open(cations, "cation")} still possible.`;
  return `${of.sample}: ${open(cations, "cation")} still possible, with ${open(anions, "anion")}.`;
}
