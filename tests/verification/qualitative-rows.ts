/** The boards' published observations as rows, and each row as one or more trials the engine can carry out. */
import { type SimpleSalt, saltOf } from "../../src/engine/bench/salt.ts";
import type { TestedSalt } from "../../src/engine/bench/sample.ts";
import { ANIONS, CATIONS } from "../../src/engine/constants/ions.ts";
import { BY_REAGENT, BY_ROW, LEFT, SAMPLES, type Steps } from "./qualitative-steps.ts";
import { reference } from "./reference.ts";

export interface PublishedObservation {
  precipitate: boolean | "slight" | null;
  colour: string | null;
  solubleInExcess: boolean | string | null;
  resultingColour: string | null;
  gas: string | null;
  notes: string | null;
}

export interface PublishedRow {
  id: string;
  section: string;
  ion: string;
  reagent: string;
  stage: string;
  observation: PublishedObservation;
  /** The board, where boards differ. */
  board?: string;
  alsoAccept?: Partial<PublishedObservation>[];
  status: string;
  /** Keys of the file's list of sources. */
  sources: string[];
}

const file = reference<{ records: PublishedRow[]; meta: { colourSynonyms: Record<string, string[]> } }>(
  "qualitative-tables.json",
);
export const publishedRows = file.records;
/** Colour words the boards use for one another. */
export const colourSynonyms = file.meta.colourSynonyms;

/** One sample taken through the steps of a row; the last test is the one the row speaks of. */
export interface Trial {
  /** The row's id, with the sample where the row speaks of several. */
  id: string;
  sample: string;
  salt: TestedSalt;
  /** The same as a salt of a paper, where it is one. */
  simple: SimpleSalt | undefined;
  steps: Steps;
  expected: PublishedObservation;
}

/** Strength of the sample, mol/dm3: the usual one of bench solutions (RSC: 0.1 to 0.5). */
const SAMPLE = 0.1;

/** The table's way of writing an ion ("SO4 2-", "Al3+") in mhchem. */
export function mhchem(ion: string): string {
  const bare = ion.replace(/\(aq\)$/, "").trim();
  const spaced = /^(.+) (\d[+-])$/.exec(bare);
  if (spaced) return `${spaced[1]}^${spaced[2]}`;
  const metal = /^([A-Z][a-z]?)(\d)([+-])$/.exec(bare);
  return metal ? `${metal[1]}^${metal[2]}${metal[3]}` : bare;
}

/** The trials of a row, or why there are none. */
export function trialsOf(row: PublishedRow): Trial[] | string {
  const left = LEFT[row.id];
  if (left !== undefined) return left;
  const steps = BY_ROW[row.id] ?? (row.section === "cation-alkali" ? alkaliSteps(row) : BY_REAGENT[row.reagent]);
  if (!steps) return "reagent or operation not covered";
  const samples = SAMPLES[row.id] ?? namesIn(row.ion);
  const unknown = samples.filter((name) => saltBringing(name) === undefined);
  if (unknown.length > 0) return "ion not covered";
  return samples.map((name, index) => ({
    id: samples.length > 1 ? `${row.id} ${name}` : row.id,
    sample: name,
    salt: saltBringing(name) as TestedSalt,
    simple: listed.includes(name) ? saltWith(name) : undefined,
    steps,
    expected: observationOf(row, name, index, samples.length),
  }));
}

/** "Ca2+ / Ba2+", "Cl-, SO4 2-, NO3-": the ions of a row. */
const namesIn = (ion: string): string[] =>
  ion
    .split(/\s*\/\s*|,\s*/)
    .map((name) => mhchem(name))
    .flatMap((name) => (name === "Group 1" ? ["Li+", "Na+", "K+"] : [name]));

const listed: readonly string[] = [...CATIONS, ...ANIONS];

/** Samples that are no simple salt of the ion lists: ions of one formula unit, and strength. */
const OTHER_SAMPLES: Readonly<Record<string, TestedSalt>> = {
  "Cr2O7^2-": { ions: { "K+": 2, "CrO4^2-": 2, "H+": 2, H2O: -1 }, molPerDm3: SAMPLE },
  "MnO4-": { ions: { "K+": 1, "MnO4-": 1 }, molPerDm3: SAMPLE },
  H2O2: { ions: { H2O2: 1 }, molPerDm3: SAMPLE },
};

const saltWith = (ion: string): SimpleSalt => (ion.endsWith("+") ? saltOf(ion, "NO3-") : saltOf("Na+", ion));

/** The sample that brings the ion: nitrates for cations, sodium salts for anions, a solid by its formula. */
export function saltBringing(name: string): TestedSalt | undefined {
  if (listed.includes(name)) {
    return { ions: saltWith(name).ions, molPerDm3: SAMPLE, solid: "x" };
  }
  return OTHER_SAMPLES[name] ?? SOLIDS[name];
}

/** Solids that are heated, or met by acid, for a gas. */
const SOLIDS: Readonly<Record<string, TestedSalt>> = {
  "NaHCO3(s)": { ions: saltOf("Na+", "HCO3-").ions, solid: "NaHCO3" },
  "NaNO2(s)": { ions: saltOf("Na+", "NO2-").ions, solid: "NaNO2" },
  "Cu(NO3)2(s)": { ions: saltOf("Cu^2+", "NO3-").ions, solid: "Cu(NO3)2*3H2O" },
  "Na2CO3(s)": { ions: saltOf("Na+", "CO3^2-").ions, solid: "Na2CO3" },
  "CuSO4(s)": { ions: saltOf("Cu^2+", "SO4^2-").ions, solid: "CuSO4*5H2O" },
  "MgCl2(s)": { ions: saltOf("Mg^2+", "Cl-").ions, solid: "MgCl2*6H2O" },
};

/** What one of several samples of a row should show: some rows say in words which of them dissolves, or give colours in their order. */
function observationOf(row: PublishedRow, name: string, index: number, count: number): PublishedObservation {
  const seen = row.observation;
  if (count === 1) return seen;
  const { solubleInExcess } = seen;
  const colour = seen.colour?.split(" / ")[index] ?? seen.colour;
  if (typeof solubleInExcess !== "string") return { ...seen, colour };
  const plain = name.replace("^", "");
  const dissolves = solubleInExcess.includes(plain) && !solubleInExcess.includes(`${plain} no`);
  const resultingColour = dissolves ? (seen.resultingColour?.replace(/ for .*$/, "") ?? null) : null;
  return { ...seen, colour, solubleInExcess: dissolves, resultingColour };
}

/** The steps for a row of the cation and alkali section, or undefined for a stage that is not a test of its own. */
function alkaliSteps({ reagent, stage }: PublishedRow): Steps | undefined {
  const few = [{ take: "1 cm3" }, { add: reagent, drops: 5 }];
  const excess = { add: reagent, until: "in excess" };
  switch (stage) {
    case "a few drops":
      return [few];
    case "in excess":
    case "a few drops or in excess":
      return [few, [excess]];
    case "in excess, then warmed":
      return [few, [excess], [{ warm: true }, { testGas: "damp red litmus" }]];
    default:
      return undefined;
  }
}
