/** The boards' published observations as rows, and each row's reagent text as a procedure the engine can carry out. */
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
  alsoAccept?: Partial<PublishedObservation>[];
  status: string;
}

const file = reference<{ records: PublishedRow[]; meta: { colourSynonyms: Record<string, string[]> } }>(
  "qualitative-tables.json",
);
export const publishedRows = file.records;
/** Colour words the boards use for one another. */
export const colourSynonyms = file.meta.colourSynonyms;

/** The table's way of writing an ion ("SO4 2-", "Al3+") in mhchem. */
export function mhchem(ion: string): string {
  const bare = ion.replace(/\(aq\)$/, "").trim();
  const spaced = /^(.+) (\d[+-])$/.exec(bare);
  if (spaced) return `${spaced[1]}^${spaced[2]}`;
  const metal = /^([A-Z][a-z]?)(\d)([+-])$/.exec(bare);
  return metal ? `${metal[1]}^${metal[2]}${metal[3]}` : bare;
}

/** One test as an author would write its steps; the last one is the one the row speaks of. */
type Steps = unknown[][];

const take = { take: "1 cm3" };
const add = (reagent: string, volume = "1 cm3") => ({ add: reagent, volume });
const drops = (reagent: string) => ({ add: reagent, drops: 5 });
const excess = (reagent: string) => ({ add: reagent, until: "in excess" });

/** The steps for a row of the cation and alkali section, or undefined for a stage that is not a test of its own. */
export function alkaliSteps(reagent: string, stage: string): Steps | undefined {
  const few = [take, drops(reagent)];
  switch (stage) {
    case "a few drops":
      return [few];
    case "in excess":
    case "a few drops or in excess":
      return [few, [excess(reagent)]];
    case "in excess, then warmed":
      return [few, [excess(reagent)], [{ warm: true }, { testGas: "damp red litmus" }]];
    default:
      return undefined;
  }
}

/**
 * Steps for the other rows, by the table's reagent text (and stage where it matters). Rows that are not here need reagents or
 * operations the engine does not predict yet.
 */
export const OTHER_STEPS: Record<string, Steps> = {
  "dilute acid (HCl, HNO3)": [[take, add("HCl(aq)"), { testGas: "limewater" }]],
  "AgNO3(aq) without acid": [[take, add("AgNO3(aq)")]],
  "BaCl2(aq) or Ba(NO3)2(aq) without acid": [[take, add("BaCl2(aq)")]],
  "dilute HNO3 then AgNO3(aq)": [[take, add("HNO3(aq)")], [add("AgNO3(aq)")]],
  "then NH3(aq), dilute": [[take, add("HNO3(aq)", "0.5 cm3"), add("AgNO3(aq)")], [excess("NH3(aq)")]],
  "then NH3(aq), dilute or concentrated": [[take, add("HNO3(aq)", "0.5 cm3"), add("AgNO3(aq)")], [excess("NH3(aq)")]],
  "NaOH(aq) + Al foil (or Devarda's alloy), warm": [
    [take, add("NaOH(aq)", "2 cm3")],
    [{ add: "Al(s)", pieces: 1 }, { warm: true }, { testGas: "damp red litmus" }],
  ],
  "dilute HNO3 then Ba(NO3)2(aq)": [[take, add("HNO3(aq)")], [add("Ba(NO3)2(aq)")]],
  "dilute HCl then BaCl2(aq)": [[take, add("HCl(aq)")], [add("BaCl2(aq)")]],
  "BaCl2(aq)": [[take, add("BaCl2(aq)")]],
  "dilute acid, warm": [[take, add("HCl(aq)"), { warm: true }, { testGas: "acidified manganate(VII) paper" }]],
  "AgNO3(aq), neutral": [[take, drops("AgNO3(aq)")]],
  "Pb(NO3)2(aq)": [[take, add("Pb(NO3)2(aq)")]],
  // Textbooks let iodide be in excess; a row that says "a few drops" shows its precipitate on the way there.
  "KI(aq)": [[take, excess("KI(aq)")]],
  "dilute HCl": [[take, add("HCl(aq)")]],
  "dilute H2SO4": [[take, add("H2SO4(aq)")]],
  "flame (clean nichrome wire, conc. HCl, roaring edge of blue flame)": [[{ flame: true }]],
};
