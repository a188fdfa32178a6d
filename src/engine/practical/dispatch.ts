/** Schemas that read by hand: one that turns what another has read into what the engine keeps, one that first looks which schema is meant. */
import * as z from "zod/mini";
import { plainWords } from "./plain-words.ts";

/** Tells a fault at a path inside what is being read. Return what it returns: it stands for a value that is never used. */
export type Refuse = (message: string, path?: (string | number)[]) => never;

/** Reads with `schema`, and turns what comes of it into something else or refuses it. */
export function readAs<Input, Output>(
  schema: z.ZodMiniType<Input>,
  turn: (input: Input, refuse: Refuse) => Output,
): z.ZodMiniType<Output> {
  return z.pipe(
    schema,
    z.transform((input: Input, { issues }): Output => {
      const refuse: Refuse = (message, path = []) => {
        issues.push({ code: "custom", input, path, message });
        return z.NEVER;
      };
      return turn(input, refuse);
    }),
  );
}

/** A schema that gives this value back whatever it reads. */
export const always = <T>(value: T): z.ZodMiniType<T> =>
  z.pipe(
    z.unknown(),
    z.transform(() => value),
  );

/**
 * Looks at the input first and hands it to the one schema meant, so that a fault is told about that one alone.
 * @param choose the schema for this input, or the fault when none is meant
 */
export function dispatch<T>(
  choose: (input: unknown) => z.ZodMiniType<T> | { fault: string },
): z.ZodMiniType<T, unknown> {
  return readAs(z.unknown(), (input, refuse): T => {
    const schema = choose(input);
    if ("fault" in schema) return refuse(schema.fault);
    const read = schema.safeParse(input, { error: plainWords });
    if (read.success) return read.data;
    for (const { path, message } of read.error.issues) refuse(message, path as (string | number)[]);
    return z.NEVER;
  });
}
