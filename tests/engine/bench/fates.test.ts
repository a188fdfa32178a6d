/** What is said of a precipitate that was there: what dissolves is chemistry, what is thinned below sight is not. */
import { expect, test } from "vitest";
import { cm3, saltWith, show, take } from "./show.ts";

const silver = (drops: number, at: string) => ({ add: "AgNO3(aq)", drops, at: `${at} mol/dm3` });

// Boards' notes: cream precipitate, insoluble in dilute nitric acid.
test.each([
  [1, "0.02", 1],
  [1, "0.02", 4],
  [2, "0.02", 4],
  [1, "0.05", 4],
  [5, "0.05", 1],
])("silver bromide of %i drops of %s mol/dm3 never dissolves in part in %i cm3 of nitric acid", (drops, at, acid) => {
  const [, { readings, events }] = show(saltWith("Br-"), [take, silver(drops, at)], [cm3("HNO3(aq)", acid)]);
  expect(readings[0]).toEqual({ fate: "remains" });
  expect(readings.map(({ fate }) => fate)).not.toContain("partly dissolves");
  expect(events).toEqual([]);
});

// Boards' notes: brown solution with an off-white precipitate, whatever the strengths.
test.each(["0.05", "0.1", "0.5", "1"])("copper(II) with %s mol/dm3 iodide is off-white under brown", (at) => {
  const [{ readings, gates }] = show({ "Cu^2+": 5, "SO4^2-": 5 }, [
    take,
    { add: "KI(aq)", volume: "3 cm3", at: `${at} mol/dm3` },
  ]);
  expect(readings).toEqual([{ precipitate: { colour: "off-white", amount: "plain" }, solution: "brown" }]);
  if (at === "0.1") expect(gates).toEqual(["iodine-stays-dissolved"]);
});
