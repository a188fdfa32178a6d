/** What the marks of the shipped practicals say of salts, held against the tables themselves. */
import { expect, test } from "vitest";
import { holds, testsOf } from "../../../src/components/conclude/evidence.ts";
import { reasonOfMark } from "../../../src/components/conclude/mark-reason.ts";
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import { recordOf } from "../../../src/engine/deduction/separations.ts";
import { shippedTables } from "../../build/shipped-tables.ts";

/** Records looked at besides the author's: of salts from all over the list. */
const OTHERS = 2;

const others = (table: PredictionTable): TableRecord[] =>
  Array.from({ length: OTHERS }, (_, n) =>
    recordOf(
      table,
      table.samples.map(({ set }, s) => {
        const { salts } = table.sets[set];
        return salts[Math.floor(((n + s / table.samples.length) / OTHERS) * salts.length) % salts.length];
      }),
    ),
  );

/** Of how many salts a sentence says such a thing: "the other 2 salts with Zn^2+ do not", "1 other with Zn^2+ does not". */
function count(why: string, says: string): number {
  const found = why.match(new RegExp(`(?:the other (?:(\\d+) salts|salt)|(\\d+) others?) with \\S+ ${says}`));
  if (!found) return 0;
  return Number(found[1] ?? found[2] ?? 1);
}

test("no mark says of a salt that it does not show what its cell accepts, nor that it shows what it only may", () => {
  const seen = { not: 0, border: 0, each: 0, may: 0 };
  for (const { name, table, record: own } of shippedTables()) {
    for (const record of [own, ...others(table)]) {
      for (const { label, set: at } of table.samples) {
        const set = table.sets[at];
        for (const c of testsOf(table, label)) {
          const { id, agrees } = table.cells[c];
          const sight = record[label]?.[id];
          if (sight === undefined || sight < 0) continue;
          const near = new Map(set.atBorder.filter(([, cell]) => cell === c).map(([row, , mask]) => [row, mask]));
          const rows = [...set.salts.keys()].map((row) => {
            const accepted = set.accepts[row][c];
            const salt = table.salts[set.salts[row]];
            if (accepted === 0) return { salt, shows: "unknown" };
            if (!(accepted & agrees[sight])) return { salt, shows: "not" };
            return { salt, shows: accepted & ~(near.get(row) ?? 0) & agrees[sight] ? "plainly" : "border" };
          });
          for (const ion of [...table.paper.cations, ...table.paper.anions]) {
            const { why } = reasonOfMark({ table, names: {}, record }, label, ion, id);
            const where = `${name}, ${id} for ${label}, ${ion}: ${why}`;
            const of = (shows: string) => rows.filter((row) => holds(row.salt, ion) && row.shows === shows).length;
            const not = count(why, "do(?:es)? not");
            if (not > 0 || / not[,.]/.test(why)) expect(not, where).toBe(of("not"));
            const border = count(why, "may show it at the border");
            if (border > 0 || why.includes("border")) expect(border, where).toBe(of("border"));
            if (why.includes("Every salt the paper allows shows")) {
              expect(
                rows.every((row) => row.shows === "plainly"),
                where,
              ).toBe(true);
              seen.each++;
            }
            if (why.includes("may show that")) seen.may++;
            if (not > 0) seen.not++;
            if (border > 0) seen.border++;
          }
        }
      }
    }
  }
  for (const times of Object.values(seen)) expect(times).toBeGreaterThan(20);
});
