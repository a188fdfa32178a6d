/** What the paper says of its samples before any test is done. */
import * as z from "zod/mini";
import { ION_LISTS } from "../constants/ions.ts";
import { MOST } from "./bounds.ts";
import { always, dispatch } from "./dispatch.ts";
import { anion, cation, ion } from "./ion.ts";
import { describe } from "./quantity.ts";

/** A list of ions written out, or the name of one of the two lists that are ready. */
const ions = (kind: "cations" | "anions", one: z.ZodMiniType<string>) =>
  dispatch<string[]>((input) =>
    typeof input === "string" && Object.hasOwn(ION_LISTS, input)
      ? always([...ION_LISTS[input as keyof typeof ION_LISTS][kind]] as string[])
      : Array.isArray(input)
        ? different(kind, one)
        : {
            fault: `found ${describe(input)}, expected a list of ${kind}, or one of the words ${Object.keys(ION_LISTS).join(", ")}`,
          },
  );

const howMany = z
  .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number of ions` })
  .check(z.minimum(1), z.maximum(20));
const kindOfIon = z.enum(["cation", "anion"], {
  error: (issue) => `found ${describe(issue.input)}, expected cation or anion`,
});
const letters = (least: number, error: string) =>
  z.array(z.string()).check(z.minLength(least, { error }), z.maxLength(MOST.samples));
const group = z.strictObject({ samples: letters(2, "expected at least two sample letters"), ion: kindOfIon });

/** A list that names nothing twice. */
const different = (kind: "cations" | "anions", one: z.ZodMiniType<string>) =>
  z.array(one).check(
    z.minLength(1, { error: `found no ${kind}, expected at least one to choose from` }),
    z.refine((ions) => new Set(ions).size === ions.length, { error: "found an ion twice, expected each once" }),
  );

/** The reasoning holds fifteen statements on one kind of ion: five of each sort. */
const groups = <T>(one: z.ZodMiniType<T>) =>
  z._default(
    z
      .array(one)
      .check(
        z.maxLength(MOST.statements, { error: `found more than ${MOST.statements} such statements, expected fewer` }),
      ),
    [],
  );

const contains = z.strictObject({
  ion,
  samples: z.optional(letters(1, "expected at least one sample letter")),
  count: z.optional(
    z
      .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number of samples` })
      .check(z.minimum(0), z.maximum(MOST.samples)),
  ),
});

/**
 * - `cations`, `anions`: the ions to choose from, written out or by the name of a list: school, advanced.
 * - `inAll`: how many different ones all samples hold together.
 * - `share`: samples that hold one and the same ion; `differ`: samples of which no two hold the same ion.
 * - `same`: samples that are the same salt, such as a solid and its solution.
 * - `contains`: so many of the samples named (of all, where none is) hold the ion; at least one of them where no number is given.
 */
export const statement = z.strictObject({
  cations: ions("cations", cation),
  anions: ions("anions", anion),
  inAll: z.optional(z.strictObject({ cations: z.optional(howMany), anions: z.optional(howMany) })),
  share: groups(group),
  differ: groups(group),
  same: groups(
    z.array(z.string()).check(
      z.maxLength(MOST.samples),
      z.refine((all) => new Set(all).size > 1, {
        error: "found fewer than two different letters, expected at least two",
      }),
    ),
  ),
  contains: groups(contains),
});
export type Statement = z.infer<typeof statement>;
