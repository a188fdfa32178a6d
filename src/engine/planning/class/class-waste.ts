/** What one group leaves in each waste bottle, and what of it the class cannot know. */

import { alsoHolds, LIMEWATER_TUBES, notThere } from "#words/emptying.ts";
import { STRAIGHT } from "#words/vessels.ts";
import { contentNamed } from "../../bench/contents.ts";
import { SAMPLE_CAUTIONS } from "../../constants/bench-cautions.ts";
import type { Waste } from "../../constants/reagents.ts";
import type { Practical } from "../../practical.ts";
import type { BenchPlan, PlannedTube } from "../bench-plan.ts";
import { LIMEWATER } from "../besides.ts";
import { tidy } from "../portions.ts";
import { nameOf, reagentOf } from "../reagent-plan.ts";
import { stepsOf } from "../tube-choice.ts";
import { isFiltered } from "../tube-plan.ts";
import type { WasteNeed } from "./supply.ts";

/** Most liquid the tube ever holds, cm3. A residue or filtrate came out of a tube that is counted itself. */
const heldBy = (tube: PlannedTube): number => (isFiltered(tube) ? 0 : Math.max(0, ...tube.marks.map(({ cm3 }) => cm3)));

/** Limewater for every test of a gas, those in case included, cm3. */
const limewaterIn = ({ besides }: BenchPlan): number =>
  besides.filter(({ id }) => id === LIMEWATER).reduce((sum, { neededCm3 }) => sum + neededCm3, 0);

/** What stands in the bottle before the first tube, cm3. */
const standingIn = ({ besides }: BenchPlan, bottle: string): WasteNeed["first"] =>
  besides.filter(({ into }) => into === bottle).map(({ id, neededCm3 }) => ({ name: nameOf(id), cm3: neededCm3 }));

/** The collected kinds that really get into a tube: by the sample's own salt, and by what the part adds. */
function trulyIn({ sample, part }: PlannedTube, { samples, parts }: Pick<Practical, "samples" | "parts">): Waste[] {
  const salt = samples.find(({ label }) => label === sample)?.salt ?? "";
  const content = contentNamed(salt);
  const ions = content ? [...content.cations, ...content.anions] : [];
  const steps = parts.filter(({ label }) => label === part).flatMap(stepsOf);
  return [
    ...ions.flatMap((ion) => SAMPLE_CAUTIONS[ion]?.waste ?? []),
    ...steps.flatMap((step) => (step.do === "add" ? reagentOf(step.reagent).waste : [])),
  ];
}

/** The bench plan's waste, bottle by bottle: rows that end in one bottle are added up, those that never share a vessel are not. */
export function wasteNeeds(practical: Pick<Practical, "samples" | "parts">, plan: BenchPlan): WasteNeed[] {
  const bottles = new Map<string, WasteNeed & { told: readonly Waste[]; kinds: Set<Waste>; real: Set<Waste> }>();
  for (const { tubes: labels, into, kinds, how } of plan.waste) {
    const tubes = plan.tubes.filter(({ label }) => labels.includes(label));
    const vessel = into === STRAIGHT ? how : into;
    const need = bottles.get(vessel) ?? {
      into,
      cm3: 0,
      how,
      first: standingIn(plan, into),
      told: kinds,
      collected: kinds.length > 0,
      kinds: new Set(),
      real: new Set(),
    };
    const standing = bottles.has(vessel) ? 0 : need.first.reduce((sum, { cm3 }) => sum + cm3, 0);
    const limewater = labels.includes(LIMEWATER_TUBES) ? limewaterIn(plan) : 0;
    need.cm3 = tidy(need.cm3 + tubes.reduce((sum, tube) => sum + heldBy(tube), limewater + standing));
    for (const kind of kinds) need.kinds.add(kind);
    // The row with the most kinds says the most; what it leaves out is added below.
    if (kinds.length > need.told.length) Object.assign(need, { how, told: kinds });
    for (const tube of tubes) for (const kind of trulyIn(tube, practical)) need.real.add(kind);
    bottles.set(vessel, need);
  }
  return [...bottles.values()].map(({ kinds, real, told, ...one }) => {
    const untold = [...kinds].filter((kind) => !told.includes(kind));
    const need = untold.length > 0 ? { ...one, how: `${one.how} ${alsoHolds(untold)}` } : one;
    const absent = [...kinds].filter((kind) => !real.has(kind));
    const present = [...kinds].filter((kind) => real.has(kind));
    if (need.cm3 === 0 || absent.length === 0) return need;
    return { ...need, truly: notThere(absent, present) };
  });
}
