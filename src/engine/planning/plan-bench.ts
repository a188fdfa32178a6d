/**
 * The bench before the first test: tubes with their labels and fill marks, reagents and samples to set out, papers and splints,
 * gases to expect, cautions and checks. Computed from the procedure and from the predictions for every allowed salt.
 */
import { bringsTogether, HALOGENS as HALOGEN_WORDS, inPart } from "#words/bench.ts";
import { said } from "#words/constants.ts";
import type { PredictionTable } from "../bench/prediction-table.ts";
import { unsafeMixtures } from "../bench/unsafe-mixtures.ts";
import { GAS_SAFETY, TEST_REAGENTS } from "../constants/gas-safety.ts";
import { INDICATORS, type Indicator } from "../constants/indicators.ts";
import type { Paper, Part, Step } from "../practical.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { besidesFor } from "./besides.ts";
import { benchCautions } from "./cautions.ts";
import { checksFor } from "./checks.ts";
import { emptied } from "./emptied.ts";
import { extrasFor } from "./extras.ts";
import { DELIVERY, expectedGases, type GasTestCount, gasRows, gasTestCounts } from "./gas-plan.ts";
import { limewaterTubes } from "./limewater-tubes.ts";
import { meltingCautions } from "./melting.ts";
import { amountWarnings, planReagents, reagentCautions, reagentOf } from "./reagent-plan.ts";
import { sampleAmounts } from "./sample-plan.ts";
import { standsInWaste } from "./stands-in-waste.ts";
import { glassOf, stepsOf } from "./tube-choice.ts";
import { planTube, type TubePlan } from "./tube-plan.ts";
import { unsafeCautions, unsafeTests, unsafeWarnings } from "./unsafe-tests.ts";
import { emptiedBesides, wasteBottles, wasteRows } from "./waste-plan.ts";

/** What of a practical decides its bench. */
export type Planned = Pick<Paper, "samples" | "parts" | "paper">;

/**
 * Plans the bench of one reader. One tube for each part and sample, in which the part's tests follow one another.
 *
 * @param planned the procedure and its samples: volumes in cm3, masses in g, concentrations in mol/dm3
 * @param table the predictions for the same procedure, from which the gases are read
 * @param options ids of tube sizes, from constants/glassware.ts
 * @throws RangeError for a tube size or a reagent that does not exist, or a table made for another procedure
 */
export function planBench(
  planned: Planned,
  table: PredictionTable,
  options: { testTube: string; boilingTube: string },
): BenchPlan {
  const glass = glassOf(options);
  const { samples, parts, paper } = planned;
  const cells = cellsByPart(parts, table);
  const plans = parts.flatMap((part, index) =>
    samples
      .filter((sample) => part.samples?.includes(sample.label) ?? true)
      .map((sample) => ({
        part,
        sample,
        plan: planTube(part, cells[index], sample, glass, reagentOf),
      })),
  );
  const tubes = plans.flatMap(({ plan }) => plan.tubes);
  const uses = plans.flatMap(({ plan }) => plan.uses);
  const reagents = planReagents(uses);
  const amounts = samples.map((sample) => ({
    sample: sample.label,
    ...sampleAmounts(plans.filter((one) => one.sample === sample).map(({ plan }) => plan)),
  }));

  const steps = parts.flatMap((part) => part.tests.map((test) => test.steps));
  const stepsIn = (cell: number) => steps[cell];
  const gases = expectedGases(table, stepsIn);
  const gasTests = gasTestCounts(table, stepsIn, gases);
  const solutions = samples.filter(({ given }) => given !== "solid").length;
  const indicators = indicatorCounts(table, stepsIn);
  const flameSamples = plans.filter(({ part }) => stepsOf(part).some((step) => step.do === "flame"));
  const waste = [
    ...emptied(
      plans.map(({ part, sample, plan }) => ({
        part: part.label,
        sample: sample.label,
        molPerDm3: sample.concentration?.molPerDm3,
        plan,
      })),
      paper,
    ),
    ...emptiedBesides(gasTests.map(({ test }) => test)),
  ];
  const stand = standsInWaste(waste);
  const unsafe = unsafeTests(parts, table);
  const askFirst = [
    ...unsafeWarnings(unsafe),
    ...unsafeMixtures(parts, [...paper.cations, ...paper.anions]).map(({ part, row: { what, reason } }) => ({
      part,
      says: bringsTogether(said(what), said(reason)),
    })),
  ];
  const liquids = reagents.filter(({ neededCm3 }) => neededCm3 > 0).length;

  return {
    tubes,
    limewater: limewaterTubes(parts, samples, glass.testTube),
    reagents,
    samples: amounts,
    besides: besidesFor({
      gasTests,
      flameTests: flameSamples.length,
      halogens: halogensIn(plans.map(({ plan }) => plan)),
      stand,
    }),
    extras: [
      ...extrasFor({
        parts,
        tubes,
        gasTests,
        // What no test shows is seen: nitrogen dioxide.
        coloured: gases.filter(({ gas }) => GAS_SAFETY[gas].seenAs === "colour").map(({ cell }) => cell.id),
        flameSamples: flameSamples.length,
        indicators,
        solids: plans.some(({ plan }) => plan.solidG > 0),
        testTube: glass.testTube,
        bottles: solutions + liquids,
        neutralised: waste.filter(({ first }) => first?.some(({ takes }) => takes === "acid")),
      }),
      ...wasteBottles(waste, stand),
    ],
    waste: wasteRows(waste),
    gases: gasRows(gases),
    cautions: benchCautions(
      planned,
      reagentCautions([...uses, ...gasTests.flatMap(testReagent)]),
      [...unsafeCautions(unsafe), ...meltingCautions(parts, table)],
      gases.map(({ gas }) => gas),
    ),
    checks: checksFor(
      parts,
      gasTests.map(({ test }) => test),
    ),
    askFirst,
    warnings: [
      ...askFirst.map(({ part, says }) => inPart(part, says)),
      ...new Set(
        plans.flatMap(({ part, sample, plan }) => [...plan.warnings, ...amountWarnings(part, sample, plan, paper)]),
      ),
    ],
  };
}

const HALOGENS = [
  { id: "Cl2(aq)", ...HALOGEN_WORDS.chlorine },
  { id: "I2(aq)", ...HALOGEN_WORDS.iodine },
];

/** Liquid in the tubes that chlorine water or iodine goes into, cm3. */
const halogensIn = (plans: readonly TubePlan[]) =>
  HALOGENS.flatMap(({ id, name, because }) => {
    const tubes = plans.filter(({ uses }) => uses.some((use) => use.id === id)).flatMap((plan) => plan.tubes);
    const cm3 = tubes.reduce((sum, { marks }) => sum + Math.max(0, ...marks.map((mark) => mark.cm3)), 0);
    return cm3 > 0 ? [{ name, cm3, because }] : [];
  });

/** The bottle or paper behind a way of testing a gas, whose caution goes for the test. */
function testReagent({ test }: GasTestCount): { id: string }[] {
  const id = TEST_REAGENTS[test === DELIVERY ? "limewater" : test];
  return id === undefined ? [] : [{ id }];
}

/** How often each indicator is tried: once for each sample of each step that names it. */
function indicatorCounts(table: PredictionTable, stepsIn: (cell: number) => readonly Step[]) {
  return (Object.keys(INDICATORS) as Indicator[]).flatMap((indicator) => {
    const cells = table.cells.filter((_, index) =>
      stepsIn(index).some((step) => step.do === "indicator" && step.with === indicator),
    );
    const count = cells.reduce((sum, { samples }) => sum + samples.length, 0);
    return count > 0 ? [{ indicator, count, cells: cells.map(({ id }) => id) }] : [];
  });
}

/** The table's test labels, part by part: the table has one cell for each test, in the order of the paper. */
function cellsByPart(parts: readonly Part[], table: PredictionTable): string[][] {
  const ids = table.cells.map((cell) => cell.id);
  let next = 0;
  const byPart = parts.map((part) => part.tests.map(() => ids[next++]));
  const strays = parts.some((part, index) => byPart[index].some((id) => id?.[0] !== part.label));
  if (strays || next !== ids.length) {
    throw new RangeError(
      `bench plan, table: found predictions for the tests ${ids.join(", ")}, expected ${next} tests in the parts ${parts.map((part) => part.label).join(", ")}; predict this procedure again`,
    );
  }
  return byPart;
}
