/** Everything on the bench besides tubes, samples and reagents: papers, splints, burner, labels, waste. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import { INDICATORS, type Indicator } from "../constants/indicators.ts";
import type { Part } from "../practical.ts";
import type { BenchPlan, PlannedTube, TubeSize } from "./bench-plan.ts";
import { DELIVERY, type GasKit, type GasTestCount } from "./gas-plan.ts";
import { depthOfVolume } from "./geometry.ts";
import { printed } from "./portions.ts";
import { heatsLiquid, heatsSolid, stepsOf } from "./tube-choice.ts";

type Extra = BenchPlan["extras"][number];

/** What stands ready for each way of testing a gas, and what is done with it first. */
const GAS_KIT: Readonly<Record<GasKit, { what: string; prepare: (count: number, tube: TubeSize) => string }>> = {
  "damp red litmus": { what: "red litmus paper", prepare: () => DAMP },
  "damp blue litmus": { what: "blue litmus paper", prepare: () => DAMP },
  limewater: {
    what: "small tube with limewater and a clean dropper",
    prepare: (count, tube) => {
      const { value } = BENCH_PRACTICE.limewater;
      return `${wordFilling(value, count, tube)} Draw the gas up with the dropper just above the liquid and bubble it through.`;
    },
  },
  "glowing splint": { what: "splint", prepare: () => "Light it, blow the flame out and use it while it glows." },
  "lighted splint": { what: "splint", prepare: () => "Light it before the gas comes." },
  "acidified manganate(VII) paper": {
    what: "strip of filter paper",
    prepare: () => "Wet it with a drop of acidified potassium manganate(VII) just before the test.",
  },
  "acidified dichromate(VI) paper": {
    what: "strip of filter paper, held with tongs",
    prepare: () =>
      "Wet it with a drop of acidified potassium dichromate(VI), which can cause cancer and allergy: gloves, and into the chromium waste afterwards.",
  },
  "rod with hydrochloric acid": {
    what: "glass rod",
    prepare: () => `Dip it into concentrated hydrochloric acid. ${WITH_TEACHER}`,
  },
  "rod with ammonia": {
    what: "glass rod",
    prepare: () => `Dip it into concentrated ammonia. ${WITH_TEACHER}`,
  },
  "anhydrous copper(II) sulfate": {
    what: "spatula tip of white anhydrous copper(II) sulfate",
    prepare: () => "Keep it dry. It damages eyes: goggles on.",
  },
  "cobalt(II) chloride paper": {
    what: "dry, blue cobalt(II) chloride paper",
    prepare: () => "Keep it dry and hold it with tongs: it can cause cancer and allergy.",
  },
  [DELIVERY]: {
    what: "delivery tube with a stopper, and a tube with limewater",
    prepare: (count, tube) => {
      const { value } = BENCH_PRACTICE.limewaterLed;
      return `${wordFilling(value, count, tube)} See that the delivery tube is open from end to end.`;
    },
  },
};
const wordFilling = (cm3: number, count: number, tube: TubeSize): string =>
  `Put ${printed(cm3)} cm3 of limewater in each, ${printed(count * cm3)} cm3 in all: ${Math.round(depthOfVolume(cm3, tube))} mm deep in a ${tube.name}.`;

const WITH_TEACHER =
  "It fumes and burns: your teacher does this, or stands by, in a fume cupboard or at an open window.";
const DAMP = "Damp it with deionised water and hold it at the mouth of the tube without touching the glass.";

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
  /** Tubes whose acid is taken away before they are emptied. */
  neutralised: readonly string[];
}

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
  const splints = gasTests.filter(({ test }) => GAS_KIT[test].what === "splint");
  const burns = heated.length + flames.length + splints.length > 0;
  const named = (letters: readonly string[]) => `${letters.length > 1 ? "parts" : "part"} ${letters.join(", ")}`;

  const list: (Extra | false)[] = [
    {
      what: "pair of goggles",
      count: 1,
      prepare: "Put them on before the first bottle is opened.",
      because: "every part",
    },
    { what: "test-tube rack", count: 1, because: `${tubes.length} tubes` },
    {
      what: "label pen and paper labels",
      count: 1,
      prepare: "Label each tube before filling it.",
      because: "every tube",
    },
    burns && {
      what: "burner with heat mat and lighter",
      count: 1,
      prepare: "Try both, then turn the burner off or to the yellow flame.",
      because: [
        heated.length > 0 && `heating in ${named(heated)}`,
        flames.length > 0 && `flame test in ${named(flames)}`,
        splints.length > 0 && "splints",
      ]
        .filter(Boolean)
        .join("; "),
    },
    heated.length > 0 && {
      what: "test-tube holder",
      count: 1,
      prepare: "Grip the tube near its mouth.",
      because: `heating in ${named(heated)}`,
    },
    boiled.length > 0 && {
      what: "anti-bumping granule",
      count: tubesOf(boiled).length,
      prepare: "Put it in while the liquid is cold.",
      because: `boiling in ${named(boiled)}`,
    },
    flames.length > 0 && {
      what: "flame-test wire",
      count: 1,
      prepare: "Clean it in the acid and the flame until it gives no colour, before each sample.",
      because: `flame test in ${named(flames)}`,
    },
    flames.length > 0 && {
      what: "watch glass",
      count: 1 + flameSamples,
      prepare: "One with the acid for the wire, one for a little of each sample.",
      because: `flame test in ${named(flames)}`,
    },
    solids && {
      what: "narrow spatula",
      count: 1,
      prepare: `Wipe it clean between two samples. Weigh each portion, or judge it: ${printed(BENCH_PRACTICE.spatulaTip.value)} g is about what the very tip holds, ${printed(BENCH_PRACTICE.spatulaMeasure.value)} g what its end holds.`,
      because: "portions of solid samples",
    },
    gasTests.some(({ test }) => test.endsWith("litmus") || test.endsWith("paper")) && {
      what: "tweezers",
      count: 1,
      prepare: "Hold each paper with them, never in your fingers.",
      because: "papers for gases",
    },
    filtered.length > 0 && {
      what: "funnel with filter paper",
      count: tubesOf(filtered).filter((tube) => / (filtrate|residue)$/.test(tube.label)).length,
      prepare: "Fold the paper and wet it with deionised water.",
      because: `filtering in ${named(filtered)}`,
    },
    ...gasTests.map(({ test, count, because }) => ({
      what: GAS_KIT[test].what,
      count,
      prepare: GAS_KIT[test].prepare(count, testTube),
      because: `${test}: ${because}`,
    })),
    coloured.length > 0 && {
      what: "white card",
      count: 1,
      prepare: "Hold it behind the tube: a pale gas is easily missed.",
      because: `in case ${coloured.join(" or ")} gives a coloured gas`,
    },
    ...indicators.map(({ indicator, count, cells }) => ({
      what: INDICATORS[indicator].form,
      count,
      prepare: "Lay it on a white tile and touch it with a drop on a clean glass rod. Never dip it into the tube.",
      because: `asked for in ${cells.join(", ")}`,
    })),
    indicators.length > 0 && {
      what: "white tile with a glass rod",
      count: 1,
      prepare: "Rinse and dry the rod between two liquids.",
      because: "indicator paper",
    },
    bottles > 0 && {
      what: "clean dropper",
      count: bottles,
      prepare: "One for each bottle. Never lay it on the bench or dip it into a tube.",
      because: "one dropper for each bottle of solution",
    },
    neutralised.length > 0 && {
      what: "small bottle of solid sodium carbonate with a spatula of its own",
      count: 1,
      prepare: "Label it. It irritates eyes: goggles on. It goes into no tube before the last line is written.",
      because: `the acid in ${neutralised.join(", ")} before they are emptied`,
    },
    { what: "wash bottle of deionised water", count: 1, because: "rinsing tubes and damping papers" },
    {
      what: "waste beaker",
      count: 1,
      because: "for what goes into no bottle; nothing into the sink until your teacher says so",
    },
  ];
  return list.filter((extra): extra is Extra => extra !== false);
}
