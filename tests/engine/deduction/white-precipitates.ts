/**
 * Five cations that give white hydroxides, each as chloride, sulfate and nitrate, against the tests every class does. What is seen is
 * read from published notes, restated in tests/reference/qualitative-tables.json; the record ids stand beside each row.
 */
import type { PredictionTable, TableRecord } from "../../../src/engine/bench/prediction-table.ts";
import type { Observation, Statement } from "../../../src/engine/practical.ts";

const none: Observation = { none: true };
const white: Observation = { precipitate: { colour: "white", amount: "plain" } };
const slight: Observation = { precipitate: { colour: "white", amount: "slight" } };
const yellow: Observation = { precipitate: { colour: "yellow", amount: "plain" } };
const dissolves: Observation = { fate: "dissolves" };
const remains: Observation = { fate: "remains" };

const READINGS = { none, white, slight, yellow, dissolves, remains };
type Seen = keyof typeof READINGS;
const ORDER = Object.keys(READINGS) as Seen[];

const CATIONS = ["Zn^2+", "Al^3+", "Pb^2+", "Ca^2+", "Mg^2+"];
const ANIONS = ["Cl-", "SO4^2-", "NO3-"];

/** What each ion gives in each test; the first listed is the likelier. An ion not listed gives nothing of its own. */
const SHOWS: Record<string, { says: string; by: Record<string, Seen[]> }> = {
  // Q040, Q001, Q036, Q008, Q044.
  "a(i)": {
    says: "a few drops of sodium hydroxide",
    by: { "Zn^2+": ["white"], "Al^3+": ["white"], "Pb^2+": ["white"], "Ca^2+": ["white"], "Mg^2+": ["white"] },
  },
  // Q041, Q002, Q037, Q009, Q045.
  "a(ii)": {
    says: "sodium hydroxide in excess",
    by: {
      "Zn^2+": ["dissolves"],
      "Al^3+": ["dissolves"],
      "Pb^2+": ["dissolves"],
      "Ca^2+": ["remains"],
      "Mg^2+": ["remains"],
    },
  },
  // Q042, Q003, Q038, Q012 and Q014 (boards differ for calcium), Q046.
  "b(i)": {
    says: "a few drops of ammonia",
    by: { "Zn^2+": ["white"], "Al^3+": ["white"], "Pb^2+": ["white"], "Ca^2+": ["none", "slight"], "Mg^2+": ["white"] },
  },
  // Q043, Q004, Q039, Q013 and Q015, Q047.
  "b(ii)": {
    says: "ammonia in excess",
    by: {
      "Zn^2+": ["dissolves"],
      "Al^3+": ["remains"],
      "Pb^2+": ["remains"],
      "Ca^2+": ["none", "remains"],
      "Mg^2+": ["remains"],
    },
  },
  // Q084; the others stay clear (common practice, no source).
  c: { says: "dilute nitric acid, then silver nitrate", by: { "Cl-": ["white"] } },
  // Q097; the others stay clear (common practice, no source).
  d: { says: "dilute nitric acid, then barium nitrate", by: { "SO4^2-": ["white"] } },
  // Q196, Q200 to Q203.
  e: { says: "potassium iodide", by: { "Pb^2+": ["yellow"] } },
};

const salts = CATIONS.flatMap((cation) =>
  ANIONS.map((anion) => ({ formula: `${cation} ${anion}`, cations: [cation], anions: [anion] })),
);

/** Hardly soluble, so never given as a 0.1 mol/dm3 solution (common practice, no source). */
const INSOLUBLE = ["Pb^2+ Cl-", "Pb^2+ SO4^2-", "Ca^2+ SO4^2-"];

export const saltNamed = (cation: string, anion: string) =>
  salts.findIndex((salt) => salt.cations[0] === cation && salt.anions[0] === anion);

/** A table for samples with these letters, all given as solutions. */
export function whitePrecipitates(letters: string[], paper: Partial<Statement> = {}): PredictionTable {
  const all = salts.map((_, salt) => salt);
  const allowed = all.filter((salt) => !INSOLUBLE.includes(salts[salt].formula));
  const accepts = allowed.map((salt) =>
    Object.values(SHOWS).map(({ by }) => {
      const seen = by[salts[salt].cations[0]] ?? by[salts[salt].anions[0]] ?? ["none"];
      return seen.reduce((mask, reading) => mask | (1 << ORDER.indexOf(reading)), 0);
    }),
  );
  return {
    salts,
    cells: Object.entries(SHOWS).map(([id]) => ({
      id,
      samples: letters,
      readings: Object.values(READINGS),
      words: ORDER,
      agrees: ORDER.map((_, reading) => 1 << reading),
      comesOff: [],
    })),
    facts: [],
    sets: [
      {
        salts: allowed,
        accepts,
        main: allowed.map((salt) =>
          Object.values(SHOWS).map(({ by }) =>
            ORDER.indexOf((by[salts[salt].cations[0]] ?? by[salts[salt].anions[0]] ?? ["none"])[0]),
          ),
        ),
        atBorder: [],
        facts: accepts.map((row) => row.map(() => -1)),
        cannotBe: all
          .filter((salt) => !allowed.includes(salt))
          .map((salt) => ({ salt, reason: `${salts[salt].formula} does not dissolve to 0.1 mol/dm3` })),
      },
    ],
    samples: letters.map((label) => ({ label, set: 0 })),
    paper: { cations: CATIONS, anions: ANIONS, share: [], differ: [], same: [], contains: [], ...paper },
  };
}

/** Index of a reading. */
export const readingOf = (seen: Seen): number => ORDER.indexOf(seen);

/** A record written with the words above: `{ P: { "a(i)": "white" } }`. */
export function recordOf(seen: Record<string, Record<string, Seen>>): TableRecord {
  return Object.fromEntries(
    Object.entries(seen).map(([label, row]) => [
      label,
      Object.fromEntries(Object.entries(row).map(([cell, reading]) => [cell, readingOf(reading)])),
    ]),
  );
}
