/** Where the lines of a curve run on the paper, in the picture's own units; it is as wide as the page lets it be. */
import type { Curve } from "../../../engine/bench/curve.ts";

export const WIDTH = 720;
export const HEIGHT = 430;
export const LEFT = 96;
export const RIGHT = WIDTH - 18;
export const TOP = 34;
export const FLOOR = HEIGHT - 76;

/** Change of a line, as a part of the ion, that is too small to look at. */
const FLAT = 0.02;
/** Room to the right of the last change, as a part of what comes before. */
const ROOM = 1.25;

/** Length of the axis to draw, cm3: what follows the last change is flat, and is told in words. */
export function drawnTo({ x, series, total, ends }: Curve): number {
  const last = x.length - 1;
  const most = Math.max(...total);
  const changes = x.findLastIndex((_, n) => series.some(({ mol }) => Math.abs(mol[n] - mol[last]) > FLAT * most));
  if (changes < 0) return x[last];
  const needed = ROOM * Math.max(x[changes + 1], ends.at(-2)?.x ?? 0);
  return Math.min(x[last], Math.ceil(needed * 10) / 10);
}

/** Round figures from 0 up to `most`, three to six of them. */
export function ticksTo(most: number): number[] {
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [0.1, 0.2, 0.5, 1, 2].map((one) => one * power).find((one) => most / one <= 6) ?? power;
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, n) => Number((n * step).toPrecision(3)));
}

export interface Unit {
  name: string;
  mol: number;
}

/** The unit in which an axis up to `mol` has short figures: 0.02 mmol would be marked 0.005, 0.01, 0.015. Chosen once for the paper's own curve, so that a changed one can be held against it. */
export const unitFor = (mol: number): Unit =>
  mol < 0.95e-4 ? { name: "µmol", mol: 1e-6 } : { name: "mmol", mol: 1e-3 };

/** Style of each line: solids drawn heavy, dissolved species in dashes that differ. */
export function stylesOf(series: Curve["series"]): string[] {
  const count = { solid: 0, dissolved: 0 };
  return series.map(({ kind }) => `line ${kind} n${count[kind]++}`);
}

/** A curve in whole units from one point to the next. What is drawn on one spot is drawn once; what lies along the floor is not drawn. */
export function pathOf(points: readonly [x: number, y: number][]): string {
  const spots = points.map(([x, y]): [number, number] => [Math.round(x), Math.round(y)]);
  const onFloor = (n: number) => (spots[n]?.[1] ?? FLOOR) >= FLOOR;
  const lines: string[] = [];
  let from: [number, number] | undefined;
  spots.forEach(([x, y], n) => {
    if (onFloor(n - 1) && onFloor(n) && onFloor(n + 1)) from = undefined;
    else {
      if (!from) lines.push(`M${x} ${y}l`);
      else if (x !== from[0] || y !== from[1]) lines.push(`${x - from[0]} ${y - from[1]}`);
      from = [x, y];
    }
  });
  return lines
    .join(" ")
    .replace(/l (?=M|$)/g, "")
    .replace(/l /g, "l");
}
