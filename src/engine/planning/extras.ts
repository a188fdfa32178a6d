/** Everything on the bench besides tubes, samples and reagents: papers, splints, burner, labels, waste. */
import { askedFor } from "#words/bench.ts";
import * as say from "#words/bench-kit.ts";
import { tubeSize } from "#words/bench-plan.ts";
import { said } from "#words/constants.ts";
import { BEAKER } from "#words/vessels.ts";
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { INDICATORS, type Indicator } from "../constants/indicators.ts";
import { molarMass } from "../formula/molar-mass.ts";
import type { Part } from "../practical.ts";
import type { BenchPlan, PlannedTube, TubeSize } from "./bench-plan.ts";
import { DELIVERY, type GasKit, type GasTestCount } from "./gas-plan.ts";
import { depthOfVolume } from "./geometry.ts";
import { printed, tidy } from "./portions.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "./tube-choice.ts";
import { isFiltered } from "./tube-plan.ts";

type Extra = BenchPlan["extras"][number];

const FILLED: Partial<Record<GasKit, number>> = {
  limewater: BENCH_PRACTICE.limewater.value,
  [DELIVERY]: BENCH_PRACTICE.limewaterLed.value,
};

/** How much limewater stands in how many tubes, in a sentence; nothing for what needs none. */
function wordFilling(test: GasKit, count: number, tube: TubeSize): string {
  const cm3 = FILLED[test];
  if (cm3 === undefined) return "";
  return say.filling(printed(cm3), printed(count * cm3), Math.round(depthOfVolume(cm3, tube)), tubeSize(tube.name));
}

interface Needs {
  parts: readonly Part[];
  tubes: readonly PlannedTube[];
  gasTests: readonly GasTestCount[];
  /** Tests in which a coloured gas may come off. */
  coloured: readonly string[];
  /** Samples on which a flame test is done. */
  flameSamples: number;
  /** Samples on which each indicator is tried, with the tests that ask for it. */
  indicators: readonly { indicator: Indicator; count: number; cells: readonly string[] }[];
  /** Some of a solid sample is taken. */
  solids: boolean;
  /** What limewater stands in. */
  testTube: TubeSize;
  /** Bottles of liquids, each with its own dropper. */
  bottles: number;
  /** Tubes whose acid is taken away before they are emptied, with that acid, mmol of H+. */
  neutralised: readonly { tubes: readonly string[]; acid: number }[];
}

/**
 * Anhydrous sodium carbonate for so much acid, half as much again, g: each takes two H+.
 *
 * @param acid mmol of H+
 * @example carbonateFor(10) // 0.8, from 0.795
 */
export const carbonateFor = (acid: number): number =>
  Math.ceil(tidy((BENCH_PRACTICE.standsInWaste.value * acid * molarMass("Na2CO3")) / 200)) / 10;

/** The list in the order in which a bench is laid. */
export function extrasFor({
  parts,
  tubes,
  gasTests,
  coloured,
  flameSamples,
  indicators,
  solids,
  testTube,
  bottles,
  neutralised,
}: Needs): Extra[] {
  const partsWith = (does: (step: ReturnType<typeof stepsOf>[number]) => boolean) =>
    parts.filter((part) => stepsOf(part).some(does)).map((part) => part.label);
  const tubesOf = (letters: readonly string[]) => tubes.filter((tube) => letters.includes(tube.part));
  const heated = partsWith((step) => heatsLiquid(step) || heatsSolid(step));
  const boiled = partsWith((step) => step.do === "boil");
  const flames = partsWith((step) => step.do === "flame");
  const filtered = partsWith((step) => step.do === "filter");
  const splints = gasTests.filter(({ test }) => test.endsWith("splint"));
  const burns = heated.length + flames.length + splints.length > 0;

  const list: (Extra | false)[] = [
    { ...say.EXTRAS.goggles, count: 1, countedApart: true },
    { ...say.EXTRAS.rack, count: 1, because: say.tubes(tubes.length) },
    { ...say.EXTRAS.labels, count: 1 },
    burns && {
      ...say.EXTRAS.burner,
      count: 1,
      because: [
        heated.length > 0 && say.heatingIn(heated),
        flames.length > 0 && say.flameTestIn(flames),
        splints.length > 0 && say.SPLINTS,
      ]
        .filter(Boolean)
        .join("; "),
    },
    heated.length > 0 && { ...say.EXTRAS.holder, count: 1, because: say.heatingIn(heated) },
    boiled.length > 0 && { ...say.EXTRAS.granule, count: tubesOf(boiled).length, because: say.boilingIn(boiled) },
    flames.length > 0 && { ...say.EXTRAS.wire, count: 1, because: say.flameTestIn(flames) },
    flames.length > 0 && { ...say.EXTRAS.watchGlass, count: 1 + flameSamples, because: say.flameTestIn(flames) },
    solids && {
      ...say.EXTRAS.spatula,
      count: 1,
      prepare: say.wipeSpatula(printed(BENCH_PRACTICE.spatulaTip.value), printed(BENCH_PRACTICE.spatulaMeasure.value)),
    },
    gasTests.some(({ test }) => test.endsWith("litmus") || test.endsWith("paper")) && {
      ...say.EXTRAS.tweezers,
      count: 1,
    },
    filtered.length > 0 && {
      ...say.EXTRAS.funnel,
      count: tubesOf(filtered).filter(isFiltered).length,
      because: say.filteringIn(filtered),
    },
    ...gasTests.map(({ test, count, because }) => ({
      what: say.GASES[test].what,
      count,
      prepare: say.GASES[test].prepare(wordFilling(test, count, testTube)),
      because: say.forTest(test, because),
    })),
    coloured.length > 0 && { ...say.EXTRAS.card, count: 1, because: say.inCaseColoured(coloured) },
    ...indicators.map(({ indicator, count, cells }) => ({
      ...say.EXTRAS.indicator,
      what: said(INDICATORS[indicator].form),
      count,
      because: askedFor(cells),
    })),
    indicators.length > 0 && { ...say.EXTRAS.tile, count: 1 },
    bottles > 0 && { ...say.EXTRAS.dropper, count: bottles, countedApart: true },
    neutralised.length > 0 && {
      ...say.EXTRAS.carbonate,
      count: 1,
      grams: carbonateFor(neutralised.reduce((sum, { acid }) => sum + acid, 0)),
      because: say.acidIn(neutralised.flatMap((one) => one.tubes)),
    },
    { ...say.EXTRAS.washBottle, count: 1 },
    { ...say.EXTRAS.beaker, what: BEAKER, count: 1 },
  ];
  return list.filter((extra): extra is Extra => extra !== false);
}
