/**
 * What goes between the page and the worker that works a paper out, in zod's small form. A paper goes as it is written and is read by the one
 * schema in the worker; what comes back is the worker's own and is looked at as far as the page counts on it.
 */
import * as z from "zod/mini";
import type { ReadInstruction } from "../../engine/wording/read-instruction.ts";
import type { CautionEntry, Further, PaperWork } from "./paper-work.types.ts";

const count = z.int().check(z.nonnegative());
const text = z.string().check(z.maxLength(2000));

const caution: z.ZodMiniType<CautionEntry> = z.strictObject({
  id: text,
  data: z.strictObject({ title: text, summary: text, covers: z.array(text), kind: text }),
});
const cautions = z.array(caution).check(z.maxLength(200));

export const question = z.discriminatedUnion("do", [
  z.strictObject({ id: count, do: z.literal("work out"), written: z.unknown(), cautions }),
  z.strictObject({ id: count, do: z.literal("read sentences"), pasted: z.string().check(z.maxLength(20_000)) }),
  z.strictObject({ id: count, do: z.literal("check"), written: z.unknown() }),
  z.strictObject({
    id: count,
    do: z.literal("look further"),
    written: z.unknown(),
    cautions,
    left: z.record(z.string(), z.array(text)),
  }),
]);
export type Question = z.infer<typeof question>;

const fault = z.strictObject({ path: z.array(z.union([z.string(), z.number()])), message: z.string() });
const isGroup = (input: unknown): boolean => typeof input === "object" && input !== null;
const isWork = (input: unknown): boolean =>
  isGroup(input) && "table" in (input as object) && "plan" in (input as object) && "lines" in (input as object);

export const answer = z.strictObject({
  id: count,
  /** How far the work has come. */
  progress: z.optional(z.strictObject({ done: count, of: count })),
  faults: z.optional(z.array(fault)),
  work: z.optional(z.custom<PaperWork>(isWork)),
  refused: z.optional(z.string()),
  sentences: z.optional(z.custom<ReadInstruction>((input) => isGroup(input) && "parts" in (input as object))),
  further: z.optional(z.custom<NonNullable<Further>>((input) => isGroup(input) && "cells" in (input as object))),
  /** Nothing more comes to this question. */
  done: z.optional(z.literal(true)),
});
export type Answer = z.infer<typeof answer>;
