/** Each redox test of the published table is decided as it was published. */
import { expect, test } from "vitest";
import { isBalanced, parseEquation } from "../../../../src/engine/formula/equation.ts";
import published from "../../../reference/qualitative-tables.json";
import { atRest, mixed, reactionsOf } from "./mixture.ts";
import { publishedRedox } from "./published-rows.ts";

const rows = new Map(published.records.map((row) => [row.id, row]));

test.each(publishedRedox.map((one) => [`${one.row} ${one.says}`, one] as const))(
  "%s",
  (_, { row, says, mol, around, gone, made, none }) => {
    const { ion, reagent, stage, observation } = rows.get(row) ?? {};
    expect(JSON.stringify([ion, reagent, stage, observation])).toContain(says);

    const before = atRest(mixed(mol), around);
    const { all, end } = reactionsOf(mol, around);
    for (const { equation } of all) expect(isBalanced(parseEquation(equation)), equation).toBe(true);
    if (none) expect(all).toEqual([]);
    else expect(all.length).toBeGreaterThan(0);
    const there = (state: typeof before, id: string) => (state.phases.get(id) ?? 0) + (state.molality.get(id) ?? 0);
    if (gone) expect(there(end, gone)).toBeLessThan(there(before, gone) / 1000);
    if (made) expect(there(end, made)).toBeGreaterThan(Math.max(2 * there(before, made), LEAST_SEEN));
  },
);

/** mol: less is not counted as made. Iodine 1e-4 mol/dm3 is plainly coloured; 1e-4 mol of a gas is 2 cm3. */
const LEAST_SEEN = 1e-4;
