/** Liquids of the bench that no step of the procedure adds: for the tests of gases, for the flame-test wire and for emptying tubes. */
import * as say from "#words/bench.ts";
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { DELIVERY, type GasKit, type GasTestCount } from "./gas-plan.ts";
import { setOutOfReagent, tidy, volumeOfDrops } from "./portions.ts";
import { nameOf } from "./reagent-plan.ts";
import type { StandsInWaste } from "./stands-in-waste.ts";

export const LIMEWATER = "Ca(OH)2(aq)";

interface Needs {
  gasTests: readonly GasTestCount[];
  flameTests: number;
  /** Liquid in the tubes that chlorine water or iodine went into, cm3: as much thiosulfate takes the halogen (`EMPTIED_APART`). */
  halogens: readonly { name: string; cm3: number; because: string }[];
  /** What stands in waste bottles. */
  stand: readonly StandsInWaste[];
}

/** What a paper or a rod is wetted with, a drop each time: id of the reagent or the stock. */
const WETS = {
  "acidified manganate(VII) paper": "acidified KMnO4(aq)",
  "acidified dichromate(VI) paper": "acidified K2Cr2O7(aq)",
  "rod with hydrochloric acid": "concentrated hydrochloric acid",
  "rod with ammonia": "880 ammonia",
} as const satisfies Partial<Record<GasKit, string>>;

const isWetted = (test: GasKit): test is keyof typeof WETS => Object.hasOwn(WETS, test);

/** With what is used, cm3, and what is set out by the same rule as for reagents. */
export function besidesFor({ gasTests, flameTests, halogens, stand }: Needs): BenchPlan["besides"] {
  const row = (id: string, what: string, neededCm3: number, because: string) => ({
    id,
    what,
    neededCm3,
    setOutCm3: setOutOfReagent(neededCm3),
    because,
  });
  const rows = gasTests.flatMap(({ test, count, asked, because }) => {
    const inCase = asked ? "" : say.IN_CASE;
    if (test === DELIVERY) {
      const cm3 = tidy(count * BENCH_PRACTICE.limewaterLed.value);
      return [row(LIMEWATER, say.BESIDES.leadThrough, cm3, because)];
    }
    if (test === "limewater") {
      return [row(LIMEWATER, say.BESIDES.limewater + inCase, tidy(count * BENCH_PRACTICE.limewater.value), because)];
    }
    return isWetted(test) ? [row(WETS[test], say.BESIDES[test] + inCase, volumeOfDrops(count), because)] : [];
  });
  if (flameTests > 0) {
    rows.push(row("HCl(aq)", say.BESIDES.wire, BENCH_PRACTICE.wireAcid.value, say.FLAME_TEST));
  }
  for (const { name, cm3, because } of halogens) {
    rows.push(row("Na2S2O3(aq)", say.thiosulfateFor(name), tidy(cm3), because));
  }
  const standing = stand.map(({ into, id, cm3, because }) => ({
    ...row(id, say.putInto(nameOf(id), into), cm3, because),
    into,
  }));
  return [...rows, ...standing];
}
