/** What a curve shows, in sentences: why the precipitate appears, and why it goes or stays. */
import type { NamedCurve } from "../../build/curves.ts";
import { ionName } from "../../engine/formula/ion-name.ts";
import { capital, list } from "../sentence.ts";
import { withForm } from "./event-words.ts";

export interface Told {
  says: string;
  /** Balanced, mhchem. */
  equation?: string;
}

type Series = NamedCurve["series"][number];

/** Less of the ion than this is none to the eye. */
const TRACE = 0.01;
/** Parts of a precipitate that must go to be told at all, and to be told as seen: below the second the predictions speak of no event. */
const GOES = 0.05;
const SEEN_TO_GO = 0.25;

export const volume = (cm3: number): string => `${Number(cm3.toFixed(2))} cm3`;
const percent = (part: number): string => (part > 0.995 ? "all" : `${Math.round(part * 100)} %`);

/** A solid with its form, a dissolved species as it is. */
export const speciesName = ({ id, kind }: Pick<Series, "id" | "kind">): string =>
  kind === "solid" ? withForm(id) : id;

/** "zinc"; the ion as a formula when the table has no name for it. */
export function followedName(ion: string): string {
  try {
    return ionName(ion);
  } catch {
    return ion;
  }
}

/** "R, a(i) and a(ii): zinc as aqueous sodium hydroxide is added". */
export const curveTitle = (curve: NamedCurve, reagent: string): string =>
  `${curve.sample}, ${list(curve.cells)}: ${followedName(curve.ion)} as ${reagent} is added`;

/** Anchor of a curve on its page. */
export const curveId = ({ sample, cells }: Pick<NamedCurve, "sample" | "cells">): string =>
  `${sample}-${(cells.at(-1) ?? "").replace(/[()]/g, "")}`;

/** The story of every solid of the curve, in the order of the lines. */
export function tellCurve(curve: NamedCurve, reagent: string): Told[] {
  return curve.series.filter(({ kind }) => kind === "solid").flatMap((solid) => tellSolid(solid, curve, reagent));
}

function tellSolid(solid: Series, curve: NamedCurve, reagent: string): Told[] {
  const { x, series, total } = curve;
  const last = x.length - 1;
  const share = solid.mol.map((held, n) => (total[n] > 0 ? held / total[n] : 0));
  const peak = share.indexOf(Math.max(...share));
  const what = withForm(solid.id);
  const ion = followedName(curve.ion);
  const most = (n: number) => series.filter((one) => one !== solid).toSorted((a, b) => b.mol[n] - a.mol[n])[0];
  const told: Told[] = [];
  if (share[0] < TRACE) {
    // Hydrogensulfate and sulfate are there together; the equation beside it is written with sulfate.
    const main = most(0);
    const from = main.id === "HSO4-" ? { ...main, id: "SO4^2-" } : main;
    told.push({
      says: `${capital(reagent)} turns ${speciesName(from)} into ${what}, which hardly dissolves: a precipitate appears. At ${volume(x[peak])} it holds ${percent(share[peak])} of the ${ion}, its most.`,
      equation: curve.forms[solid.id],
    });
  } else told.push({ says: `At the start ${percent(share[0])} of the ${ion} is in the precipitate, ${what}.` });
  const to = speciesName(most(last));
  const gone = share.findIndex((part, n) => n > peak && part < TRACE);
  const kept = share[last] / share[peak];
  if (kept > 1 - GOES) {
    if (peak < last - 1) told.push({ says: `More ${reagent} does not dissolve it: the precipitate remains.` });
  } else if (kept > 1 - SEEN_TO_GO) {
    told.push({
      says: `More ${reagent} takes a little of it, ${percent(1 - kept)}, into ${to}; the eye sees the precipitate remain.`,
    });
  } else {
    const how = most(last).kind === "solid" ? "another solid" : "which stays dissolved: the precipitate goes";
    const end =
      gone < 0
        ? `At the end ${percent(share[last])} of the ${ion} is still in it.`
        : `From ${volume(x[gone])} on there is none left.`;
    told.push({
      says: `More ${reagent} turns ${what} into ${to}, ${how}. ${end}`,
      equation: curve.dissolves[solid.id],
    });
  }
  return told;
}
