/**
 * What goes between a page and the worker that draws its curves. In zod's small form: it costs a reader 7 kB where the full one costs 25.
 * A step was read by the one schema when the site was built, and comes with the page; of it only the shape is looked at. What a reader can
 * choose is looked at strictly.
 */
import * as z from "zod/mini";
import type { ChangedCurve, CurveChange, CurveSource } from "../../../engine/bench/changed-curve.ts";
import type { NamedCurve } from "../../../engine/bench/named-curve.ts";
import { CONCENTRATION } from "../../../engine/practical/amount.ts";
import { ROMAN } from "../../../engine/practical/cells.ts";
import type { Step } from "../../../engine/practical.ts";

/** A question, with the number its answer will carry. */
export interface CurveQuestion {
  id: number;
  source: CurveSource;
  change: CurveChange;
}

export interface CurveAnswer {
  id: number;
  answer: ChangedCurve;
}

const count = z.int().check(z.nonnegative());
const strength = z.optional(z.number().check(z.positive(), z.maximum(CONCENTRATION.largest)));

const isStep = (input: unknown): boolean =>
  typeof input === "object" && input !== null && "do" in input && typeof input.do === "string";

const part = z.strictObject({
  label: z.string(),
  title: z.string(),
  samples: z.optional(z.array(z.string())),
  from: z.optional(z.enum(["solid", "solution"])),
  tests: z.array(
    z.strictObject({
      label: z.optional(z.enum(ROMAN)),
      says: z.optional(z.string()),
      steps: z.array(z.custom<Step>(isStep)),
    }),
  ),
});

const source = z
  .strictObject({
    sample: z.string(),
    given: z.enum(["solid", "solution", "both"]),
    part,
    test: count,
    ion: z.optional(z.string().check(z.maxLength(40))),
  })
  .check(z.refine(({ part: { tests }, test }) => test < tests.length, { error: "expected a test of the part" }));

export const question: z.ZodMiniType<CurveQuestion> = z.strictObject({
  id: count,
  source,
  change: z.strictObject({
    salt: z.string().check(z.minLength(2), z.maxLength(40)),
    molPerDm3: strength,
    reagentMolPerDm3: strength,
  }),
});

const amounts = z.array(z.number());
const equations = z.record(z.string(), z.string());

const curve: z.ZodMiniType<NamedCurve> = z.strictObject({
  reagent: z.string(),
  ion: z.string(),
  x: amounts.check(z.minLength(1)),
  ends: z.array(z.strictObject({ test: count, x: z.number() })).check(z.minLength(1)),
  total: amounts,
  series: z.array(z.strictObject({ id: z.string(), kind: z.enum(["solid", "dissolved"]), mol: amounts })),
  others: amounts,
  sample: z.string(),
  ionName: z.string(),
  cells: z.array(z.string()),
  forms: equations,
  dissolves: equations,
});

export const answer: z.ZodMiniType<CurveAnswer> = z.strictObject({
  id: count,
  answer: z.union([z.strictObject({ curve }), z.strictObject({ refused: z.string() })]),
});
