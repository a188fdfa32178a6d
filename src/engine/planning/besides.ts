/** Liquids of the bench that no step of the procedure adds: for the tests of gases and for the flame-test wire. */
import { BENCH_PRACTICE } from "../constants/bench-practice.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { DELIVERY, type GasKit, type GasTestCount } from "./gas-plan.ts";
import { setOutOfReagent, tidy, volumeOfDrops } from "./portions.ts";

interface Needs {
  gasTests: readonly GasTestCount[];
  flameTests: number;
}

/** What a paper or a rod is wetted with, a drop each time. */
const WETS: Partial<Record<GasKit, string>> = {
  "acidified manganate(VII) paper": "acidified potassium manganate(VII), for paper",
  "acidified dichromate(VI) paper": "acidified potassium dichromate(VI), for paper",
  "rod with hydrochloric acid": "concentrated hydrochloric acid, for the rod, with your teacher",
  "rod with ammonia": "concentrated ammonia, for the rod, with your teacher",
};

/** With what is used, cm3, and what is set out by the same rule as for reagents. */
export function besidesFor({ gasTests, flameTests }: Needs): BenchPlan["besides"] {
  const row = (what: string, neededCm3: number, because: string) => ({
    what,
    neededCm3,
    setOutCm3: setOutOfReagent(neededCm3),
    because,
  });
  const rows = gasTests.flatMap(({ test, count, asked, because }) => {
    const inCase = asked ? "" : ", in case";
    if (test === DELIVERY) {
      return [row("limewater, to lead a gas through", tidy(count * BENCH_PRACTICE.limewaterLed.value), because)];
    }
    if (test === "limewater") return [row(`limewater${inCase}`, tidy(count * BENCH_PRACTICE.limewater.value), because)];
    const wets = WETS[test];
    return wets ? [row(`${wets}${inCase}`, volumeOfDrops(count), because)] : [];
  });
  if (flameTests > 0) {
    rows.push(row("dilute hydrochloric acid, for the wire", BENCH_PRACTICE.wireAcid.value, "flame test"));
  }
  return rows;
}
