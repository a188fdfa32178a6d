/** The meaning of a conclusion spelled out: every way of giving salts to samples is written down and looked at. For small tables. */
import type { PredictionTable, TableCell, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import type { Place } from "../../../src/engine/deduction/conclusion.ts";
import { easeOf } from "../../../src/engine/deduction/misreading.ts";

/** One salt (index) for each sample, in the order of the samples. */
type Assignment = number[];

function everyAssignment(choices: number[][]): Assignment[] {
  return choices.reduce<Assignment[]>(
    (ways, salts) => ways.flatMap((way) => salts.map((salt) => [...way, salt])),
    [[]],
  );
}

/** Whether a salt that may show these readings (as bits) could have given what was recorded: -1 is something that is none of them. */
export function couldGive(mayShow: number, { agrees }: TableCell, recorded: number): boolean {
  return mayShow === 0 || (recorded !== -1 && (mayShow & agrees[recorded]) !== 0);
}

function agreesWithRecord(table: PredictionTable, record: TableRecord, way: Assignment): boolean {
  return table.samples.every(({ label, set }, s) => {
    const row = table.sets[set].salts.indexOf(way[s]);
    return table.cells.every((cell, c) => {
      const reading = record[label]?.[cell.id];
      if (reading === undefined || !cell.samples.includes(label)) return true;
      return couldGive(table.sets[set].accepts[row][c], cell, reading);
    });
  });
}

function obeysPaper({ salts, samples, paper }: PredictionTable, way: Assignment): boolean {
  const held = (kind: "cations" | "anions", labels: string[]) =>
    samples.flatMap(({ label }, s) => (labels.includes(label) ? [salts[way[s]][kind]] : []));
  const everyone = samples.map(({ label }) => label);
  const { cations, anions } = paper.inAll ?? {};
  const different = (kind: "cations" | "anions") => new Set(held(kind, everyone).flat()).size;
  const text = (ions: string[]) => ions.toSorted().join();
  return (
    (cations === undefined || different("cations") === cations) &&
    (anions === undefined || different("anions") === anions) &&
    paper.share.every(({ ion, samples: group }) => {
      const [first, ...others] = held(`${ion}s`, group);
      return first.some((one) => others.every((ions) => ions.includes(one)));
    }) &&
    paper.differ.every(({ ion, samples: group }) => {
      const all = held(`${ion}s`, group).flat();
      return new Set(all).size === all.length;
    }) &&
    paper.same.every((group) =>
      (["cations", "anions"] as const).every((kind) => new Set(held(kind, group).map(text)).size === 1),
    ) &&
    paper.contains.every(({ ion, samples: group = everyone, count }) => {
      const holders = held(ion.endsWith("+") ? "cations" : "anions", group).filter((ions) => ions.includes(ion)).length;
      return count === undefined ? holders > 0 : holders === count;
    })
  );
}

/** Every assignment that agrees with the record and obeys the paper. */
export function allowed(table: PredictionTable, record: TableRecord): Assignment[] {
  return everyAssignment(table.samples.map(({ set }) => table.sets[set].salts)).filter(
    (way) => agreesWithRecord(table, record, way) && obeysPaper(table, way),
  );
}

/** Salts left for each sample, ascending. */
export function saltsLeft(table: PredictionTable, record: TableRecord): Record<string, number[]> {
  const ways = allowed(table, record);
  return Object.fromEntries(
    table.samples.map(({ label }, s) => [label, [...new Set(ways.map((way) => way[s]))].sort((a, b) => a - b)]),
  );
}

/** Every way of choosing so many. */
export function choose<T>(from: T[], size: number): T[][] {
  if (size === 0) return [[]];
  return from.flatMap((first, at) => choose(from.slice(at + 1), size - 1).map((rest) => [first, ...rest]));
}

/** The places a record fills in, in the order of the samples, then of the paper. */
export const placesOf = (table: PredictionTable, record: TableRecord): Place[] =>
  table.samples.flatMap(({ label }) =>
    table.cells.flatMap((cell) =>
      record[label]?.[cell.id] !== undefined && cell.samples.includes(label) ? [{ sample: label, cell: cell.id }] : [],
    ),
  );

/** All smallest sets of recorded places whose blanking lets something fit; sets in the order of the paper. */
export function smallestRepeats(table: PredictionTable, record: TableRecord): Place[][] {
  const places = placesOf(table, record);
  for (let size = 0; size <= places.length; size++) {
    const found = choose(places, size).filter((set) => allowed(table, without(record, set)).length > 0);
    if (found.length > 0) return found;
  }
  return [];
}

/** How easily the observations at such places are misread: by the assignment whose least likely slip is the easiest. */
export function easeOfSet(table: PredictionTable, record: TableRecord, places: readonly Place[]): number {
  const slip = (way: Assignment, { sample, cell }: Place) => {
    const s = table.samples.findIndex(({ label }) => label === sample);
    const c = table.cells.findIndex(({ id }) => id === cell);
    const { set } = table.samples[s];
    const row = table.sets[set].salts.indexOf(way[s]);
    return easeOf(table, set, row, c, record[sample][cell], table.sets[set].main[row][c]);
  };
  const ways = allowed(table, without(record, [...places]));
  return Math.min(...ways.map((way) => Math.max(...places.map((place) => slip(way, place)))));
}

export function without(record: TableRecord, places: Place[]): TableRecord {
  const fewer = structuredClone(record);
  for (const { sample, cell } of places) delete fewer[sample][cell];
  return fewer;
}
