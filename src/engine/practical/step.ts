/** One thing done with the hands. An author writes `add: NaOH(aq)` with `drops: 5`; the schema gives `{ do: "add", ... }`. */
import * as z from "zod/mini";
import { INDICATORS, type Indicator } from "../constants/indicators.ts";
import { dispatch, type Refuse, readAs } from "./dispatch.ts";
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

/** Reads what an author writes for a verb, and turns it into the step. */
function verb<Shape extends z.core.$ZodLooseShape>(
  shape: Shape,
  turn: (written: z.infer<z.ZodMiniObject<Shape>>, refuse: Refuse) => Step,
) {
  return readAs(z.strictObject(shape) as unknown as z.ZodMiniType<z.infer<z.ZodMiniObject<Shape>>>, turn);
}

const amountText = z.string({ error: (issue) => `found ${describe(issue.input)}, expected "1 cm3" or "0.2 g"` });
const take = verb({ take: amountText }, (step, refuse) => {
  const asVolume = volume.safeParse(step.take);
  if (asVolume.success) return { do: "take", volume: asVolume.data };
  const asMass = mass.safeParse(step.take);
  if (asMass.success) return { do: "take", mass: asMass.data };
  return refuse(`found "${step.take}", expected a volume such as "1 cm3" or a mass such as "0.2 g"`, ["take"]);
});

const count = (what: string) =>
  z.optional(
    z
      .int({ error: (issue) => `found ${describe(issue.input)}, expected a whole number of ${what}, 1 to 40` })
      .check(z.minimum(1), z.maximum(40)),
  );

const add = verb(
  {
    add: z.string({ error: (issue) => `found ${describe(issue.input)}, expected a reagent such as "NaOH(aq)"` }),
    drops: count("drops"),
    volume: z.optional(volume),
    pieces: count("pieces"),
    until: z.optional(inExcess),
    at: z.optional(concentration),
  },
  (step, refuse) => {
    const amounts: Addition[] = [];
    if (step.drops !== undefined) amounts.push({ drops: step.drops });
    if (step.volume !== undefined) amounts.push({ volume: step.volume });
    if (step.pieces !== undefined) amounts.push({ pieces: step.pieces });
    if (step.until !== undefined) amounts.push({ inExcess: true });
    const [amount] = amounts;
    if (amount === undefined || amounts.length > 1) {
      return refuse(
        `found ${amounts.length} amounts of ${step.add}, expected one of drops, volume, pieces or until: in excess`,
      );
    }
    return { do: "add", reagent: step.add, amount, ...(step.at && { at: step.at }) };
  },
);

/** One of some words, told apart with what was expected. */
const word = <const Word extends string>(words: readonly Word[], expected = `one of: ${words.join(", ")}`) =>
  z.enum(words as [Word, ...Word[]], { error: (issue) => `found ${describe(issue.input)}, expected ${expected}` });

const shapes: Record<(typeof VERBS)[number], z.ZodMiniType<Step>> = {
  take,
  add,
  shake: verb({ shake: yes }, () => ({ do: "shake" })),
  warm: verb({ warm: yes }, () => ({ do: "warm" })),
  boil: verb({ boil: duration }, ({ boil: time }) => ({ do: "boil", time })),
  cool: verb({ cool: yes }, () => ({ do: "cool" })),
  stand: verb({ stand: duration }, ({ stand: time }) => ({ do: "stand", time })),
  filter: verb({ filter: word(["filtrate", "residue"], "what is kept: filtrate or residue") }, ({ filter: keep }) => ({
    do: "filter",
    keep,
  })),
  wash: verb({ wash: yes }, () => ({ do: "wash" })),
  heat: verb({ heat: word(["gently", "strongly"], "gently or strongly") }, ({ heat: how }) => ({
    do: "heat solid",
    how,
  })),
  testGas: verb({ testGas: word(GAS_TESTS) }, ({ testGas }) => ({ do: "test gas", with: testGas })),
  leadThrough: verb(
    { leadThrough: word(["limewater"], "limewater"), until: z.optional(inExcess), at: z.optional(concentration) },
    ({ leadThrough: liquid, until, at }) => ({
      do: "lead through",
      liquid,
      inExcess: until !== undefined,
      ...(at && { at }),
    }),
  ),
  indicator: verb({ indicator: word(INDICATOR_NAMES) }, ({ indicator }) => ({ do: "indicator", with: indicator })),
  flame: verb({ flame: yes }, () => ({ do: "flame" })),
};

/** Reads one step. The verb is found first, so that a fault is told about that verb and not about all of them. */
export const step = dispatch<Step>((input) => {
  const verb =
    typeof input === "object" && input !== null ? VERBS.find((name) => Object.hasOwn(input, name)) : undefined;
  return verb ? shapes[verb] : { fault: `found ${describe(input)}, expected a step: one of ${VERBS.join(", ")}` };
});
