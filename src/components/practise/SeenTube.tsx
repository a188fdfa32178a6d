/** A tube with what is in it, drawn to scale. Its words stand beside it, so the drawing itself is left out for those who listen. */
import { COLOURS } from "../../engine/constants/colours.ts";
import { depthOfVolume } from "../../engine/planning/geometry.ts";
import type { Colour, Observation } from "../../engine/practical.ts";
import type { TubeState } from "./tube-state.ts";

/** The usual test-tube: glassware.ts. */
const TUBE = { outsideMm: 16, wallMm: 1, lengthMm: 125 };
/** Pixels to a millimetre. */
const SCALE = 1.8;
const LEFT = 8;
const BORE = (TUBE.outsideMm - 2 * TUBE.wallMm) * SCALE;
const TOP = 4;
const BOTTOM = TOP + TUBE.lengthMm * SCALE;
const WIDTH = LEFT * 2 + BORE;
/** Room above the glass for a flame or for fumes. */
const tenth = (pixels: number) => Math.round(pixels * 10) / 10;

const paint = (colour: Colour | undefined): string => (colour ? COLOURS[colour].paint : "#f4f8fa");

/** What fills the tube from its bottom up to a height. */
function filled(from: number, to: number): string {
  const r = BORE / 2;
  const [low, high] = [tenth(BOTTOM - from * SCALE), tenth(BOTTOM - to * SCALE)];
  const right = tenth(LEFT + BORE);
  if (from > 0) return `M${LEFT} ${high}V${low}H${right}V${high}z`;
  const shoulder = tenth(BOTTOM - r);
  if (high >= shoulder) {
    const half = tenth(Math.sqrt(Math.max(0, r * r - (high - shoulder) ** 2)));
    return `M${tenth(LEFT + r - half)} ${high}A${r} ${r} 0 0 0 ${tenth(LEFT + r + half)} ${high}z`;
  }
  return `M${LEFT} ${high}V${shoulder}a${r} ${r} 0 0 0 ${tenth(BORE)} 0V${high}z`;
}

/** How much of the liquid a solid hides. */
const OPACITY = { plain: 1, rest: 1, slight: 0.55, trace: 0.3 };

/** Grains: what is solid is dotted, so that white shows on white. */
const GRAINS: readonly (readonly [across: number, up: number])[] = [
  [0.3, 0.25],
  [0.6, 0.18],
  [0.48, 0.45],
  [0.2, 0.55],
  [0.75, 0.4],
  [0.4, 0.75],
  [0.68, 0.7],
  [0.85, 0.62],
  [0.14, 0.82],
  [0.54, 0.92],
];

export function SeenTube({ of, shown }: { of: TubeState; shown?: Observation }) {
  if (shown?.flame !== undefined) return <Flame colour={shown.flame} />;
  const level = of.cm3 > 0 ? Math.min(depthOfVolume(of.cm3, TUBE), TUBE.lengthMm - 8) : 0;
  const cloud = shown?.precipitate && !shown.fate && of.solid ? level : 0;
  const heap = of.solid?.dry ? 10 : of.solid ? Math.max(5, level * (of.solid.amount === "plain" ? 0.4 : 0.18)) : 0;
  const height = Math.max(cloud, heap);
  const bubbles = shown?.effervescence ? [0.15, 0.35, 0.55, 0.75, 0.9] : [];
  return (
    <svg width={WIDTH} height={BOTTOM + 4} viewBox={`0 0 ${WIDTH} ${BOTTOM + 4}`} aria-hidden="true" class="seen">
      {shown?.fumes && (
        <path class="fumes" d={filled(Math.max(level, heap), TUBE.lengthMm - 2)} fill={paint(shown.fumes)} />
      )}
      {level > 0 && <path d={filled(0, level)} fill={paint(of.liquid)} />}
      {level > 0 && <path class="surface" d={`M${LEFT} ${tenth(BOTTOM - level * SCALE)}h${BORE}`} />}
      {of.solid && <path d={filled(0, height)} fill={paint(of.solid.colour)} opacity={OPACITY[of.solid.amount]} />}
      {of.solid &&
        GRAINS.slice(0, of.solid.amount === "plain" ? undefined : 5).map(([across, up]) => (
          <circle
            key={across}
            class="grain"
            cx={tenth(LEFT + BORE * (0.15 + across * 0.7))}
            cy={tenth(BOTTOM - 2 - height * SCALE * up * 0.9)}
            r="1.2"
          />
        ))}
      {bubbles.map((up, index) => (
        <circle
          key={up}
          class="bubble"
          cx={tenth(LEFT + BORE * (index % 2 ? 0.65 : 0.35))}
          cy={tenth(BOTTOM - level * SCALE * up)}
          r="2"
        />
      ))}
      {shown?.sublimate && (
        <path d={`M${LEFT} ${TOP + 30}h${BORE}v14h${-BORE}z`} fill={paint(shown.sublimate)} class="coat" />
      )}
      {shown?.droplets &&
        [0.25, 0.55, 0.8].map((x) => (
          <circle key={x} class="bubble" cx={tenth(LEFT + BORE * x)} cy={TOP + 22} r="1.6" />
        ))}
      <path
        class="glass"
        d={`M${LEFT - 4} ${TOP}H${LEFT}V${tenth(BOTTOM - BORE / 2)}a${BORE / 2} ${BORE / 2} 0 0 0 ${BORE} 0V${TOP}h4`}
      />
    </svg>
  );
}

/** The roaring flame, coloured at its edge, and the wire in it. */
function Flame({ colour }: { colour: Colour | false }) {
  return (
    <svg width="48" height="120" viewBox="0 0 48 120" aria-hidden="true" class="seen">
      <path
        class="flame"
        d="M24 6C34 34 42 56 38 76c-2 12-8 16-14 16s-12-4-14-16C6 56 14 34 24 6z"
        fill={colour ? paint(colour) : "#b9d4ee"}
      />
      <path d="M24 52c5 12 8 22 6 30-1 6-3 9-6 9s-5-3-6-9c-2-8 1-18 6-30z" fill="#5b93cf" />
      <path class="glass" d="M16 118V92h16v26M47 60H34" />
    </svg>
  );
}
