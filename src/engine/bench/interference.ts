/** Tests whose result would be false for some salt the paper allows, found by carrying each out with and without what disturbs it. */
import type { Solver } from "../equilibrium/solve.ts";
import { cellsOf, type Paper, type Part } from "../practical.ts";
import { cannotBe, type Form, pairsOf } from "./allowed-salts.ts";
import { asSample } from "./as-sample.ts";
import { DISTURBANCES, type Kind } from "./interference/disturbances.ts";
import { type Aim, type Line, lineOf } from "./interference/line.ts";
import { differs } from "./interference/sign.ts";
import { shakenAfter, type Trial } from "./interference/trial.ts";
import { predictSights } from "./predict.ts";
import type { BenchEvent, Prediction } from "./prediction.ts";
import type { SimpleSalt } from "./salt.ts";
import type { TestedSalt } from "./sample.ts";

/** One salt that misleads in one line. */
export interface Misled {
  /** mhchem, without water of crystallisation. */
  salt: string;
  /** "surely": no reading is the right one. "perhaps": a faint sign that some would see. */
  how: "surely" | "perhaps";
  /** The solid or gas that misleads, species id; absent when nothing of its own shows. */
  phase?: string;
  /** Of a solid, in the mixture at its most. */
  gramsPerDm3?: number;
  /** Of a gas, above the liquid when it was tested. */
  atm?: number;
}

export interface Interference {
  cell: string;
  kind: Kind;
  /** The salts concerned, in the paper's order; a salt given in several forms stands once, at its worst. */
  salts: Misled[];
  /** What a reader would wrongly conclude. */
  concluded: string;
  remedy: string;
}

/** What decides the interferences of a practical. */
export type Disturbable = Pick<Paper, "samples" | "paper" | "parts">;

/**
 * Names the lines of a procedure whose result would be false for some allowed salt.
 *
 * A line looks for one thing: silver nitrate for a halide, a barium salt for sulfate, ammonia after silver nitrate for which halide, foil in
 * warm alkali for nitrate, acid and limewater for carbonate, alkali for a hydroxide. Its result is false for a salt when the sign of that one thing (a solid and its colour,
 * that it dissolves, ammonia) changes as the disturbing thing is taken away and all else stays: the reagents' own chloride and sulfate
 * replaced by nitrate; ammonium replaced by sodium; nitrite, sulfite or thiosulfate by chloride; plenty of nitric acid added first; the sample's sulfate replaced by nitrate; the
 * sample's cation replaced by sodium. Tap water and old alkali are not in the procedure: there the line with them is compared with the
 * line as written. For "which halide" the sign is whether a solid is left when
 * the ammonia is in, and only halides are asked about. "surely": no sign accepted with the disturbance is accepted without it; "perhaps": one of them is not.
 * A line without acid that is followed by acid in the same tube is not false: the later line decides.
 * @throws what `predictSalt` throws
 */
export function interference(practical: Disturbable, solve: Solver): Interference[] {
  const { paper, parts, samples } = practical;
  const lines = cellsOf(parts).flatMap((cell) => lineOf(cell) ?? []);
  const pairs = pairsOf(paper);
  const found = new Map<string, Interference>();
  // Of several ions in one tube each disturbs the tests of the others: that is what the predictions are for.
  for (const form of formsOf(samples.filter(({ holds }) => holds === undefined))) {
    const mine = lines.filter(({ cell }) => form.labels.some((label) => cell.part.samples?.includes(label) ?? true));
    for (const salt of mine.length > 0 ? pairs.filter((each) => cannotBe(each, form, solve) === undefined) : []) {
      for (const { line, kind, remedy, misled } of misledBy(salt, asSample(salt, form), mine, solve)) {
        const key = `${line.cell.id} ${kind}`;
        const one = found.get(key) ?? { cell: line.cell.id, kind, salts: [], concluded: CONCLUDED[line.aim], remedy };
        found.set(key, one);
        const before = one.salts.findIndex((each) => each.salt === misled.salt);
        if (before < 0) one.salts.push(misled);
        else if (one.salts[before].how === "perhaps") one.salts[before] = misled;
      }
    }
  }
  const order = lines.map(({ cell }) => cell.id);
  return [...found.values()].sort((a, b) => order.indexOf(a.cell) - order.indexOf(b.cell));
}

const CONCLUDED: Readonly<Record<Aim, string>> = {
  halide: "a halide",
  "which halide": "another halide than it is",
  sulfate: "sulfate",
  nitrate: "nitrate",
  carbonate: "carbonate",
  hydroxide: "a cation with a white hydroxide",
};

/** The different forms in which samples are given, each with the letters of its samples. */
function formsOf(samples: Disturbable["samples"]): (Form & { labels: string[] })[] {
  const forms = new Map<string, Form & { labels: string[] }>();
  for (const { label, given, concentration } of samples) {
    const key = `${given} ${concentration?.molPerDm3 ?? ""}`;
    const form = forms.get(key) ?? { given, ...(concentration && { concentration }), labels: [] };
    form.labels.push(label);
    forms.set(key, form);
  }
  return [...forms.values()];
}

/** Every line this salt misleads in; a line that one disturbance explains is not asked about the next. */
function* misledBy(
  salt: SimpleSalt,
  tested: TestedSalt,
  lines: readonly Line[],
  solve: Solver,
): Generator<{ line: Line; kind: Kind; remedy: string; misled: Misled }> {
  const asWritten = new Map<Part, Prediction[]>();
  const predict = (trial: Trial) => [...predictSights(trial.salt, [trial.part], solve).values()];
  for (const line of lines) {
    // Which halide it was is told by what is left when the ammonia is in: the tube is looked at once more.
    const left = line.aim === "which halide";
    const at = line.cell.index + (left ? 1 : 0);
    const written: Trial = { salt: tested, part: left ? shakenAfter(line.cell.part, at - 1) : line.cell.part };
    const asIs = asWritten.get(written.part) ?? predict(written);
    asWritten.set(written.part, asIs);
    const shownBy = (trial: Trial) => (trial === written ? asIs : predict(trial));
    for (const { kind, aims, compare, remedy } of DISTURBANCES) {
      const pair = aims.includes(line.aim) ? compare(line, salt, written) : undefined;
      if (!pair) continue;
      const disturbed = shownBy(pair.disturbed);
      const clean = shownBy(pair.clean);
      const how = differs(line.aim, disturbed[at], clean[at]);
      if (how === undefined) continue;
      const amount = amountOf(line, disturbed.slice(0, at + 1), clean.slice(0, at + 1));
      yield { line, kind, remedy, misled: { salt: salt.formula, how, ...amount } };
      break;
    }
  }
}

/** The solid or gas that misleads: the most there is of one that the clean tube does not show, in this line or, failing that, before. */
function amountOf({ aim }: Line, disturbed: readonly Prediction[], clean: readonly Prediction[]) {
  const kind: BenchEvent["kind"] = aim === "nitrate" || aim === "carbonate" ? "gas leaves" : "precipitate forms";
  const eventsIn = ({ events }: Prediction) => events.filter((each) => each.kind === kind && !each.where);
  const rightful = new Set(clean.flatMap(eventsIn).map(({ phase }) => phase));
  for (const prediction of disturbed.toReversed()) {
    const strange = eventsIn(prediction).filter(({ phase }) => !rightful.has(phase));
    if (strange.length === 0) continue;
    const { phase, gramsPerDm3, atm } = strange.reduce((most, each) => (size(each) > size(most) ? each : most));
    return { phase, ...(gramsPerDm3 !== undefined && { gramsPerDm3 }), ...(atm !== undefined && { atm }) };
  }
  return {};
}

const size = ({ gramsPerDm3, atm }: BenchEvent): number => gramsPerDm3 ?? atm ?? 0;
