/** What a curve shows, in sentences: why the precipitate appears, and why it goes or stays. */
import * as say from "#words/curves.ts";
import type { CurveChange } from "../../../engine/bench/changed-curve.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { withForm } from "../event-words.ts";
import { drawnTo } from "./plot-lines.ts";

export interface Told {
  says: string;
  /** Balanced, mhchem. */
  equation?: string;
}

type Series = NamedCurve["series"][number];

/** Less of the ion than this is none to the eye. */
const TRACE = 0.01;
/** A solid that holds this part of the most it ever holds is at its most to the eye. */
const NEARLY_MOST = 0.99;
/** A species must hold this part of the ion in the end to be called what the ion turns into: a weak ammine that holds half of it is not. */
const FATE = 0.75;
/** Parts of a precipitate that must go to be told at all, and to be told as seen: below the second the predictions speak of no event. */
const GOES = 0.05;
const SEEN_TO_GO = 0.25;

export const volume = (cm3: number): string => `${Number(cm3.toFixed(2))} cm3`;
const percent = (part: number): string => (part > 0.995 ? say.ALL : `${Math.round(part * 100)} %`);

/** A solid with its form, a dissolved species as it is. */
export const speciesName = ({ id, kind }: Pick<Series, "id" | "kind">): string =>
  kind === "solid" ? withForm(id) : id;

/** "R, a(i) and a(ii): zinc as aqueous sodium hydroxide is added"; of no sample of a paper just what is added to what. */
export const curveTitle = ({ sample, cells, ionName }: NamedCurve, reagent: string): string =>
  sample ? say.titleOf(sample, cells, ionName, reagent) : say.title(ionName, reagent);

/** "R, a(i) and a(ii)", or the ion where no sample of a paper is meant: tells the curves of a page apart. */
export const placeOf = ({ sample, cells, ionName, reagent }: NamedCurve): string =>
  sample ? say.placeOf(sample, cells) : say.place(ionName, reagent);

/** What stands at the line where the first of two tests ends. */
export const endWords = ({ sample, cells }: NamedCurve, n: number): string =>
  sample ? say.endOf(cells[n]) : say.FIRST_DROPS;

/** "0.1 mol/dm3 ZnSO4 with 1 mol/dm3 aqueous sodium hydroxide"; without a strength where a solid is taken or the reagent has none. */
export const madeUpOf = ({ salt, molPerDm3, reagentMolPerDm3 }: CurveChange, reagent: string): string =>
  say.madeUpOf(strong(molPerDm3) + salt, strong(reagentMolPerDm3) + reagent);

const strong = (molPerDm3: number | undefined) => (molPerDm3 === undefined ? "" : `${molPerDm3} mol/dm3 `);

/** Anchor of a curve on its page. */
export const curveId = ({ sample, cells }: Pick<NamedCurve, "sample" | "cells">): string =>
  `${sample}-${(cells.at(-1) ?? "").replace(/[()]/g, "")}`;

/** The story of every solid of the curve, in the order of the lines; without any, of what stays dissolved. `drop` is the volume of a drop, cm3. */
export function tellCurve(curve: NamedCurve, reagent: string, drop: number): Told[] {
  const solids = curve.series.filter(({ kind }) => kind === "solid");
  return solids.length > 0
    ? solids.flatMap((solid) => tellSolid(solid, curve, reagent, drop))
    : [tellDissolved(curve, reagent)];
}

/** A species that holds less than a twentieth of the ion all along has no line, and there a little of the ion may still be solid. */
function tellDissolved(curve: NamedCurve, reagent: string): Told {
  const { ionName: ion, forms } = curve;
  const last = curve.x.length - 1;
  const from = mostAt(curve, 0)?.id;
  const end = mostAt(curve, last);
  const to = end && end.mol[last] >= FATE * curve.total[last] ? end.id : undefined;
  const turns = from !== to && from && to ? say.turns(reagent, from, to) : "";
  return { says: (Object.keys(forms).length === 0 ? say.noPrecipitate(ion) : say.hardlyAny(ion)) + turns };
}

/** The species other than `besides` that holds most of the ion at a point. */
const mostAt = ({ series }: NamedCurve, n: number, besides?: Series): Series | undefined =>
  series.filter((one) => one !== besides).toSorted((a, b) => b.mol[n] - a.mol[n])[0];

/** The species that becomes the solid: the one of the equation that shows the ion, or else the one that holds most of it. */
function reactantOf(solid: Series, curve: NamedCurve): string {
  const [left = ""] = (curve.forms[solid.id] ?? "").split(" -> ");
  const bare = curve.ion.replace(/(\^\d+)?[+-]$/, "");
  const terms = left.split(" + ").map((term) => term.replace(/^[\d./]+ /, ""));
  const term = terms.find((one) => one.includes(bare));
  const line = term === undefined ? mostAt(curve, 0, solid) : curve.series.find(({ id }) => id === term);
  return line ? speciesName(line) : (term?.replace(/\([a-z]+\)$/, "") ?? curve.ionName);
}

const isWhole = (drops: number): boolean => Math.abs(drops - Math.round(drops)) < 1e-6;

function tellSolid(solid: Series, curve: NamedCurve, reagent: string, drop: number): Told[] {
  const { x, total } = curve;
  const last = x.length - 1;
  const share = solid.mol.map((held, n) => (total[n] > 0 ? held / total[n] : 0));
  const peak = share.indexOf(Math.max(...share));
  const full = x.findIndex((cm3, n) => isWhole(cm3 / drop) && share[n] >= NEARLY_MOST * share[peak]);
  const drawn = drawnTo(curve);
  const lastSeen = x.findLastIndex((cm3) => isWhole(cm3 / drop) && cm3 <= drawn + 1e-9);
  // The most itself may come long after, where nothing more is seen and the picture has ended.
  const at = Math.min(full < 0 ? peak : full, peak, lastSeen);
  const what = withForm(solid.id);
  const ion = curve.ionName;
  const told: Told[] = [];
  if (share[0] < TRACE) {
    const part = percent(share[at]);
    const most = part === percent(share[peak]);
    told.push({
      says: say.appears(reagent, reactantOf(solid, curve), what, { cm3: volume(x[at]), part, ion, most }),
      equation: curve.forms[solid.id],
    });
  } else told.push({ says: say.fromStart(percent(share[0]), ion, what) });
  const end = mostAt(curve, last, solid);
  const to = end ? speciesName(end) : say.OTHER_SPECIES;
  const gone = share.findIndex((part, n) => n > peak && part < TRACE);
  const kept = share[last] / share[peak];
  if (kept > 1 - GOES) {
    if (peak < last - 1) told.push({ says: say.remains(reagent) });
  } else if (kept > 1 - SEEN_TO_GO) {
    told.push({ says: say.takesALittle(reagent, percent(1 - kept), to) });
  } else {
    const left = gone < 0 ? say.stillInIt(percent(share[last]), ion) : say.noneLeft(volume(x[gone]));
    told.push({
      says: say.goes(reagent, what, to, end?.kind === "solid", left),
      equation: curve.dissolves[solid.id],
    });
  }
  return told;
}
