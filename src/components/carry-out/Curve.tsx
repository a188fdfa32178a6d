import type { NamedCurve } from "../../build/curves.ts";
import { spokenEquation } from "../../build/equations/spoken.ts";
import { equationToHtml } from "../../engine/formula/typeset.ts";
import { plain } from "../sentence.ts";
import { Words } from "../Words.tsx";
import { curveTitle, followedName, speciesName, tellCurve, volume } from "./curve-words.ts";

/** The picture in its own units; it is as wide as the page lets it be. */
const WIDTH = 720;
const HEIGHT = 430;
const LEFT = 96;
const RIGHT = WIDTH - 18;
const TOP = 34;
const FLOOR = HEIGHT - 76;

/** Change of a line, as a part of the ion, that is too small to look at. */
const FLAT = 0.02;
/** Room to the right of the last change, as a part of what comes before. */
const ROOM = 1.25;

/** Length of the axis to draw: what follows the last change is flat, and is told in words. */
function drawnTo({ x, series, total, ends }: NamedCurve): number {
  const last = x.length - 1;
  const most = Math.max(...total);
  const changes = x.findLastIndex((_, n) => series.some(({ mol }) => Math.abs(mol[n] - mol[last]) > FLAT * most));
  const needed = ROOM * Math.max(x[changes + 1], ends.at(-2)?.x ?? 0);
  return Math.min(x[last], Math.ceil(needed * 10) / 10);
}

/** Round figures from 0 up to `most`, three to six of them. */
function ticksTo(most: number): number[] {
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [0.1, 0.2, 0.5, 1, 2].map((one) => one * power).find((one) => most / one <= 6) ?? power;
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, n) => Number((n * step).toPrecision(3)));
}

/** Style of each line: solids drawn heavy, dissolved species in dashes that differ. */
function stylesOf(series: NamedCurve["series"]): string[] {
  const count = { solid: 0, dissolved: 0 };
  return series.map(({ kind }) => `line ${kind} n${count[kind]++}`);
}

/** A curve in whole units from one point to the next. What is drawn on one spot is drawn once; what lies along the floor is not drawn. */
function pathOf(points: readonly [x: number, y: number][]): string {
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

/** A whole equation on a line of its own. */
function Line({ of }: { of: string }) {
  const html = equationToHtml(of).replace("→", '<span class="arrow">→</span>');
  return (
    <span
      class="equation formula-line"
      role="math"
      aria-label={spokenEquation(of)}
      dangerouslySetInnerHTML={{ __html: html }}
    />
  );
}

/** Where an ion is while a reagent is added: the picture, its key, and what it shows in words. */
export function Curve({ of: curve, id, reagent }: { of: NamedCurve; id: string; reagent: string }) {
  const xMost = drawnTo(curve);
  const yMost = Math.max(...curve.total) * 1000;
  const px = (cm3: number) => LEFT + ((RIGHT - LEFT) * cm3) / xMost;
  const py = (mmol: number) => FLOOR - ((FLOOR - TOP) * mmol) / yMost;
  const styles = stylesOf(curve.series);
  const told = tellCurve(curve, reagent);
  const drawn = curve.x.findIndex((cm3) => cm3 >= xMost - 1e-9);
  const path = (mol: readonly number[]) =>
    pathOf(mol.slice(0, drawn + 1).map((held, n) => [px(curve.x[n]), py(held * 1000)]));
  const all = curve.ends[curve.ends.length - 1].x;
  return (
    <figure class="curve" id={id}>
      <h2>
        <Words of={curveTitle(curve, reagent)} />
      </h2>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}-t ${id}-d`}>
        <title id={`${id}-t`}>{plain(curveTitle(curve, reagent))}</title>
        <desc id={`${id}-d`}>{plain(told.map(({ says }) => says).join(" "))}</desc>
        {ticksTo(yMost).map((mmol) => (
          <g key={`y${mmol}`}>
            <path class="grid" d={`M${LEFT} ${Math.round(py(mmol))}H${RIGHT}`} />
            <text class="left" x={LEFT - 10} y={Math.round(py(mmol)) + 8}>
              {mmol}
            </text>
          </g>
        ))}
        {ticksTo(xMost).map((cm3) => (
          <text class="mid" key={`x${cm3}`} x={Math.round(px(cm3))} y={FLOOR + 28}>
            {cm3}
          </text>
        ))}
        {curve.ends.slice(0, -1).map(({ test, x }, n) => (
          <g key={`t${test}`}>
            <path class="end" d={`M${Math.round(px(x))} ${TOP}V${FLOOR}`} />
            <text class="mid" x={Math.round(px(x))} y={TOP - 8}>
              end of {curve.cells[n]}
            </text>
          </g>
        ))}
        <path class="axis" d={`M${LEFT} ${TOP}V${FLOOR}H${RIGHT}`} />
        {curve.series.map(({ id: species, mol }, n) => (
          <path key={species} class={styles[n]} d={path(mol)} />
        ))}
        <text class="mid" x={(LEFT + RIGHT) / 2} y={HEIGHT - 14}>
          cm³ of {reagent} added
        </text>
        <text class="mid" transform={`translate(24 ${(TOP + FLOOR) / 2}) rotate(-90)`}>
          mmol of {plain(followedName(curve.ion))}
        </text>
      </svg>
      <figcaption>
        <ul class="key">
          {curve.series.map((one, n) => (
            <li key={one.id}>
              <svg viewBox="0 0 56 14" aria-hidden="true">
                <path class={styles[n]} d="M0 7H56" />
              </svg>{" "}
              <Words of={`${speciesName(one)}, ${one.kind}`} />
            </li>
          ))}
        </ul>
        {told.map(({ says, equation }) => (
          <p key={says}>
            <Words of={says} />
            {equation && <Line of={equation} />}
          </p>
        ))}
        {xMost < all && (
          <p class="soft">
            <Words
              of={`From ${volume(xMost)} to ${volume(all)} hardly anything changes; it is left out of the picture.`}
            />
          </p>
        )}
      </figcaption>
    </figure>
  );
}
