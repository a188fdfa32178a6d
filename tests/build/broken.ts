/**
 * A sound practical and ways of breaking it by one edit each, named by the fault. It is a page of its own and not one of the course: these
 * change as they are improved, and the lines of the faults with them.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ContentFault } from "../../src/authoring/faults.ts";
import { checkPractical } from "../../src/build/check-practical.ts";
import { readPracticalFile } from "../../src/build/practical-files.ts";

export const ROOT = join(import.meta.dirname, "..", "..");
/** Where the page is said to lie. */
export const FILE = "src/content/practicals/lamp-room-shelf.mdx";
export const sound = readFileSync(join(import.meta.dirname, "sound-practical.mdx"), "utf8");

export type Edit = [find: string, put: string];

/** The text with each edit made at the first place after the last one; fails when a place is not there any more. */
export function edited(...edits: Edit[]): string {
  let done = "";
  let rest = sound;
  for (const [find, put] of edits) {
    const at = rest.indexOf(find);
    if (at < 0) throw new Error(`the practical does not hold ${JSON.stringify(find)}; choose another place to break`);
    done += rest.slice(0, at) + put;
    rest = rest.slice(at + find.length);
  }
  return done + rest;
}

/** All faults the check finds in a page with this text. */
export function faultsIn(text: string, file = FILE): ContentFault[] {
  const read = readPracticalFile(file, text);
  return "faults" in read ? read.faults : checkPractical(read);
}

/** Line and column (from 1) of a piece of text that stands only once in it. */
export function placeOf(text: string, piece: string): { line: number; column: number } {
  const at = text.indexOf(piece);
  if (at < 0 || text.indexOf(piece, at + 1) >= 0) throw new Error(`${JSON.stringify(piece)} does not stand just once`);
  const before = text.slice(0, at).split("\n");
  return { line: before.length, column: (before.at(-1) as string).length + 1 };
}

const ALL_ANIONS: Edit = ["  inAll: { cations: 3, anions: 2 }\n", "  inAll: { cations: 3 }\n"];
const NO_SHARE: Edit = ["  share:\n    - { samples: [S, T], ion: anion }\n", ""];
const SILVER = "    d: { precipitate: white }\n";
const FOIL_PART =
  "  - label: e\n    title: Foil\n    tests:\n      - steps:\n          - { take: 1 cm3 }\n          - { add: Al(s), pieces: 1 }\n          - { warm: true }\nrecord:\n";

const DICHROMATE_ONLY =
  "parts:\n  - label: a\n    title: Dichromate\n    tests:\n      - steps:\n          - { take: 1 cm3 }\n          - { add: acidified K2Cr2O7(aq), until: in excess }\nrecord: {}\n---";

export const BROKEN = {
  "an observation the engine contradicts": edited(
    ["  S:\n", "  S:\n"],
    ["b(ii): { fate: remains }", "b(ii): { fate: dissolves }"],
  ),
  "an answer the paper does not offer": edited(["salt: NH4Cl", "salt: NaCl"]),
  "an answer that is no such solution": edited(["salt: AlCl3", "salt: PbCl2"]),
  "an answer that is no simple salt": edited(["salt: ZnSO4", "salt: NaHSO4"]),
  "a number of ions the salts break": edited(["anions: 2 }", "anions: 3 }"]),
  "a shared ion the salts do not share": edited(["samples: [S, T], ion", "samples: [R, T], ion"]),
  "a difference the salts do not keep": edited([
    "  share:",
    "  differ:\n    - { samples: [R, S, T], ion: anion }\n  share:",
  ]),
  "tests that leave the answer open": edited(ALL_ANIONS, NO_SHARE),
  "a deciding test left out of the record": edited([SILVER, ""]),
  "an unknown reagent": edited(["{ add: NaOH(aq), drops: 5 }", "{ add: NaOH(conc), drops: 5 }"]),
  "a bad unit": edited(["concentration: 0.1 mol/dm3, salt: ZnSO4", "concentration: 0.1 M, salt: ZnSO4"]),
  "a bracket left open": edited(["cations: [NH4+, Mg^2+", "cations: [[NH4+, Mg^2+"]),
  "an entry written twice": edited([
    "    a(i): { precipitate: white }\n",
    "    a(i): { precipitate: white }\n    a(i): no visible change\n",
  ]),
  "an observation of a test not predicted": edited(
    ["record:\n", FOIL_PART],
    ["  R:\n", "  R:\n    e: { solution: blue }\n"],
  ),
  "a solution weighed like a solid": edited(["{ take: 1 cm3 }", "{ take: 0.2 g }"]),
  "an observation of a test that is not done": edited(["  T:\n", "  T:\n    d: { precipitate: white }\n"]),
  "a list of ions with too much to see in one test": edited(
    ["cations: [NH4+, Mg^2+, Ca^2+, Al^3+, Cu^2+, Fe^2+, Fe^3+, Zn^2+, Pb^2+]", "cations: advanced"],
    ["anions: [Cl-, NO3-, SO4^2-, CO3^2-]", "anions: advanced"],
  ).replace(/parts:.*---/s, DICHROMATE_ONLY),
  "no frontmatter": sound.replace("---\n", ""),
} as const;
