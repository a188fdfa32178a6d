/** Everything a department changes about its site, in one file: `department/department.yaml`. Every entry may be left out. */
import { z } from "zod";
import * as mini from "zod/mini";
import { CLASS_LIMITS } from "../../engine/constants/class-practice.ts";
import { BOILING_TUBES, TEST_TUBES } from "../../engine/constants/glassware.ts";
import { type Reagent, reagents } from "../../engine/constants/reagents.ts";
import { anion, cation } from "../../engine/practical/ion.ts";
import { concentration, describe } from "../../engine/practical/quantity.ts";
import { TAGS } from "../../words/tags.ts";
import { basePath, hostAddress } from "../hosting/base-path.ts";

/** One line of plain text. */
const line = (least: number, most: number, example: string) =>
  z
    .string({ error: (issue) => `found ${describe(issue.input)}, expected text such as "${example}"` })
    .trim()
    .min(least, { error: `expected at least ${least} characters, such as "${example}"` })
    .max(most, { error: `expected at most ${most} characters` })
    .regex(/^[^\p{Cc}]*$/u, { error: "found a line break or another control character, expected one line of text" });

const base = z
  .string({ error: (issue) => `found ${describe(issue.input)}, expected a path such as /chemistry/` })
  .refine((given) => basePath(given) !== undefined, {
    error: (issue) =>
      `found ${describe(issue.input)}, expected a path such as /chemistry/ (letters, digits, dots, hyphens)`,
  });

const address = z
  .string({ error: (issue) => `found ${describe(issue.input)}, expected an address such as https://school.example` })
  .refine((given) => hostAddress(given) !== undefined, {
    error: (issue) => `found ${describe(issue.input)}, expected the whole address of the host: https://school.example`,
  });

const SOLUTIONS = reagents.filter(({ concentration }) => concentration !== null);

/** Up to here the words of hazards beside each step hold. */
const strongest = ({ range, concentration }: Reagent): number => range?.[1] ?? concentration ?? 0;

const strengthOf = (reagent: Reagent) =>
  z.optional(
    concentration.check(
      mini.refine(({ molPerDm3 }) => molPerDm3 <= strongest(reagent), {
        error: `found a stronger ${reagent.id}, expected at most ${strongest(reagent)} mol/dm3, up to where its cautions hold`,
      }),
    ),
  );

const strengths = z.strictObject(Object.fromEntries(SOLUTIONS.map((reagent) => [reagent.id, strengthOf(reagent)])), {
  error: (issue) =>
    issue.code === "unrecognized_keys"
      ? `found ${issue.keys.map((key) => describe(key)).join(", ")}, expected one of ${SOLUTIONS.map(({ id }) => id).join(", ")}`
      : undefined,
});

const reagentId = z.enum(reagents.map(({ id }) => id) as [string, ...string[]]);

/** A list that names nothing twice. */
const different = <T extends z.core.$ZodType<string>>(one: T) =>
  z
    .array(one)
    .min(1)
    .refine((all) => new Set(all).size === all.length, { error: "found an entry twice, expected each once" });

const whole = ({ least, most }: { least: number; most: number }) =>
  z
    .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number from ${least} to ${most}` })
    .min(least, { error: `expected at least ${least}` })
    .max(most, { error: `expected at most ${most}` });

const tube = (sizes: readonly { id: string }[]) => z.enum(sizes.map(({ id }) => id) as [string, ...string[]]);

const names = different(
  z.string({ error: (issue) => `found ${describe(issue.input)}, expected the file name of a practical` }),
);

export const departmentFile = z
  .strictObject({
    name: line(2, 60, "Chemistry at Quillstrand School").meta({ description: "Name of the site, on every page." }),
    base: base.meta({ description: "Folder of the host the site lives in." }),
    address: address.meta({ description: "The host; pages then name their one address." }),
    languages: different(z.enum(TAGS)).meta({
      description: "Languages of the interface, each an edition of the site, the first at its base.",
    }),
    safety: z
      .strictObject({
        note: line(10, 600, "Goggles live in the blue tray by the door."),
        emergency: line(3, 160, "Call 0 from the wall telephone"),
      })
      .partial()
      .meta({ description: "Shown on every walkthrough, preparation sheet and caution." }),
    reagents: z
      .strictObject({
        strengths: strengths.meta({ description: "Your bottles, where a practical leaves the strength to the house." }),
        notKept: different(reagentId).meta({ description: "Reagents your school does not keep." }),
      })
      .partial(),
    ions: z
      .strictObject({ cations: different(cation), anions: different(anion) })
      .meta({ description: "What a practical means that offers the ions `department`." }),
    tubes: z.strictObject({ test: tube(TEST_TUBES), boiling: tube(BOILING_TUBES) }).partial(),
    class: z
      .strictObject({ groups: whole(CLASS_LIMITS.groups), sparePercent: whole(CLASS_LIMITS.sparePercent) })
      .partial(),
    practicals: z
      .strictObject({ show: names, hide: names })
      .partial()
      .refine(({ show, hide }) => !(show && hide), { error: "found show and hide, expected one of them" }),
  })
  .partial();

/** As it is written in the file, amounts read. */
export type DepartmentFile = z.infer<typeof departmentFile>;
