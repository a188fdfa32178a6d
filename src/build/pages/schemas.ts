/** What stands in the frontmatter of each kind of page beside practicals, and in the glossary. Astro and the check read the same. */
import { z } from "zod";
import { HAZARD_KINDS } from "../../engine/constants/hazard-kinds.ts";
import { ANIONS, CATIONS } from "../../engine/constants/ions.ts";
import { STANDARD_TESTS } from "../../engine/constants/standard-tests.ts";
import { step } from "../../engine/practical.ts";

export const ionTest = z.strictObject({
  title: z.string().min(3),
  /** Place in the list, from 1. */
  order: z.int().min(1),
  /** What the test finds; "other" for gases, solids and the like. */
  kind: z.enum(["cation", "anion", "other"]),
  /** The standard tests of the engine that this page tells of. */
  standard: z.array(z.enum(STANDARD_TESTS.map(({ id }) => id))).default([]),
  /** Ions it finds or tells apart, mhchem. */
  ions: z.array(z.string()).default([]),
  reagents: z.array(z.string()).default([]),
  /** Gases it may give off, mhchem. */
  gases: z.array(z.string()).default([]),
  /** File names in the cautions collection. */
  cautions: z.array(z.string()).min(1),
  summary: z.string().min(10).max(200),
  /** The stages at which one looks: the engine carries them out on every ion of the kind and fills the table. */
  tried: z.array(z.strictObject({ heading: z.string().min(3), steps: z.array(step).min(1) })).default([]),
});

export const caution = z.strictObject({
  title: z.string().min(3),
  kind: z.enum(["reagent", "gas", "operation"]),
  /** Said in words on every page that refers here: "corrosive to eyes". */
  hazard: z.string().min(3).max(60),
  /** The same as kinds of harm, for the search filter. */
  hazards: z.array(z.enum(HAZARD_KINDS)).min(1),
  /** The one thing to do, in a sentence or two: stands in the margin of a walkthrough. */
  summary: z.string().min(10).max(240),
  /** What it is about: reagents as steps name them (`NaOH(aq)`), gases (`NH3`) and verbs of steps (`warm`). */
  covers: z.array(z.string()).default([]),
});

/** Authored notes on one ion; all that can be computed of it is not written there. */
export const ionNotes = z.strictObject({
  ion: z.enum([...CATIONS, ...ANIONS]),
  /** The one thing to know it by: stands in lists. */
  summary: z.string().min(10).max(200),
  /** File names in the cautions collection. */
  cautions: z.array(z.string()).default([]),
});

export const method = z.strictObject({
  title: z.string().min(3),
  /** Place in the list, from 1. */
  order: z.int().min(1),
  summary: z.string().min(10).max(200),
});

/** A term of the trade with what it means. */
export const term = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/),
  term: z.string().min(3),
  /** Other names, and other forms of the word. */
  also: z.array(z.string()),
  /** Plain text: it stands in a tooltip too. */
  says: z.string().min(20).max(220),
});
