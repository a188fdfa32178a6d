/** What the paper says of its samples before any test is done. */
import { z } from "zod";
import { anion, cation } from "./ion.ts";
import { describe } from "./quantity.ts";

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

/**
 * - `cations`, `anions`: the ions to choose from.
 * - `inAll`: how many different ones all samples hold together.
 * - `share`: samples that hold the same ion; `differ`: samples of which no two hold the same ion.
 * Each sample holds one cation and one anion.
 */
export const statement = z.strictObject({
  cations: different(z.array(cation).min(1)),
  anions: different(z.array(anion).min(1)),
  inAll: z.strictObject({ cations: howMany.optional(), anions: howMany.optional() }).optional(),
  share: z.array(group).default([]),
  differ: z.array(group).default([]),
});
export type Statement = z.infer<typeof statement>;
