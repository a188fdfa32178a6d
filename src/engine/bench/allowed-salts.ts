/** Which salts a sample may hold: every pair of the paper's ions, less those that cannot be such a sample, each with the computed reason. */
import * as say from "#words/cannot-be.ts";
import { list } from "#words/language.ts";
import { HARDLY_SOLUBLE } from "../constants/solubility-rules.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Solver } from "../equilibrium/solve.ts";
import { ionName, saltName } from "../formula/ion-name.ts";
import { parseFormula } from "../formula/parse.ts";
import type { Sample, Statement } from "../practical.ts";
import { componentsOf } from "./composition.ts";
import { type Content, type SimpleSalt, saltOf } from "./salt.ts";
import { look } from "./sight.ts";
import { emptyTube, pour, settle, type Tube } from "./tube.ts";
import { weighedAs } from "./weighed-as.ts";

/** How a sample is given: decides what it can be. */
export type Form = Pick<Sample, "given" | "concentration" | "holds">;

/** All pairs of the ions to choose from, in the paper's order. */
export function pairsOf(paper: Statement): SimpleSalt[] {
  return paper.cations.flatMap((cation) => paper.anions.map((anion) => saltOf(cation, anion)));
}

const known = new WeakMap<Solver, Map<string, string | undefined>>();

/** Why a salt cannot be a sample given in this form, in words with the engine's number; undefined when it can. Each solver's answers are kept. */
export function cannotBe(salt: Content, form: Form, solve: Solver): string | undefined {
  const answers = known.get(solve) ?? new Map<string, string | undefined>();
  known.set(solve, answers);
  const key = `${salt.formula} ${form.given} ${form.concentration?.molPerDm3}`;
  if (!answers.has(key)) answers.set(key, triedAs(salt, form, solve));
  return answers.get(key);
}

function triedAs(salt: Content, form: Form, solve: Solver): string | undefined {
  if (form.given !== "solution") {
    if (salt.formula.includes(" + ")) return say.NO_MIXTURE;
    const reason = noSolid(salt, solve);
    if (reason !== undefined || form.given === "solid") return reason;
  }
  return form.concentration && noSolution(salt, form.concentration.molPerDm3, solve);
}

/** Strength at which a solid is tried against water, mol/dm3: that of the usual sample. */
const TRIAL_STRENGTH = 0.1;
/** Part of its cation that must go elsewhere before a solid cannot be. Our choice: what mostly stays is still that salt. */
const FALLS_APART = 0.5;

/** A salt that water takes apart as soon as it meets it, or that oxidises itself, is no salt to put in a jar. */
function noSolid(salt: Content, solve: Solver): string | undefined {
  const { ions } = weighedAs(salt);
  const { tube, result } = inWater(ions, TRIAL_STRENGTH, solve);
  if (destroysItself(tube)) return say.oxidisesItself(nameOf(salt));
  const ammonium = ((TRIAL_STRENGTH * TRIAL_CM3) / 1000) * (ions["NH4+"] ?? 0);
  if (ammonium > 0 && (result.molality.get("NH3") ?? 0) * result.waterKg >= ammonium * FALLS_APART) {
    return say.turnsIntoAmmonia(nameOf(salt));
  }
  const foreign = look(result).solids.filter(({ id }) => !Object.keys(ions).every((ion) => madeOf(id, ion)));
  const fallsApart = salt.cations.some((cation) => {
    const lost = foreign.reduce((sum, { id, mol }) => sum + mol * atomsOf(cation, id), 0);
    return lost >= ((TRIAL_STRENGTH * TRIAL_CM3) / 1000) * ions[cation] * FALLS_APART;
  });
  if (!fallsApart && !tube.left.has("CO2(g)")) return undefined;
  return say.takenApart(nameOf(salt));
}

/** "zinc sulfate"; of several ions all of them: "ammonium, iron(II) and sulfate". */
export function nameOf({ cations, anions }: Content): string {
  if (cations.length + anions.length === 2) return saltName(cations[0], anions[0]);
  return list([...cations, ...anions].map(ionName));
}

const isMixture = ({ cations, anions }: Content): boolean => cations.length + anions.length > 2;

/** True when the ions of the salt have changed each other's oxidation state. */
const destroysItself = (tube: Tube): boolean => tube.reactions.size > 0;

/** Atoms of the cation's metal in one formula unit of a solid. */
const atomsOf = (cation: string, solid: string): number => {
  const [metal] = Object.keys(parseFormula(cation).elements);
  return parseFormula(solid).elements[metal] ?? 0;
};

/** Taken to make up the trial solution, cm3: any amount does, the result is per dm3. */
const TRIAL_CM3 = 100;

function inWater(ions: Readonly<Content["ions"]>, molPerDm3: number, solve: Solver) {
  const tube = emptyTube();
  const perDm3 = Object.fromEntries(Object.entries(componentsOf(ions)).map(([id, n]) => [id, n * molPerDm3]));
  pour(tube, perDm3, TRIAL_CM3);
  return { tube, result: settle(tube, solve) };
}

/** A salt the constants know no solid of, but a textbook rule calls hardly soluble. */
function ruledOut(salt: Content): boolean {
  const rules = HARDLY_SOLUBLE.filter(({ anion }) => salt.anions.includes(anion));
  return rules.some(({ except }) => salt.cations.some((cation) => !except.includes(cation)));
}

function noSolution(salt: Content, molPerDm3: number, solve: Solver): string | undefined {
  const { tube, result } = inWater(salt.ions, molPerDm3, solve);
  if (destroysItself(tube)) return say.noSolution(nameOf(salt), isMixture(salt));
  const [solid] = look(result).solids.sort((a, b) => b.gramsPerDm3 - a.gramsPerDm3);
  const name = nameOf(salt);
  if (!solid || solid.gramsPerDm3 < VISIBILITY.visible.value) {
    return ruledOut(salt) ? say.hardlyDissolves(name) : undefined;
  }
  const amount = `${Number(solid.gramsPerDm3.toPrecision(2))} g/dm3`;
  const at = `${molPerDm3} mol/dm3`;
  if (isMixture(salt)) return say.notTogether(name, at, amount, solid.id.replace(/, [^)]*\)$/, ")"));
  const own = Object.keys(salt.ions).every((ion) => madeOf(solid.id, ion));
  return own ? say.doesNotDissolve(name, at, amount) : say.splits(name, at, amount);
}

/** True when a solid's formula shows the ion without its charge: "PbCl2(s)" shows Pb and Cl. */
const madeOf = (solid: string, ion: string): boolean => solid.includes(ion.replace(/(\^\d+)?[+-]$/, ""));
