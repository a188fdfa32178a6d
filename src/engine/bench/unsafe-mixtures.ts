/** Steps that bring together in one tube what is not mixed in class (`NOT_MIXED`). */
import { NOT_MIXED, type NotMixed } from "../constants/not-mixed.ts";
import { reagents } from "../constants/reagents.ts";
import type { Part } from "../practical.ts";

/** A step after which a tube holds such a mixture, with its place in the paper. */
export interface UnsafeMixture {
  /** Letter of the part. */
  part: string;
  path: (string | number)[];
  row: NotMixed;
}

/** What comes in with a reagent: itself, its ions and molecules; the acid an acidified reagent is made up with counts. */
export function broughtBy(id: string): string[] {
  const reagent = reagents.find((one) => one.id === id);
  if (!reagent) return [];
  return [id, ...Object.keys(reagent.components), ...(reagent.sulfuricAcid ? ["H+"] : [])];
}

/** Rows of which something that holds all this has every group, be it hot or cold. */
export const notMixedIn = (holds: ReadonlySet<string>): NotMixed[] =>
  NOT_MIXED.filter(({ together }) => together.every((group) => group.some((one) => holds.has(one))));

/**
 * Each mixture once a part, at the step that makes it: by what is poured, by the heat, or by letting it stand. A tube that was warmed stays hot until it is
 * cooled or the next test begins, as in the predictions. What a later alkali neutralises or a filter holds back is not taken off: a paper
 * that wants such a mixture all the same is one for the teacher.
 *
 * @param ions what a sample may hold besides: none for what the reagents make by themselves
 */
export function unsafeMixtures(parts: readonly Part[], ions: readonly string[] = []): UnsafeMixture[] {
  return parts.flatMap((part, p) => {
    const holds = new Set(ions);
    const found: UnsafeMixture[] = [];
    part.tests.forEach((test, t) => {
      let hot = false;
      test.steps.forEach((step, s) => {
        if (step.do === "add") for (const one of broughtBy(step.reagent)) holds.add(one);
        if (step.do === "warm" || step.do === "boil") hot = true;
        if (step.do === "cool") hot = false;
        for (const row of notMixedIn(holds)) {
          const happens = row.when === "at once" || hot || (row.when === "hot or left" && step.do === "stand");
          if (!happens || found.some((one) => one.row.what === row.what)) continue;
          found.push({ part: part.label, path: ["parts", p, "tests", t, "steps", s], row });
        }
      });
    });
    return found;
  });
}
