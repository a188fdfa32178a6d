/** What the paper says of its samples before any test is done. */
import { z } from "zod";
import { ION_LISTS } from "../constants/ions.ts";
import { dispatch } from "./dispatch.ts";
import { anion, cation, ion } from "./ion.ts";
import { describe } from "./quantity.ts";

/** A list of ions written out, or the name of one of the two lists that are ready. */
const ions = (kind: "cations" | "anions", one: z.ZodType<string>) =>
  dispatch<string[]>((input) =>
    typeof input === "string" && Object.hasOwn(ION_LISTS, input)
      ? z.unknown().transform((): string[] => [...ION_LISTS[input as keyof typeof ION_LISTS][kind]])
      : Array.isArray(input)
        ? different(z.array(one).min(1))
        : {
            fault: `found ${describe(input)}, expected a list of ${kind}, or one of the words ${Object.keys(ION_LISTS).join(", ")}`,
          },
  );

const howMany = z
  .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number of ions` })
  .min(1)
  .max(20);
const kindOfIon = z.enum(["cation", "anion"], {
  error: (issue) => `found ${describe(issue.input)}, expected cation or anion`,
});
const group = z.strictObject({
  samples: z.array(z.string()).min(2, { error: "expected at least two sample letters" }),
  ion: kindOfIon,
});

/** A list that names nothing twice. */
const different = (list: z.ZodArray<z.ZodType<string>>) =>
  list.refine((ions) => new Set(ions).size === ions.length, { message: "found an ion twice, expected each once" });

/** No paper says so much; the reasoning holds fifteen such statements on one kind of ion. */
const MOST_GROUPS = 5;
const groups = <T extends z.ZodType>(one: T) =>
  z
    .array(one)
    .max(MOST_GROUPS, { error: `found more than ${MOST_GROUPS} such statements, expected fewer` })
    .default([]);

const contains = z.strictObject({
  ion,
  samples: z.array(z.string()).min(1, { error: "expected at least one sample letter" }).optional(),
  count: z
    .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number of samples` })
    .min(0)
    .max(8)
    .optional(),
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
  inAll: z.strictObject({ cations: howMany.optional(), anions: howMany.optional() }).optional(),
  share: groups(group),
  differ: groups(group),
  same: groups(
    z.array(z.string()).refine((letters) => new Set(letters).size > 1, {
      message: "found fewer than two different letters, expected at least two",
    }),
  ),
  contains: z.array(contains).default([]),
});
export type Statement = z.infer<typeof statement>;
