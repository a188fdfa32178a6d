/** What the page asks of the worker. A paper goes as it is written, and is read by the one schema in the worker. */
import { z } from "zod";

const count = z.int().nonnegative();
const text = z.string().max(2000);

const caution = z.strictObject({
  id: text,
  data: z.strictObject({ title: text, summary: text, covers: z.array(text), kind: text }),
});
const cautions = z.array(caution).max(200);

export const question = z.discriminatedUnion("do", [
  z.strictObject({ id: count, do: z.literal("work out"), written: z.unknown(), cautions }),
  z.strictObject({ id: count, do: z.literal("read sentences"), pasted: z.string().max(20_000) }),
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
