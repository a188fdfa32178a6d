/**
 * What a person sees in one test, as data. An author writes the short form (`precipitate: white`, or just `no visible change`);
 * the schema turns it into one full form that the bench predicts and deduction compares.
 */
import * as z from "zod/mini";
import { LONGEST } from "./bounds.ts";
import { type Colour, colour } from "./colour.ts";
import { always, dispatch, readAs } from "./dispatch.ts";
import { GAS_EVIDENCE, GASES, type Gas } from "./gases.ts";
import { describe } from "./quantity.ts";

export type { Gas } from "./gases.ts";

/**
 * How much of a solid there is. `slight`: a faint cloudiness; `trace`: one at the limit of sight, which some would not see. They are not held
 * apart, but that a plain precipitate is no trace.
 */
const AMOUNTS = ["plain", "slight", "trace"] as const;
export type Amount = (typeof AMOUNTS)[number];

/** A solid that appears during the test. */
export interface Precipitate {
  colour: Colour;
  amount: Amount;
}

/** What becomes of a precipitate that was there when the test began. */
export type Fate = "remains" | "partly dissolves" | "dissolves";

/** A gas with the evidence that names it. */
export interface GasSeen {
  /** mhchem formula, e.g. "NH3". */
  formula: Gas;
  /** What showed it: a key of GAS_EVIDENCE. */
  evidence: string;
}

/**
 * One observation. A field that is absent was not looked at and says nothing, except that `none: true` says that nothing changed.
 * - `stays`: beside `none`, the colour that the liquid has kept.
 * - `precipitate`: false = none formed; an object = this one formed.
 * - `fate`: of the precipitate already in the tube.
 * - `solution`: colour of the liquid at the end.
 * - `gas`: false = gas tested for and not found.
 * - `residue`: what a heated solid leaves, hot and cold; false = nothing is left.
 * - `indicator`: the colour of the indicator the step names.
 * - `fumes`: a coloured gas or vapour that the eye sees; `sublimate`: a solid on the cool wall; `droplets`: a liquid there.
 */
export interface Observation {
  none?: true;
  stays?: Colour;
  precipitate?: Precipitate | false;
  fate?: Fate;
  solution?: Colour;
  effervescence?: boolean;
  gas?: GasSeen | false;
  indicator?: Colour;
  residue?: { hot?: Colour; cold?: Colour } | false;
  fumes?: Colour;
  sublimate?: Colour;
  droplets?: true;
  flame?: Colour | false;
}

const isGroup = (input: unknown) => typeof input === "object" && input !== null;
const isNone = (input: unknown) => input === false || input === "none";
const none = always(false as const);

const precipitate = dispatch<Precipitate | false>((input) => {
  if (isNone(input)) return none;
  if (isGroup(input)) return z.strictObject({ colour, amount: z._default(z.enum(AMOUNTS), "plain") });
  return readAs(colour, (name): Precipitate => ({ colour: name, amount: "plain" }));
});

const gasName = z.enum(GASES, {
  error: (issue) => `found ${describe(issue.input)}, expected one of ${GASES.join(", ")}`,
});
const gas = dispatch<GasSeen | false>((input) => {
  if (isNone(input)) return none;
  if (isGroup(input))
    return z.strictObject({
      formula: gasName,
      evidence: z.string().check(z.minLength(3), z.maxLength(LONGEST.evidence)),
    });
  return readAs(gasName, (formula): GasSeen => ({ formula, evidence: GAS_EVIDENCE[formula] }));
});

const residue = z.strictObject({ hot: z.optional(colour), cold: z.optional(colour) }).check(
  z.refine((seen) => seen.hot !== undefined || seen.cold !== undefined, {
    error: "found a residue without a colour, expected hot, cold or both, or none",
  }),
);

const yes = z.literal(true, { error: (issue) => `found ${describe(issue.input)}, expected true` });

const NO_CHANGE = "no visible change";

const fullObservation = z
  .strictObject({
    none: z.optional(yes),
    stays: z.optional(colour),
    precipitate: z.optional(precipitate),
    fate: z.optional(
      z.enum(["remains", "partly dissolves", "dissolves"], {
        error: (issue) => `found ${describe(issue.input)}, expected remains, partly dissolves or dissolves`,
      }),
    ),
    solution: z.optional(colour),
    effervescence: z.optional(z.boolean()),
    gas: z.optional(gas),
    indicator: z.optional(colour),
    residue: z.optional(dispatch<NonNullable<Observation["residue"]>>((input) => (isNone(input) ? none : residue))),
    fumes: z.optional(colour),
    sublimate: z.optional(colour),
    droplets: z.optional(yes),
    flame: z.optional(dispatch<Colour | false>((input) => (isNone(input) ? none : colour))),
  })
  .check(
    z.refine((seen) => Object.keys(seen).length > 0, {
      error: `found an observation that says nothing, expected something seen, or "${NO_CHANGE}"`,
    }),
    z.refine(
      (seen) =>
        (!seen.none && seen.stays === undefined) ||
        Object.keys(seen).every((key) => key === "none" || key === "stays" || (key === "gas" && seen.gas === false)),
      {
        error:
          "found no visible change beside something seen, expected one or the other; only gas: none may stand beside it",
      },
    ),
  );

/** Reads an observation: `no visible change`, or what was seen as named entries. */
export const observation = dispatch<Observation>((input) => {
  if (input === NO_CHANGE) return always<Observation>({ none: true });
  if (isGroup(input)) return fullObservation;
  return {
    fault: `found ${describe(input)}, expected "${NO_CHANGE}" or what was seen, such as { precipitate: white } or { gas: NH3 }`,
  };
});
