/** The curves of a practical as their page needs them: the curve as the paper has it, and what a reader may change. */
import { reagentName } from "#words/steps.ts";
import { cannotBe, nameOf } from "../engine/bench/allowed-salts.ts";
import type { CurveChange, CurveSource } from "../engine/bench/changed-curve.ts";
import { contentNamed, contentsOf } from "../engine/bench/contents.ts";
import { additionOf } from "../engine/bench/curve.ts";
import type { NamedCurve } from "../engine/bench/named-curve.ts";
import { reagents } from "../engine/constants/reagents.ts";
import type { Solver } from "../engine/equilibrium/solve.ts";
import { cellsOf, type Part, type Practical, type Sample } from "../engine/practical.ts";
import { curvesOf } from "./curves.ts";

/** Strengths from which a reader may choose, mol/dm3. */
export interface StrengthRange {
  from: number;
  to: number;
}

export interface LiveCurve {
  /** As the paper has it. */
  curve: NamedCurve;
  source: CurveSource;
  /** The paper's own salt and strengths. */
  own: CurveChange;
  /** Salts to choose from: those the paper allows and that can be such a sample. */
  salts: { formula: string; name: string }[];
  /** Absent when a solid is taken. */
  sampleRange?: StrengthRange;
  reagent: {
    name: string;
    /** Absent where it has no strength to choose. */
    range?: StrengthRange;
  };
}

/** Strengths of a sample that a school might make up, mol/dm3. Common practice, no source. */
const SAMPLE_RANGE: StrengthRange = { from: 0.02, to: 0.5 };

/**
 * In the order of the paper.
 * @param curves those of the practical, where they are there already
 * @throws what the engine throws for a procedure it cannot carry out
 */
export function liveCurves(practical: Practical, solve: Solver, curves = curvesOf(practical, solve)): LiveCurve[] {
  return curves.flatMap((curve) => {
    const sample = practical.samples.find(({ label }) => label === curve.sample);
    const cell = cellsOf(practical.parts).find(({ id }) => id === curve.cells.at(-1));
    const own = sample && contentNamed(sample.salt);
    if (!cell || !own) return [];
    const { part, index: test } = cell;
    // What the author says beside a part changes no curve, and the worker takes nothing it does not know.
    const { note: _, ...done } = part;
    const molPerDm3 = takesSolution(part) ? sample.concentration?.molPerDm3 : undefined;
    const reagent = reagentOf(part, test, curve.reagent);
    return [
      {
        curve: rounded(curve),
        source: { sample: sample.label, given: sample.given, part: done, test, ion: curve.ion },
        own: {
          salt: own.formula,
          ...(molPerDm3 !== undefined && { molPerDm3 }),
          ...(reagent.molPerDm3 !== undefined && { reagentMolPerDm3: reagent.molPerDm3 }),
        },
        salts: saltsFor(practical, sample, solve),
        ...(molPerDm3 !== undefined && { sampleRange: reaching(SAMPLE_RANGE, molPerDm3) }),
        reagent: { name: reagent.name, ...(reagent.range && { range: reagent.range }) },
      },
    ];
  });
}

const takesSolution = ({ tests }: Part): boolean =>
  tests.some(({ steps }) => steps.some((step) => step.do === "take" && "volume" in step));

function saltsFor({ paper }: Practical, sample: Sample, solve: Solver): LiveCurve["salts"] {
  return contentsOf(paper, sample.holds)
    .filter((content) => cannotBe(content, sample, solve) === undefined)
    .map((content) => ({ formula: content.formula, name: nameOf(content) }));
}

function reagentOf(part: Part, test: number, id: string): LiveCurve["reagent"] & { molPerDm3?: number } {
  const row = reagents.find((one) => one.id === id);
  const name = row ? reagentName(id, row.name) : id;
  const molPerDm3 = additionOf(part, test)?.at?.molPerDm3 ?? row?.concentration ?? undefined;
  if (!row?.range || molPerDm3 === undefined) return { name };
  const [from, to] = row.range;
  return { name, molPerDm3, range: reaching({ from, to }, molPerDm3) };
}

/** The range, made wide enough for the paper's own strength. */
const reaching = ({ from, to }: StrengthRange, own: number): StrengthRange => ({
  from: Math.min(from, own),
  to: Math.max(to, own),
});

/** Figures kept of each amount, and the part of the ion below which nothing is kept: the page shows whole hundredths. */
const FIGURES = 3;
const NOTHING = 1e-4;

/** Without the figures nobody sees, which would weigh on the page. */
export function rounded(curve: NamedCurve): NamedCurve {
  const least = NOTHING * Math.max(...curve.total);
  const short = (values: readonly number[]) =>
    values.map((value) => (value < least ? 0 : Number(value.toPrecision(FIGURES))));
  return {
    ...curve,
    x: curve.x.map((cm3) => Number(cm3.toFixed(4))),
    total: short(curve.total),
    others: short(curve.others),
    series: curve.series.map((one) => ({ ...one, mol: short(one.mol) })),
  };
}
