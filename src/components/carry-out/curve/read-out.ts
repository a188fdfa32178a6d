/** What a curve says at one volume, and at a few volumes side by side: parts of the ion in every species. */
import { drops as inDrops, OTHER } from "#words/curves.ts";
import type { Curve, CurveSeries } from "../../../engine/bench/curve.ts";
import { drawnTo } from "./plot-lines.ts";

/** Less of the ion than this is left out of a sentence. */
const TRACE = 0.01;

/** Rows of a table at most. */
const ROWS = 13;

export interface Row {
  /** Reagent added, cm3, and in drops. */
  cm3: number;
  drops: number;
  /** Part of the ion in each species that has a line, in their order, and in all others together; 0 to 1. */
  parts: number[];
  others: number;
}

/** Whole drops the axis holds, for drops of `drop` cm3. */
export const dropsDrawn = (curve: Curve, drop: number): number => Math.floor(drawnTo(curve) / drop + 1e-6);

/** Where the ion is after so many drops. */
export function rowAt({ x, series, total, others }: Curve, drops: number, drop: number): Row {
  const off = x.map((cm3) => Math.abs(cm3 - drops * drop));
  const n = off.indexOf(Math.min(...off));
  const part = (mol: number) => (total[n] > 0 ? mol / total[n] : 0);
  return { cm3: x[n], drops, parts: series.map(({ mol }) => part(mol[n])), others: part(others[n]) };
}

/** Rows from the first drop to the end of the axis, a round number of drops apart. */
export function rowsOf(curve: Curve, drop: number): Row[] {
  const most = dropsDrawn(curve, drop);
  const apart = [1, 2, 5, 10, 20, 50].find((step) => most / step <= ROWS - 1) ?? most;
  return Array.from({ length: Math.floor(most / apart) + 1 }, (_, n) => rowAt(curve, n * apart, drop));
}

/** Form of a solid: ", amorphous" in "Zn(OH)2(s, amorphous)". */
const FORM = /, ?[^()]*(?=\)$)/;

/** A species with its state; a solid's form is named only where another form of it has a line too. */
export function shortName({ id, kind }: CurveSeries, series: readonly CurveSeries[]): string {
  if (kind === "dissolved") return id;
  const bare = id.replace(FORM, "");
  const alike = series.filter((one) => one.kind === "solid" && one.id.replace(FORM, "") === bare);
  return alike.length > 1 ? `${bare.replace(/\(s\)$/, "")} (${FORM.exec(id)?.[0].replace(/^, ?/, "") ?? "s"})` : bare;
}

export const percent = (part: number): string => `${Math.round(part * 100)} %`;

/** "0.5 cm3 (10 drops): 62 % Zn(OH)2(s), 30 % [Zn(OH)4]^2-, 8 % other." Largest first; formulas in mhchem notation. */
export function readOut(curve: Curve, drops: number, drop: number): string {
  const { cm3, parts, others } = rowAt(curve, drops, drop);
  const held = curve.series
    .map((one, n) => ({ name: shortName(one, curve.series), part: parts[n] }))
    .sort((a, b) => b.part - a.part);
  const told = [...held, { name: OTHER, part: others }].filter(({ part }) => part >= TRACE);
  const where = inDrops(`${Number(cm3.toFixed(2))} cm3`, drops);
  return `${where}: ${told.map(({ name, part }) => `${percent(part)} ${name}`).join(", ")}.`;
}
