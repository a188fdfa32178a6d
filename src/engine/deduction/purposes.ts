/** What each test of a practical is for, before anything is observed. */
import type { PredictionTable, TableCell } from "../bench/prediction-table.ts";
import type { Purpose } from "./conclusion.ts";
import { plainly } from "./plainly.ts";
import type { Kind } from "./rules.ts";

/** One salt in one cell, as bit masks over readings; `open` when it may show anything, for want of a prediction. */
interface Showing {
  salt: number;
  /** All it may show. */
  shows: number;
  /** What it shows when nothing is out of the ordinary. */
  plainly: number;
  open: boolean;
}

const KINDS = ["cation", "anion"] as const;
const OTHER = { cations: "anions", anions: "cations" } as const;

/** One purpose for each line of the record, in the order of the paper, over all salts the samples it is done on may hold. */
export function purposes(table: PredictionTable): Purpose[] {
  return table.cells.map((cell, index) => {
    const shown = showings(table, cell, index);
    const groups = cell.readings.flatMap((_, reading) => {
      const salts = shown.filter((one) => one.plainly & (1 << reading)).map(({ salt }) => salt);
      if (salts.length === 0) return [];
      const ions = (kind: Kind) => [...new Set(salts.flatMap((salt) => table.salts[salt][kind]))];
      return [{ reading, salts, cations: ions("cations"), anions: ions("anions") }];
    });
    return {
      cell: cell.id,
      groups,
      unpredicted: shown.flatMap(({ salt, open }) => (open ? [salt] : [])),
      tellsApart: KINDS.filter((kind) => tellsApart(table, cell, shown, `${kind}s`)),
      gases: [...new Set(cell.comesOff.map(({ gas }) => gas))],
    };
  });
}

/** Each salt once, with all it may show whichever way its sample is given. */
function showings(table: PredictionTable, cell: TableCell, index: number): Showing[] {
  const bySalt = new Map<number, Showing>();
  const sets = new Set(table.samples.filter(({ label }) => cell.samples.includes(label)).map(({ set }) => set));
  for (const set of sets) {
    table.sets[set].salts.forEach((salt, row) => {
      const showing = bySalt.get(salt) ?? { salt, shows: 0, plainly: 0, open: false };
      const mask = table.sets[set].accepts[row][index];
      showing.plainly |= plainly(table.sets[set], row, index);
      showing.shows |= mask;
      showing.open ||= mask === 0;
      bySalt.set(salt, showing);
    });
  }
  return [...bySalt.values()].sort((a, b) => a.salt - b.salt);
}

/** See `Purpose.tellsApart` for the rule. */
function tellsApart(table: PredictionTable, cell: TableCell, shown: Showing[], kind: Kind): boolean {
  /** Everything the salts of an ion may show, everything that may be written down for it, and its partners. */
  const ions = new Map<string, { shows: number; written: number; partners: string[]; open: boolean }>();
  for (const { salt, shows, open } of shown) {
    for (const name of table.salts[salt][kind]) {
      const ion = ions.get(name) ?? { shows: 0, written: 0, partners: [], open: false };
      ion.shows |= shows;
      ion.open ||= open;
      ion.partners.push(...table.salts[salt][OTHER[kind]]);
      ions.set(name, ion);
    }
  }
  for (const ion of ions.values()) {
    cell.agrees.forEach((mask, reading) => {
      if (mask & ion.shows) ion.written |= 1 << reading;
    });
  }
  const known = [...ions.values()].filter(({ open }) => !open);
  return known.some((x, index) =>
    known
      .slice(index + 1)
      .some(
        (y) =>
          !(x.written & y.shows) &&
          !(x.shows & y.written) &&
          x.partners.some((partner) => y.partners.includes(partner)),
      ),
  );
}
