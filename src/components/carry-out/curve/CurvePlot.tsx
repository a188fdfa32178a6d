import { added, amountOf } from "#words/curves.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { figures } from "../../figures.ts";
import { plain } from "../../sentence.ts";
import { curveTitle, endWords, tellCurve } from "./curve-words.ts";
import { drawnTo, FLOOR, HEIGHT, LEFT, pathOf, RIGHT, stylesOf, TOP, ticksTo, type Unit, WIDTH } from "./plot-lines.ts";

interface Props {
  of: NamedCurve;
  id: string;
  /** Name of the reagent. */
  reagent: string;
  /** Volume of a drop, cm3. */
  drop: number;
  /** Of the axis of amounts. */
  unit: Unit;
  /** Volume a reader looks at, cm3. */
  at: number;
  /** The reader points at a volume, cm3; it may lie off the axis. */
  onPoint(cm3: number): void;
}

/** Where an ion is while a reagent is added. */
export function CurvePlot({ of: curve, id, reagent, drop, unit, at, onPoint }: Props) {
  const xMost = drawnTo(curve);
  const most = Math.max(...curve.total);
  const yMost = most / unit.mol;
  const px = (cm3: number) => LEFT + ((RIGHT - LEFT) * cm3) / xMost;
  const py = (amount: number) => FLOOR - ((FLOOR - TOP) * amount) / yMost;
  const styles = stylesOf(curve.series);
  const drawn = curve.x.findIndex((cm3) => cm3 >= xMost - 1e-9);
  const path = (mol: readonly number[]) =>
    pathOf(mol.slice(0, drawn + 1).map((held, n) => [px(curve.x[n]), py(held / unit.mol)]));
  const point = (event: PointerEvent) => {
    const { left, width } = (event.currentTarget as SVGElement).getBoundingClientRect();
    onPoint(((((event.clientX - left) / width) * WIDTH - LEFT) / (RIGHT - LEFT)) * xMost);
  };
  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-labelledby={`${id}-t ${id}-d`}
      onPointerDown={point}
      onPointerMove={point}
    >
      <title id={`${id}-t`}>{plain(curveTitle(curve, reagent))}</title>
      <desc id={`${id}-d`}>
        {plain(
          tellCurve(curve, reagent, drop)
            .map(({ says }) => says)
            .join(" "),
        )}
      </desc>
      {ticksTo(yMost).map((amount) => (
        <g key={`y${amount}`}>
          <path class="grid" d={`M${LEFT} ${Math.round(py(amount))}H${RIGHT}`} />
          <text class="left" x={LEFT - 10} y={Math.round(py(amount)) + 8}>
            {figures(amount)}
          </text>
        </g>
      ))}
      {ticksTo(xMost).map((cm3) => (
        <text class="mid" key={`x${cm3}`} x={Math.round(px(cm3))} y={FLOOR + 28}>
          {figures(cm3)}
        </text>
      ))}
      {curve.ends.slice(0, -1).map(({ test, x }, n) => (
        <g key={`t${test}`}>
          <path class="end" d={`M${Math.round(px(x))} ${TOP}V${FLOOR}`} />
          <text class="mid" x={Math.round(px(x))} y={TOP - 8}>
            {endWords(curve, n)}
          </text>
        </g>
      ))}
      <path class="axis" d={`M${LEFT} ${TOP}V${FLOOR}H${RIGHT}`} />
      {curve.series.map(({ id: species, mol }, n) => (
        <path key={species} class={styles[n]} d={path(mol)} />
      ))}
      {at > 0 && <path class="looking" d={`M${Math.round(px(at))} ${TOP}V${FLOOR}`} />}
      <text class="mid" x={(LEFT + RIGHT) / 2} y={HEIGHT - 14}>
        {added(reagent)}
      </text>
      <text class="mid" transform={`translate(24 ${(TOP + FLOOR) / 2}) rotate(-90)`}>
        {amountOf(unit.name, plain(curve.ionName))}
      </text>
    </svg>
  );
}
