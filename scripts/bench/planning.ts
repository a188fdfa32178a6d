/** Bench plan and order of work: the walkthroughs' own, an invented procedure of 9 tubes and 25 steps, and a general-purpose solver on it. */
import load from "highs";
import type { Walkthrough } from "../../src/build/walkthrough.types.ts";
import { DEFAULT_TUBES } from "../../src/engine/constants/glassware.ts";
import { createPredictor, createSolver, orderOfWork, phrase, planBench, tabulate } from "../../src/engine/index.ts";
import { shortest } from "../../src/engine/planning/order-of-work/shortest.ts";
import { tubeWorkOf } from "../../src/engine/planning/order-of-work/tube-work.ts";
import { procedure, statement } from "../../src/engine/practical.ts";
import { canEndBy, FOR_A_PROOF } from "../../tests/engine/planning/order-of-work/work-by-milp.ts";
import { median, rounded, say, times } from "./timing.ts";

const ROUNDS = { plan: 201, solver: 1 };

const take = { take: "1 cm3" };
const drops = (reagent: string) => ({ add: reagent, drops: 5 });
const add = (reagent: string) => ({ add: reagent, volume: "1 cm3" });
const excess = (reagent: string) => ({ add: reagent, until: "in excess" });
const shake = { shake: true };

/** Three parts on three samples: 9 tubes and 25 steps, with a flame, a gas, a standing tube and a filter. */
export const NINE_TUBES = {
  samples: ["P", "Q", "R"].map((label) => ({
    label,
    given: "solution" as const,
    concentration: { molPerDm3: 0.1 },
    salt: "ZnSO4*7H2O",
  })),
  paper: statement.parse({ cations: "school", anions: "school" }),
  parts: procedure.parse([
    {
      label: "a",
      title: "Sodium hydroxide",
      tests: [
        { steps: [take, drops("NaOH(aq)"), shake] },
        { steps: [excess("NaOH(aq)"), shake] },
        { steps: [{ stand: "5 min" }, shake] },
        { steps: [{ warm: true }, { testGas: "damp red litmus" }] },
      ],
    },
    {
      label: "b",
      title: "Nitric acid, then silver nitrate, then ammonia",
      tests: [
        { steps: [take, add("HNO3(aq)"), shake] },
        { steps: [drops("AgNO3(aq)"), shake] },
        { steps: [excess("NH3(aq)"), shake] },
      ],
    },
    {
      label: "c",
      title: "Barium nitrate, then acid on what is left on the filter",
      tests: [
        { steps: [take, add("Ba(NO3)2(aq)"), shake] },
        { steps: [{ filter: "residue" }, { wash: true }] },
        { steps: [add("HNO3(aq)"), { warm: true }, shake, { testGas: "damp blue litmus" }] },
      ],
    },
  ]),
};

export async function benchPlanning(walkthroughs: readonly Walkthrough[]) {
  say("plan: every walkthrough");
  const plans = walkthroughs.map(
    ({ practical, table }) =>
      () =>
        planBench(practical, table, DEFAULT_TUBES),
  );
  const orders = walkthroughs.flatMap(({ practical }) =>
    [1, 2].map((people) => () => orderOfWork(practical, { people, burners: 1, partsInOrder: true })),
  );
  return {
    medianMs: rounded(median(times(ROUNDS.plan, plans))),
    orderMedianMs: rounded(median(times(ROUNDS.plan, orders))),
    nine: await benchNine(),
  };
}

async function benchNine() {
  const table = tabulate(NINE_TUBES, createPredictor(createSolver()), phrase).table;
  const both = (people: number) => () => {
    planBench(NINE_TUBES, table, DEFAULT_TUBES);
    return orderOfWork(NINE_TUBES, { people, burners: 1, partsInOrder: true });
  };
  say("plan: 9 tubes and 25 steps, and a general-purpose solver on the same");
  const highs = await load();
  const tubes = tubeWorkOf(NINE_TUBES);
  const each = [1, 2].map((people) => {
    const { bench, least } = both(people)();
    const means = { people, burners: 1, tubes: {}, partsInOrder: true, rinse: 0 };
    const { end } = shortest(tubes, means);
    const [ours] = times(ROUNDS.plan, [() => shortest(tubes, means)]);
    // Only that nothing shorter can be done: the solver is spared the search for an order.
    const begun = performance.now();
    if (canEndBy(highs, tubes, means, end - 1, FOR_A_PROOF))
      throw new Error(`HiGHS finds an order shorter than ${bench} minutes`);
    const theirs = performance.now() - begun;
    return { ms: rounded(times(ROUNDS.plan, [both(people)])[0]), gap: bench - least, ratio: rounded(theirs / ours) };
  });
  const [one, two] = each;
  return {
    oneMs: one.ms,
    twoMs: two.ms,
    gap: Math.max(one.gap, two.gap),
    solverToOne: one.ratio,
    solverToTwo: two.ratio,
  };
}
