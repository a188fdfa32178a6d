/** Procedures that read well but cannot be carried out: each fault at its step. */

import { BOILED_AWAY } from "../constants/kinetic-gates.ts";
import { reagents } from "../constants/reagents.ts";
import { type GivenSample, type Paper, type Part, type Step, WATER_TESTS } from "../practical.ts";
import { usableReagents } from "./operations.ts";
import { NOTHING_POURED, type Poured, pouredAfter } from "./portion.ts";
import { type UnsafeMixture, unsafeMixtures } from "./unsafe-mixtures.ts";

/** Boiling away more of the liquid than this spatters what is left. */
const BOILED_DRY = { value: 0.5, source: "common practice, no source" };

/** Reagents that come as pieces of a solid. */
const isSolid = (reagent: string): boolean => reagent.endsWith("(s)");

type Complain = (key: string | undefined, what: string, stated: string, found: string, advice: string) => void;

/** A step that cannot be carried out. */
export interface ImpossibleStep {
  /** Where in the practical: ["parts", 0, "tests", 1, "steps", 0, "add"]. */
  path: (string | number)[];
  /** What is wrong, in a few words: "part a: boils dry". */
  what: string;
  stated: string;
  found: string;
  /** What to do about it. */
  advice: string;
}

/** Steps the engine cannot carry out on the samples given. */
export function impossibleSteps({ parts, samples }: Pick<Paper, "samples" | "parts">): ImpossibleStep[] {
  const faults: ImpossibleStep[] = [];
  parts.forEach((part, p) => {
    const tube: TubeSoFar = { taken: false, poured: NOTHING_POURED, onPaper: false, heated: false };
    part.tests.forEach((test, t) => {
      test.steps.forEach((step, s) => {
        const complain: Complain = (key, what, stated, found, advice) => {
          const path = ["parts", p, "tests", t, "steps", s, ...(key ? [key] : [])];
          faults.push({ path, what: `part ${part.label}: ${what}`, stated, found, advice });
        };
        checkStep(step, part, samples, tube, complain);
        checkOneOfAKind(step, test.steps, complain);
        tube.poured = pouredAfter(tube.poured, step);
      });
    });
  });
  const mixed = unsafeMixtures(parts).filter(({ row }) => row.refused);
  return [...faults, ...mixed.map(notMixed)];
}

/** What the reagents bring together by themselves; what a sample may hold besides is only warned of. */
const notMixed = ({ part, path, row }: UnsafeMixture): ImpossibleStep => ({
  path,
  what: `part ${part}: not mixed in class`,
  stated: row.what,
  found: row.reason,
  advice: "leave the step out, or do it in a tube of its own without the one or the other",
});

interface TubeSoFar {
  taken: boolean;
  poured: Poured;
  /** What is in it is a residue on the filter paper, and nothing has been poured on it. */
  onPaper: boolean;
  /** A solid is or was heated in it. */
  heated: boolean;
}

const isGasTest = ({ do: verb }: Step): boolean => verb === "test gas" || verb === "lead through";

/** A line of the record has room for one gas and for one colour of an indicator. */
function checkOneOfAKind(step: Step, steps: readonly Step[], complain: Complain): void {
  const gases = steps.filter(isGasTest);
  if (gases.length > 1 && gases.at(-1) === step) {
    const [key, stated] = step.do === "test gas" ? ["testGas", step.with] : ["leadThrough", "limewater"];
    const found = `${gases.length} gas tests on one line of the record`;
    complain(key, "two gas tests in one", stated, found, "give each gas test a line of its own");
  }
  const indicators = steps.filter((one) => one.do === "indicator");
  if (step.do === "indicator" && indicators.length > 1 && indicators.at(-1) === step) {
    const found = `${indicators.length} indicators on one line of the record`;
    complain("indicator", "two indicators in one", step.with, found, "give each indicator a line of its own");
  }
}

function checkStep(step: Step, part: Part, samples: readonly GivenSample[], tube: TubeSoFar, complain: Complain): void {
  checkFilter(step, tube, complain);
  checkLook(step, tube, complain);
  if (step.do === "take") {
    tube.taken = true;
    checkTake(step, part, samples, complain);
  } else if (!tube.taken && step.do !== "flame") {
    tube.taken = true;
    complain(
      undefined,
      "nothing is in the tube",
      `${step.do} as the first step`,
      "no sample taken before it",
      "begin the part with a step such as take: 1 cm3",
    );
  }
  if (step.do === "add") checkReagent(step, complain);
  const { cm3 } = tube.poured;
  if (step.do === "boil" && BOILED_AWAY.value * step.time.min > cm3 * BOILED_DRY.value) {
    complain(
      "boil",
      "boils dry",
      `${step.time.min} min`,
      `about ${BOILED_AWAY.value} cm3 boils away each minute, and the tube holds ${cm3} cm3`,
      "boil for less time, or add water",
    );
  }
  if (step.do === "heat solid") tube.heated = true;
  if (step.do === "heat solid" && cm3 > 0) {
    complain(
      "heat",
      "no dry solid",
      `heat ${step.how}`,
      "a liquid in the tube",
      "heat a fresh portion of the solid in a part of its own, or warm or boil the liquid",
    );
  }
}

/** Filtering needs a liquid, washing a residue that still lies on its paper. */
function checkFilter(step: Step, tube: TubeSoFar, complain: Complain): void {
  if (step.do === "filter" && tube.taken && tube.poured.cm3 === 0) {
    const found = "no liquid in the tube";
    complain("filter", "nothing to filter", `filter: ${step.keep}`, found, "add water or a reagent before it");
  }
  if (step.do === "wash" && tube.taken && !tube.onPaper) {
    const found = "no residue on a filter paper at this point of the part";
    const advice = "filter with filter: residue just before it, or leave the washing out";
    complain("wash", "nothing to wash", "wash: true", found, advice);
  }
  if (step.do === "filter") tube.onPaper = step.keep === "residue";
  else if (step.do === "add" || step.do === "take") tube.onPaper = false;
}

/** Strength of saturated limewater, mol/dm3. */
const SATURATED = reagents.find(({ id }) => id === "Ca(OH)2(aq)")?.concentration ?? 0;

/** An indicator needs a liquid, limewater cannot be stronger than saturated; a test for water needs a heated solid, for over a liquid it says nothing. */
function checkLook(step: Step, tube: TubeSoFar, complain: Complain): void {
  if (step.do === "indicator" && tube.taken && tube.poured.cm3 === 0) {
    const stated = `${step.with} as the test of a dry solid`;
    complain("indicator", "no liquid for the indicator", stated, "no liquid in the tube", "add H2O(l) before it");
  }
  if (step.do === "lead through" && step.at && step.at.molPerDm3 > SATURATED) {
    const stated = `${step.at.molPerDm3} mol/dm3`;
    const found = `limewater is saturated at about ${SATURATED} mol/dm3`;
    complain("at", "no such limewater", stated, found, "leave the strength out, or dilute it: at: 0.01 mol/dm3");
  }
  if (
    step.do === "test gas" &&
    WATER_TESTS.includes(step.with) &&
    tube.taken &&
    (!tube.heated || tube.poured.cm3 > 0)
  ) {
    const found = "no dry solid heated before it in this part";
    complain("testGas", "water is everywhere here", step.with, found, "heat a dry solid first, or leave this test out");
  }
}

function checkReagent(step: Extract<Step, { do: "add" }>, complain: Complain): void {
  const { reagent, amount } = step;
  if (!usableReagents.includes(reagent)) {
    const advice = `use one of ${usableReagents.join(", ")}, or add its constants with their sources (DEVELOPERS.md)`;
    complain("add", "unknown reagent", reagent, "no reagent the engine has constants for", advice);
    return;
  }
  if (isSolid(reagent) !== "pieces" in amount) {
    const [found, advice] = isSolid(reagent)
      ? ["a solid, which comes in pieces", "say pieces: 1"]
      : ["a liquid, which has no pieces", "say drops, volume or until: in excess"];
    complain("add", "the amount does not fit the reagent", `${reagent} by ${Object.keys(amount)[0]}`, found, advice);
  }
}

function checkTake(
  step: Extract<Step, { do: "take" }>,
  part: Part,
  samples: readonly GivenSample[],
  complain: Complain,
): void {
  const done = samples.filter(({ label }) => part.samples?.includes(label) ?? true);
  const wrong = done.filter(({ given }) => given === ("volume" in step ? "solid" : "solution"));
  if (wrong.length === 0) return;
  const letters = wrong.map(({ label }) => label).join(", ");
  const stated = "volume" in step ? `${step.volume.cm3} cm3` : `${step.mass.g} g`;
  const [given, amount] =
    "volume" in step ? ["a solid", "a mass such as 0.2 g"] : ["a solution", "a volume such as 1 cm3"];
  complain(
    "take",
    "the sample cannot be taken so",
    stated,
    `${letters} given as ${given}`,
    `take ${amount}, or name the samples of this part`,
  );
}
