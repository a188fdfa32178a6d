/** The tests of a practical in the order in which they are carried out, in words and with their cautions. */
import type { CollectionEntry } from "astro:content";
import type { BenchPlan } from "../../engine/planning/bench-plan.ts";
import { cellsOf, type Practical } from "../../engine/practical.ts";
import { askedOf } from "../../engine/wording/asked-of.ts";
import { fizzes } from "../carry-out/fizzes.ts";
import { cautionsFor } from "../carry-out/part-cautions.ts";
import { benchOf, wordSteps, wordTest } from "../carry-out/step-words.ts";
import { link } from "../link.ts";
import type { PracticeTest } from "./practice-table.ts";

/** Each caution is said in full where it is first met. */
export function practiceTests(
  { parts, samples, paper }: Practical,
  plan: BenchPlan,
  cautions: readonly CollectionEntry<"cautions">[],
): PracticeTest[] {
  const met = new Set<string>();
  return cellsOf(parts).map(({ id, part, test, index }): PracticeTest => {
    const own = { ...part, tests: [test] };
    const gases = plan.gases.filter(({ cell }) => cell === id).map(({ gas }) => gas);
    const needed = cautionsFor(own, gases, index === 0 ? [...paper.cations, ...paper.anions] : [], cautions);
    const fresh = needed.filter((one) => !met.has(one.id));
    for (const one of fresh) met.add(one.id);
    return {
      id,
      part: part.title,
      fresh: index === 0,
      ...(test.says && { says: test.says }),
      steps: wordSteps(test.steps, benchOf(part, samples, plan), fizzes(plan, id, test.steps)),
      brief: wordTest(test, plan),
      asked: askedOf(test.steps),
      cautions: fresh.map((one) => ({
        hazard: one.data.hazard,
        summary: one.data.summary,
        title: one.data.title,
        href: link(`/cautions/${one.id}/`),
      })),
    };
  });
}
