/** A gate that acts on a page is named there with its source. */
import { expect, test } from "vitest";
import { namedGates } from "../../src/build/walkthrough.ts";
import { show, take } from "../engine/bench/show.ts";

/** One mixture for each kind of gate a prediction may name. */
test.each<[string, Record<string, number>, unknown[]]>([
  [
    "starch with iodine",
    { "K+": 1, "I-": 1 },
    [
      { add: "acidified H2O2(aq)", drops: 5 },
      { add: "starch solution", drops: 2 },
    ],
  ],
  ["copper(II) oxide", { "Cu^2+": 1, "NO3-": 2 }, [{ add: "NaOH(aq)", volume: "1 cm3" }, { boil: "1 min" }]],
  ["silver thiosulfate", { "Na+": 2, "S2O3^2-": 1 }, [{ add: "AgNO3(aq)", volume: "3 cm3" }]],
  ["silver sulfite at the drop", { "Na+": 2, "SO3^2-": 1 }, [{ add: "AgNO3(aq)", drops: 5 }]],
  ["lead", { "Pb^2+": 1, "NO3-": 2 }, [{ add: "NaOH(aq)", drops: 5, at: "0.4 mol/dm3" }]],
  ["gypsum", { "Ca^2+": 1, "NO3-": 2 }, [{ add: "H2SO4(aq)", volume: "1 cm3" }]],
])("%s", (_, ions, steps) => {
  const [{ gates }] = show(ions, [take, ...steps]);
  expect(gates.length).toBeGreaterThan(0);
  const named = namedGates(new Set(gates));
  expect(named.map(({ id }) => id).toSorted()).toEqual([...new Set(gates)].toSorted());
  for (const { name, source } of named) expect(Math.min(name.length, source.length)).toBeGreaterThan(10);
});

test("only what takes longer than a test is called too slow for it", () => {
  const slow = (ids: string[]) => namedGates(new Set(ids)).map((gate) => gate.slow);
  expect(slow(["gypsum-slow", "silver-thiosulfate-first", "solid-to-solid"])).toEqual([true, true, true]);
  expect(slow(["copper-oxide", "starch-iodine"])).toEqual([false, false]);
});
