import * as say from "#words/bench-plan.ts";
import { boreMm, brimCapacity, depthOfVolume, depthRange } from "../../engine/planning/geometry.ts";
import { figures } from "../figures.ts";
import type { DrawnSize, RackTube } from "./rack.ts";

/** Pixels to a millimetre of glass, the same for every tube on the rack. */
const SCALE = 1.6;
const LINE = 14;
const LIP = 5;
/** Width of a letter on a label. */
const LETTER = 7;

/** A tenth of a pixel is finer than any screen, and long figures weigh on every visit. */
const tenth = (pixels: number) => Math.round(pixels * 10) / 10;

/** Heights of the words beside the marks: each at its mark, or pushed up so that no two overlap. From the lowest mark up. */
function spread(heights: readonly number[]): number[] {
  const places: number[] = [];
  for (const at of heights) places.push(Math.min(at, (places.at(-1) ?? Number.POSITIVE_INFINITY) - LINE));
  return places;
}

/** One tube, to scale: round bottom, label, a line for each fill mark and a dashed one for the limit when it is heated. */
export function Tube({ tube, size, limitCm3 }: { tube: RackTube; size: DrawnSize; limitCm3?: number }) {
  const r = tenth((boreMm(size) / 2) * SCALE);
  const label = tube.labels[0];
  const wide = Math.max(2 * r - 4, label.length * LETTER);
  const left = tenth(Math.max(LIP, wide / 2 - r + 1));
  const right = tenth(left + 2 * r);
  const top = 2;
  const bottom = top + size.lengthMm * SCALE;
  const brim = brimCapacity(size);
  const lines = tube.marks
    .filter(({ cm3 }) => cm3 <= brim)
    .map(({ cm3 }) => ({ cm3, mm: depthOfVolume(cm3, size), limit: false }));
  if (limitCm3 !== undefined) lines.push({ cm3: limitCm3, mm: depthOfVolume(limitCm3, size), limit: true });
  lines.sort((a, b) => a.mm - b.mm);
  const at = lines.map((line) => tenth(bottom - line.mm * SCALE));
  const words = spread(at.map((y) => y + 4)).map(Math.round);
  /** Words that do not stand beside their mark are led to it. */
  const displaced = (index: number) => Math.abs(words[index] - 4 - at[index]) > 1;
  const width = Math.round(right + 116);
  const labelTop = top + 12;
  return (
    <svg width={width} height={Math.round(bottom + 4)} aria-hidden="true">
      <path
        class="glass"
        d={`M${left - 4} ${top}H${left}V${tenth(bottom - r)}a${r} ${r} 0 0 0 ${tenth(2 * r)} 0V${top}h4`}
      />
      {lines.map((line, index) => (
        <g key={`${line.cm3} ${line.limit}`}>
          <path class={line.limit ? "limit" : "fillmark"} d={`M${left} ${at[index]}H${right}`} />
          {displaced(index) && (
            <path class="leader" d={`M${right} ${at[index]}l10 ${tenth(words[index] - 4 - at[index])}`} />
          )}
          <text class={line.limit ? "over" : undefined} x={Math.round(right + 13)} y={words[index]}>
            {line.limit ? say.NO_HIGHER : `${figure(line.cm3)} cm³`} · {Math.round(line.mm)} mm
          </text>
        </g>
      ))}
      <rect class="label" x={tenth(left + r - wide / 2)} y={labelTop} width={tenth(wide)} height={18} />
      <text class="written" x={tenth(left + r)} y={labelTop + 13}>
        {label}
      </text>
    </svg>
  );
}

/** A volume with no more figures than a dropper can give. */
export const figure = (cm3: number) => figures(Math.round(cm3 * 100) / 100);

/** A volume that must not be passed, to a tenth and never above itself. */
export const upTo = (cm3: number) => figures(Math.floor(cm3 * 10 + 1e-6) / 10);

/** "9 mm (8 to 10)": the depth in such a tube, and from its thinnest to its thickest wall where that is another whole millimetre. */
export function depthWords(cm3: number, size: DrawnSize): string {
  const at = Math.round(depthOfVolume(cm3, size));
  const { leastMm, greatestMm } = depthRange(cm3, size);
  const [least, greatest] = [Math.round(leastMm), Math.round(greatestMm)];
  return least === greatest ? `${at}\u00a0mm` : `${at}\u00a0mm (${say.between(least, greatest)})`;
}
