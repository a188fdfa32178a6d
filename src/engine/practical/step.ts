/** One thing done with the hands. An author writes `add: NaOH(aq)` with `drops: 5`; the schema gives `{ do: "add", ... }`. */
import { z } from "zod";
import { INDICATORS, type Indicator } from "../constants/indicators.ts";
import { dispatch } from "./dispatch.ts";
import {
  type Concentration,
  concentration,
  type Duration,
  describe,
  duration,
  type Mass,
  mass,
  type Volume,
  volume,
} from "./quantity.ts";

/** How much of a reagent: some drops, a measured volume, pieces of a solid, or drops until nothing more changes. */
export type Addition = { drops: number } | { volume: Volume } | { pieces: number } | { inExcess: true };

/** Ways of testing a gas at the mouth of the tube. */
export const GAS_TESTS = [
  "damp red litmus",
  "damp blue litmus",
  "limewater",
  "glowing splint",
  "lighted splint",
  "acidified manganate(VII) paper",
  "acidified dichromate(VI) paper",
  "rod with hydrochloric acid",
  "rod with ammonia",
  "anhydrous copper(II) sulfate",
  "cobalt(II) chloride paper",
] as const;
export type GasTest = (typeof GAS_TESTS)[number];

export type Step =
  | { do: "take"; volume: Volume }
  | { do: "take"; mass: Mass }
  | { do: "add"; reagent: string; amount: Addition; at?: Concentration }
  | { do: "shake" }
  | { do: "warm" }
  | { do: "boil"; time: Duration }
  | { do: "cool" }
  | { do: "stand"; time: Duration }
  | { do: "filter"; keep: "filtrate" | "residue" }
  | { do: "wash" }
  | { do: "heat solid"; how: "gently" | "strongly" }
  | { do: "test gas"; with: GasTest }
  /** All gas of this test through a delivery tube into limewater: until it clouds, or for as long as gas comes. */
  | { do: "lead through"; liquid: "limewater"; inExcess: boolean; at?: Concentration }
  | { do: "indicator"; with: Indicator }
  | { do: "flame" };

/** The entry that names each kind of step, in the order they are looked for. */
const VERBS = [
  "take",
  "add",
  "shake",
  "warm",
  "boil",
  "cool",
  "stand",
  "filter",
  "wash",
  "heat",
  "testGas",
  "leadThrough",
  "indicator",
  "flame",
] as const;

const yes = z.literal(true, { error: (issue) => `found ${describe(issue.input)}, expected true` });

const inExcess = z.literal("in excess", {
  error: (issue) => `found ${describe(issue.input)}, expected "in excess"`,
});

const INDICATOR_NAMES = Object.keys(INDICATORS) as [Indicator, ...Indicator[]];

const take = z
  .strictObject({ take: z.string({ error: (i) => `found ${describe(i.input)}, expected "1 cm3" or "0.2 g"` }) })
  .transform((step, context): Step => {
    const asVolume = volume.safeParse(step.take);
    if (asVolume.success) return { do: "take", volume: asVolume.data };
    const asMass = mass.safeParse(step.take);
    if (asMass.success) return { do: "take", mass: asMass.data };
    context.addIssue({
      code: "custom",
      path: ["take"],
      message: `found "${step.take}", expected a volume such as "1 cm3" or a mass such as "0.2 g"`,
    });
    return z.NEVER;
  });

const count = (what: string) =>
  z
    .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number of ${what}, 1 to 40` })
    .min(1)
    .max(40);

const add = z
  .strictObject({
    add: z.string({ error: (issue) => `found ${describe(issue.input)}, expected a reagent such as "NaOH(aq)"` }),
    drops: count("drops").optional(),
    volume: volume.optional(),
    pieces: count("pieces").optional(),
    until: inExcess.optional(),
    at: concentration.optional(),
  })
  .transform((step, context): Step => {
    const amounts: Addition[] = [];
    if (step.drops !== undefined) amounts.push({ drops: step.drops });
    if (step.volume !== undefined) amounts.push({ volume: step.volume });
    if (step.pieces !== undefined) amounts.push({ pieces: step.pieces });
    if (step.until !== undefined) amounts.push({ inExcess: true });
    const [amount] = amounts;
    if (amount === undefined || amounts.length > 1) {
      context.addIssue({
        code: "custom",
        message: `found ${amounts.length} amounts of ${step.add}, expected one of drops, volume, pieces or until: in excess`,
      });
      return z.NEVER;
    }
    return { do: "add", reagent: step.add, amount, ...(step.at && { at: step.at }) };
  });

const shapes: Record<(typeof VERBS)[number], z.ZodType<Step>> = {
  take,
  add,
  shake: z.strictObject({ shake: yes }).transform((): Step => ({ do: "shake" })),
  warm: z.strictObject({ warm: yes }).transform((): Step => ({ do: "warm" })),
  boil: z.strictObject({ boil: duration }).transform((step): Step => ({ do: "boil", time: step.boil })),
  cool: z.strictObject({ cool: yes }).transform((): Step => ({ do: "cool" })),
  stand: z.strictObject({ stand: duration }).transform((step): Step => ({ do: "stand", time: step.stand })),
  filter: z
    .strictObject({
      filter: z.enum(["filtrate", "residue"], {
        error: (issue) => `found ${describe(issue.input)}, expected what is kept: filtrate or residue`,
      }),
    })
    .transform((step): Step => ({ do: "filter", keep: step.filter })),
  wash: z.strictObject({ wash: yes }).transform((): Step => ({ do: "wash" })),
  heat: z
    .strictObject({
      heat: z.enum(["gently", "strongly"], {
        error: (issue) => `found ${describe(issue.input)}, expected gently or strongly`,
      }),
    })
    .transform((step): Step => ({ do: "heat solid", how: step.heat })),
  testGas: z
    .strictObject({
      testGas: z.enum(GAS_TESTS, {
        error: (issue) => `found ${describe(issue.input)}, expected one of: ${GAS_TESTS.join(", ")}`,
      }),
    })
    .transform((step): Step => ({ do: "test gas", with: step.testGas })),
  leadThrough: z
    .strictObject({
      leadThrough: z.literal("limewater", {
        error: (issue) => `found ${describe(issue.input)}, expected limewater`,
      }),
      until: inExcess.optional(),
      at: concentration.optional(),
    })
    .transform(
      ({ leadThrough: liquid, until, at }): Step => ({
        do: "lead through",
        liquid,
        inExcess: until !== undefined,
        ...(at && { at }),
      }),
    ),
  indicator: z
    .strictObject({
      indicator: z.enum(INDICATOR_NAMES, {
        error: (issue) => `found ${describe(issue.input)}, expected one of: ${INDICATOR_NAMES.join(", ")}`,
      }),
    })
    .transform((step): Step => ({ do: "indicator", with: step.indicator })),
  flame: z.strictObject({ flame: yes }).transform((): Step => ({ do: "flame" })),
};

/** Reads one step. The verb is found first, so that a fault is told about that verb and not about all of them. */
export const step = dispatch<Step>((input) => {
  const verb =
    typeof input === "object" && input !== null ? VERBS.find((name) => Object.hasOwn(input, name)) : undefined;
  return verb ? shapes[verb] : { fault: `found ${describe(input)}, expected a step: one of ${VERBS.join(", ")}` };
});
