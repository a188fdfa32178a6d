/** The samples of a class: each under its letter, in every form in which it is given, the same amount of all. */
import { asSolid, saidOnSheet } from "#words/class-recipes.ts";
import { AND } from "#words/language.ts";
import { contentNamed } from "../../bench/contents.ts";
import { type SourcedNote, sampleNotes } from "../../constants/preparation.ts";
import { salts as store } from "../../constants/salts.ts";
import type { Solver } from "../../equilibrium/solve.ts";
import type { Sample } from "../../practical.ts";
import type { BenchPlan, SampleForm } from "../bench-plan.ts";
import { tooStrong } from "./can-dissolve.ts";
import { saltRecipe } from "./recipe.ts";
import { bottlesOf, weighed } from "./store-bottles.ts";
import type { Recipe, Supply } from "./supply.ts";

const STORE_LIST = "store list, from memory";

/**
 * The largest amount of a form that any sample needs: all get as much, so that the volume in a bottle tells nothing of what is in it.
 * cm3 of a solution, g of a solid; undefined when no sample is given so.
 */
export function sameForAll(plan: Pick<BenchPlan, "samples">, of: SampleForm["of"]): number | undefined {
  const amounts = plan.samples.flatMap(({ forms }) =>
    forms.filter((form) => form.of === of).map(({ setOut }) => setOut),
  );
  return amounts.length > 0 ? Math.max(...amounts) : undefined;
}

/** Notes of the ions, which are about their solutions, then those of the bottle. */
function notesOn(salt: string, of: SampleForm["of"]): SourcedNote[] {
  const content = contentNamed(salt);
  const ions = content && of === "solution" ? [...content.cations, ...content.anions] : [];
  const notes = ions.flatMap((ion) => (Object.hasOwn(sampleNotes, ion) ? [sampleNotes[ion]] : []));
  const bottles = salt.split(" + ").flatMap((one) => bottlesOf(one.trim()).map(({ formula }) => formula));
  const said = store.filter(({ formula, note }) => note && bottles.includes(formula));
  return [...notes, ...said.map(({ note = "" }) => ({ text: note, source: STORE_LIST }))].map(({ text, source }) => ({
    text: saidOnSheet(text),
    source: saidOnSheet(source),
  }));
}

const namesIn = (salt: string): string =>
  salt
    .split(" + ")
    .map((one) => bottlesOf(one.trim())[0].name)
    .join(` ${AND} `);

/** Weighed out, not dissolved. */
const solidRecipe = (salt: string): Recipe => ({
  // The bottle with whose water of crystallisation the engine predicts, and no other.
  ingredients: [[weighed(bottlesOf(salt)[0], 0)]],
  method: saidOnSheet("Grind any lumps, and weigh it out dry."),
});

/** One supply for each form of each sample, and what cannot be made up. */
export function sampleSupplies(
  samples: readonly Sample[],
  plan: Pick<BenchPlan, "samples">,
  solve: Solver,
): { supplies: Supply[]; faults: string[] } {
  const faults: string[] = [];
  const supplies = samples.flatMap(({ label, salt, concentration }): Supply[] => {
    const forms = plan.samples.find(({ sample }) => sample === label)?.forms ?? [];
    return forms.map(({ of, needed }) => {
      const strength = concentration?.molPerDm3 ?? 0;
      const content = contentNamed(salt);
      const fault = of === "solution" && content ? tooStrong(content, strength, solve) : undefined;
      if (fault) faults.push(`Sample ${label}: ${fault}. Take a weaker solution or another salt.`);
      return {
        kind: "sample",
        label,
        content: of === "solution" ? `${namesIn(salt)}, ${strength} mol/dm3` : asSolid(namesIn(salt)),
        of,
        used: needed,
        given: sameForAll(plan, of),
        recipe: of === "solution" ? saltRecipe(salt, strength) : solidRecipe(salt),
        notes: notesOn(salt, of),
      };
    });
  });
  return { supplies, faults };
}
