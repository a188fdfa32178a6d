/** The collections of pages. A practical's frontmatter is a Practical: the engine's own schema reads it. */
import { defineCollection } from "astro:content";
import { file, glob } from "astro/loaders";
import { z } from "astro/zod";
import { HAZARD_KINDS } from "./engine/constants/hazard-kinds.ts";
import { ANIONS, CATIONS } from "./engine/constants/ions.ts";
import { STANDARD_TESTS } from "./engine/constants/standard-tests.ts";
import { practical, step } from "./engine/practical.ts";

const pages = (folder: string) => glob({ pattern: "**/*.mdx", base: `./src/content/${folder}` });

const practicals = defineCollection({ loader: pages("practicals"), schema: practical });

const ionTests = defineCollection({
  loader: pages("ion-tests"),
  schema: z.strictObject({
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
  }),
});

const cautions = defineCollection({
  loader: pages("cautions"),
  schema: z.strictObject({
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
  }),
});

/** Authored notes on one ion; all that can be computed of it is not written there. */
const ions = defineCollection({
  loader: pages("ions"),
  schema: z.strictObject({
    ion: z.enum([...CATIONS, ...ANIONS]),
    /** The one thing to know it by: stands in lists. */
    summary: z.string().min(10).max(200),
    /** File names in the cautions collection. */
    cautions: z.array(z.string()).default([]),
  }),
});

const method = defineCollection({
  loader: pages("method"),
  schema: z.strictObject({
    title: z.string().min(3),
    /** Place in the list, from 1. */
    order: z.int().min(1),
    summary: z.string().min(10).max(200),
  }),
});

/** Terms of the trade, each with what it means. */
const glossary = defineCollection({
  loader: file("./src/content/glossary.yaml"),
  schema: z.strictObject({
    id: z.string().regex(/^[a-z-]+$/),
    term: z.string().min(3),
    /** Other names, and other forms of the word. */
    also: z.array(z.string()),
    /** Plain text: it stands in a tooltip too. */
    says: z.string().min(20).max(220),
  }),
});

export const collections = { practicals, ionTests, cautions, ions, method, glossary };
