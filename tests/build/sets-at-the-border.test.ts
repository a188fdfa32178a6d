/** Sets of unknowns of the shipped practicals that their likeliest sights decide, and a sight at the border would not. */
import { expect, test } from "vitest";
import { judge } from "../../src/engine/deduction/choose-unknowns.ts";
import { undecided } from "../../src/engine/deduction/deduce.ts";
import { recordOf } from "../../src/engine/deduction/separations.ts";
import { shippedTables } from "./shipped-tables.ts";

test.each([
  { name: "etching-room", set: { M: "FeCl2 + AlCl3", N: "FeCl3" }, at: { sample: "M", cell: "a(iii)" } },
  { name: "etching-room", set: { M: "FeCl3 + ZnCl2", N: "AlCl3" }, at: { sample: "M", cell: "a(iii)" } },
])("$name: $set is not easy, and the place is named", ({ name, set, at }) => {
  const [{ table, record }] = shippedTables([name]);
  const own = undecided(table, record);
  const salts = table.samples.map(({ label }) => {
    const wanted = Object.entries(set).find(([letter]) => letter === label)?.[1];
    return wanted ? table.salts.findIndex(({ formula }) => formula === wanted) : own[label][0];
  });
  expect(salts).not.toContain(-1);
  const judged = judge(table, salts);
  expect(judged?.standing).not.toBe("easy");
  expect(judged?.borders).toContainEqual(at);
  // Put into the record, one of the sights the salt may show there leaves more than the set.
  const s = table.samples.findIndex(({ label }) => label === at.sample);
  const c = table.cells.findIndex(({ id }) => id === at.cell);
  const { salts: all, accepts } = table.sets[table.samples[s].set];
  const seen = recordOf(table, salts);
  const leaves = [...table.cells[c].agrees.keys()]
    .filter((reading) => accepts[all.indexOf(salts[s])][c] & (1 << reading))
    .map((reading) => undecided(table, { ...seen, [at.sample]: { ...seen[at.sample], [at.cell]: reading } }));
  expect(leaves.some((left) => left[at.sample].length > 1)).toBe(true);
});
