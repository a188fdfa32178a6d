/** Which pages of tests a practical exercises, read from what its steps do. */
import { cellsOf, type Part, type Practical, type Step } from "../engine/practical.ts";

type Steps = readonly Step[];

const adds = (steps: Steps, ...reagents: string[]): boolean =>
  steps.some((step) => step.do === "add" && reagents.includes(step.reagent));
const does = (steps: Steps, ...verbs: Step["do"][]): boolean => steps.some((step) => verbs.includes(step.do));
const testsGas = (steps: Steps): boolean => does(steps, "test gas", "lead through");
const triesLitmus = (steps: Steps): boolean =>
  steps.some((step) => step.do === "test gas" && step.with === "damp red litmus");

const SILVER = "AgNO3(aq)";
const ACIDS = ["HCl(aq)", "HNO3(aq)", "H2SO4(aq)"];

/** By the name of the page: whether a part is that test, seen from all it does in one tube. */
const EXERCISED: Readonly<Record<string, (steps: Steps) => boolean>> = {
  "sodium-hydroxide": (steps) => adds(steps, "NaOH(aq)") && !triesLitmus(steps),
  ammonia: (steps) => adds(steps, "NH3(aq)") && !adds(steps, SILVER),
  ammonium: (steps) => adds(steps, "NaOH(aq)") && triesLitmus(steps),
  "potassium-iodide": (steps) => adds(steps, "KI(aq)") && !adds(steps, "H2SO4(aq)"),
  flame: (steps) => does(steps, "flame"),
  "sulfuric-acid": (steps) => adds(steps, "H2SO4(aq)") && !testsGas(steps) && !adds(steps, "KI(aq)"),
  "sodium-carbonate": (steps) => adds(steps, "Na2CO3(aq)"),
  thiocyanate: (steps) => adds(steps, "KSCN(aq)"),
  hexacyanoferrates: (steps) => adds(steps, "K4[Fe(CN)6](aq)", "K3[Fe(CN)6](aq)"),
  chromate: (steps) => adds(steps, "K2CrO4(aq)"),
  acid: (steps) => adds(steps, ...ACIDS) && testsGas(steps),
  barium: (steps) => adds(steps, "BaCl2(aq)", "Ba(NO3)2(aq)"),
  "silver-nitrate": (steps) => adds(steps, SILVER),
  nitrate: (steps) => adds(steps, "Al(s)"),
  "magnesium-sulfate": (steps) => adds(steps, "MgSO4(aq)"),
  manganate: (steps) => adds(steps, "acidified KMnO4(aq)", "KMnO4(aq)"),
  dichromate: (steps) => adds(steps, "acidified K2Cr2O7(aq)"),
  "acidified-iodide": (steps) => adds(steps, "KI(aq)") && adds(steps, "H2SO4(aq)"),
  "chlorine-water": (steps) => adds(steps, "Cl2(aq)"),
  "lead-nitrate": (steps) => adds(steps, "Pb(NO3)2(aq)"),
  "iodine-and-starch": (steps) => adds(steps, "I2(aq)", "starch solution"),
  peroxide: (steps) => adds(steps, "acidified H2O2(aq)", "H2O2(aq)"),
  limewater: (steps) =>
    steps.some((step) => step.do === "lead through" || (step.do === "test gas" && step.with === "limewater")),
  gases: testsGas,
  "heating-a-solid": (steps) => does(steps, "heat solid"),
  indicators: (steps) => does(steps, "indicator"),
};

/** A powder is dissolved in acid and its solution tried with alkali. */
const isPowderTest = (part: Part): boolean => {
  const steps = stepsOf(part);
  const takesSolid = steps.some((step) => step.do === "take" && "mass" in step);
  return takesSolid && adds(steps, ...ACIDS) && adds(steps, "NaOH(aq)", "NH3(aq)");
};

const stepsOf = (part: Part): Step[] => part.tests.flatMap(({ steps }) => steps);

/** Names of the pages in `src/content/ion-tests/`, in the order above. */
export function testsExercised({ parts }: Pick<Practical, "parts">): string[] {
  const names = Object.keys(EXERCISED).filter((name) => parts.some((part) => EXERCISED[name](stepsOf(part))));
  return parts.some(isPowderTest) ? [...names, "powders"] : names;
}

/** All names a practical may exercise: a test holds them against the pages there are. */
export const TEST_PAGES: readonly string[] = [...Object.keys(EXERCISED), "powders"];

/** How many lines of a record a practical asks for. */
export const linesOf = ({ parts, samples }: Pick<Practical, "parts" | "samples">): number =>
  cellsOf(parts).reduce((sum, { part }) => sum + (part.samples?.length ?? samples.length), 0);
