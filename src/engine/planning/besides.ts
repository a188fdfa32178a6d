/** Liquids of the bench that no step of the procedure adds: for the tests of gases, for the flame-test wire and for emptying tubes. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { DELIVERY, type GasKit, type GasTestCount } from "./gas-plan.ts";
import { setOutOfReagent, tidy, volumeOfDrops } from "./portions.ts";
import { reagentOf } from "./reagent-plan.ts";
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

/** What a paper or a rod is wetted with, a drop each time: words, and id of the reagent or the stock. */
const WETS: Partial<Record<GasKit, readonly [what: string, id: string]>> = {
  "acidified manganate(VII) paper": ["acidified potassium manganate(VII), for paper", "acidified KMnO4(aq)"],
  "acidified dichromate(VI) paper": ["acidified potassium dichromate(VI), for paper", "acidified K2Cr2O7(aq)"],
  "rod with hydrochloric acid": [
    "concentrated hydrochloric acid, for the rod, with your teacher",
    "concentrated hydrochloric acid",
  ],
  "rod with ammonia": ["concentrated ammonia, for the rod, with your teacher", "880 ammonia"],
};

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
    const inCase = asked ? "" : ", in case";
    if (test === DELIVERY) {
      const cm3 = tidy(count * BENCH_PRACTICE.limewaterLed.value);
      return [row(LIMEWATER, "limewater, to lead a gas through", cm3, because)];
    }
    if (test === "limewater") {
      return [row(LIMEWATER, `limewater${inCase}`, tidy(count * BENCH_PRACTICE.limewater.value), because)];
    }
    const wets = WETS[test];
    return wets ? [row(wets[1], `${wets[0]}${inCase}`, volumeOfDrops(count), because)] : [];
  });
  if (flameTests > 0) {
    rows.push(row("HCl(aq)", "dilute hydrochloric acid, for the wire", BENCH_PRACTICE.wireAcid.value, "flame test"));
  }
  for (const { name, cm3, because } of halogens) {
    const what = `sodium thiosulfate, for the ${name} before those tubes are emptied`;
    rows.push(row("Na2S2O3(aq)", what, tidy(cm3), because));
  }
  const standing = stand.map(({ into, id, cm3, because }) => ({
    ...row(id, `${reagentOf(id).name}, put into the ${into} before the first tube`, cm3, because),
    into,
  }));
  return [...rows, ...standing];
}
