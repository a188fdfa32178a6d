/** Steps that bring together in one tube what is not mixed in class (`NOT_MIXED`). */
import { NOT_MIXED, type NotMixed } from "../constants/not-mixed.ts";
import { reagents } from "../constants/reagents.ts";
import type { Part, Step } from "../practical.ts";

/** A step after which a tube holds such a mixture, with its place in the paper. */
export interface UnsafeMixture {
  /** Letter of the part. */
  part: string;
  path: (string | number)[];
  row: NotMixed;
}

/** What a step pours into the tube: ions and molecules; the acid an acidified reagent is made up with counts. */
function brought(step: Step): string[] {
  const reagent = step.do === "add" ? reagents.find(({ id }) => id === step.reagent) : undefined;
  if (!reagent) return [];
  return [...Object.keys(reagent.components), ...(reagent.sulfuricAcid ? ["H+"] : [])];
}

/**
 * Each mixture once a part, at the step that makes it. What a later alkali neutralises or a
 * filter holds back is not taken off: a paper that wants such a mixture all the same is one for the teacher.
 *
 * @param ions what a sample may hold besides: none for what the reagents make by themselves
 */
export function unsafeMixtures(parts: readonly Part[], ions: readonly string[] = []): UnsafeMixture[] {
  return parts.flatMap((part, p) => {
    const holds = new Set(ions);
    const found: UnsafeMixture[] = [];
    part.tests.forEach((test, t) => {
      test.steps.forEach((step, s) => {
        for (const one of brought(step)) holds.add(one);
        const hot = step.do === "warm" || step.do === "boil";
        for (const row of NOT_MIXED) {
          if (row.heated !== hot || found.some((one) => one.row === row)) continue;
          if (!row.together.every((group) => group.some((one) => holds.has(one)))) continue;
          found.push({ part: part.label, path: ["parts", p, "tests", t, "steps", s], row });
        }
      });
    });
    return found;
  });
}
