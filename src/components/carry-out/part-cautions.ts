/** Which cautions belong beside a part of the procedure. */
import type { CollectionEntry } from "astro:content";
import type { Part } from "../../engine/practical.ts";

/**
 * The cautions that cover a reagent, a verb or a gas of the part, in the order of the list.
 *
 * @param gases formulas of the gases that may come off in this part
 */
export function cautionsFor(
  part: Part,
  gases: readonly string[],
  all: readonly CollectionEntry<"cautions">[],
): CollectionEntry<"cautions">[] {
  const steps = part.tests.flatMap((test) => test.steps);
  const met = new Set<string>([
    ...gases,
    ...steps.map((step) => step.do),
    ...steps.flatMap((step) => (step.do === "add" ? [step.reagent] : [])),
  ]);
  const hot = steps.some((step) => step.do === "warm" || step.do === "boil");
  const foil = steps.some((step) => step.do === "add" && step.reagent.startsWith("Al("));
  if (hot && foil) met.add("foil in hot alkali");
  return all.filter(({ data }) => data.covers.some((one) => met.has(one)));
}
