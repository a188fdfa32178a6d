/** Mixtures in round volumes that have an answer hard to find: found among random procedures, each must come to rest. */
import { expect, test } from "vitest";
import { boilOf, cm3, drops, excess, show, take, warm } from "./show.ts";

test.each<[string, Record<string, number>, ...unknown[][]]>([
  // Silver and sulfide in the very ratio of Ag2S.
  ["silver at the point of its sulfide", { "Na+": 2, "CO3^2-": 1 }, [take, cm3("Na2S2O3(aq)")], [excess("AgNO3(aq)")]],
  [
    "the same beside lead",
    { "Fe^2+": 1, "S2O3^2-": 1 },
    [take, cm3("Pb(NO3)2(aq)", 3)],
    [cm3("AgNO3(aq)"), boilOf(1)],
    [{ add: "AgNO3(aq)", drops: 1 }, warm],
  ],
  // Iodide, thiocyanate or iron carries electrons from the one to the other, round by round as much as there is of it.
  ["iodide between copper and sulfite", { "Cu^2+": 1, "NO3-": 2 }, [take, cm3("Na2SO3(aq)")], [excess("KI(aq)")]],
  [
    "thiocyanate between copper and sulfite",
    { "Cu^2+": 1, "NO3-": 2 },
    [take, cm3("Na2SO3(aq)")],
    [excess("KSCN(aq)")],
  ],
  [
    "iron between peroxide and thiosulfate",
    { "Na+": 2, "S2O3^2-": 1 },
    [take, drops("acidified H2O2(aq)")],
    [cm3("FeSO4(aq)", 3)],
  ],
])("%s", (_, ions, ...tests) => {
  expect(show(ions, ...tests)).toHaveLength(tests.length);
});
