/** The things that make a test lie: for each, the tube as it is and the same tube without the disturbance. */
import { parseFormula } from "../../formula/parse.ts";
import type { SimpleSalt } from "../salt.ts";
import type { TestedSalt } from "../sample.ts";
import { type Aim, acidFollows, type Line } from "./line.ts";
import { type Trial, wellAcidified, withNitrates, withOldAlkali, withTapWater } from "./trial.ts";

export type Kind =
  | "chloride or sulfate of a reagent"
  | "ammonium not boiled off"
  | "no acid, or too little"
  | "nitrite"
  | "sulfur dioxide"
  | "silver sulfate"
  | "tap water"
  | "old alkali"
  | "a hydroxide in the way";

export interface Disturbance {
  kind: Kind;
  aims: readonly Aim[];
  /** The tube with the disturbance and without it; undefined where it has no part in this line. */
  compare(line: Line, salt: SimpleSalt, asIs: Trial): { disturbed: Trial; clean: Trial } | undefined;
  /** What to do about it. */
  remedy: string;
}

/** Ions that show nothing and disturb nothing. */
const SILENT_CATIONS = ["Na+", "K+", "Li+"];
const HALIDES = ["Cl-", "Br-", "I-"];

/** The salt with sodium for its cation, charge for charge. */
function asSodium(salt: SimpleSalt, tested: TestedSalt): TestedSalt {
  const charge = parseFormula(salt.cation).charge * salt.ions[salt.cation];
  return { ...tested, ions: { "Na+": charge, [salt.anion]: salt.ions[salt.anion] } };
}

/** The salt with nitrate for its anion, charge for charge. */
function asNitrate(salt: SimpleSalt, tested: TestedSalt): TestedSalt {
  const charge = -parseFormula(salt.anion).charge * salt.ions[salt.anion];
  return { ...tested, ions: { [salt.cation]: salt.ions[salt.cation], "NO3-": charge } };
}

/** The salt with chloride for its anion, charge for charge: it gives no gas in dilute acid or alkali. */
function asChloride(salt: SimpleSalt, tested: TestedSalt): TestedSalt {
  const charge = -parseFormula(salt.anion).charge * salt.ions[salt.anion];
  return { ...tested, ions: { [salt.cation]: salt.ions[salt.cation], "Cl-": charge } };
}

const SULFUROUS = ["SO3^2-", "S2O3^2-"];

/** In this order: what an earlier one explains is not told again by a later one. */
export const DISTURBANCES: readonly Disturbance[] = [
  {
    kind: "chloride or sulfate of a reagent",
    aims: ["halide", "sulfate"],
    compare: (_, __, asIs) => ({ disturbed: asIs, clean: { ...asIs, part: withNitrates(asIs.part) } }),
    remedy: "Acidify with nitric acid and take barium nitrate.",
  },
  {
    kind: "ammonium not boiled off",
    aims: ["nitrate"],
    compare: (_, salt, asIs) =>
      salt.cation === "NH4+" ? { disturbed: asIs, clean: { ...asIs, salt: asSodium(salt, asIs.salt) } } : undefined,
    remedy: "Boil with the alkali until damp red litmus stays red, then add the foil.",
  },
  {
    // Textbooks of qualitative analysis, from memory, as the remedy: aluminium in alkali reduces nitrite as it does nitrate.
    kind: "nitrite",
    aims: ["nitrate"],
    compare: (_, salt, asIs) =>
      salt.anion === "NO2-" ? { disturbed: asIs, clean: { ...asIs, salt: asChloride(salt, asIs.salt) } } : undefined,
    remedy: "Add dilute acid to a fresh drop or two in a fume cupboard: nitrite gives brown fumes, nitrate does not.",
  },
  {
    // Boards' gas tables and textbooks, from memory, as the remedy.
    kind: "sulfur dioxide",
    aims: ["carbonate"],
    compare: (_, salt, asIs) =>
      SULFUROUS.includes(salt.anion)
        ? { disturbed: asIs, clean: { ...asIs, salt: asChloride(salt, asIs.salt) } }
        : undefined,
    remedy:
      "Hold acidified manganate(VII) paper into the gas: sulfur dioxide takes its colour, carbon dioxide does not.",
  },
  {
    kind: "silver sulfate",
    aims: ["halide"],
    compare: (_, salt, asIs) =>
      salt.anion === "SO4^2-" ? { disturbed: asIs, clean: { ...asIs, salt: asNitrate(salt, asIs.salt) } } : undefined,
    remedy: "Dilute the sample with deionised water: silver sulfate dissolves, a silver halide does not.",
  },
  {
    kind: "no acid, or too little",
    aims: ["halide", "sulfate"],
    compare: (line, _, asIs) =>
      acidFollows(line) ? undefined : { disturbed: asIs, clean: { ...asIs, part: wellAcidified(asIs.part) } },
    remedy: "First add dilute nitric acid until blue litmus turns red and the fizzing stops.",
  },
  {
    kind: "a hydroxide in the way",
    aims: ["halide", "which halide", "sulfate"],
    compare: ({ aim }, salt, asIs) =>
      SILENT_CATIONS.includes(salt.cation) || (aim === "which halide" && !HALIDES.includes(salt.anion))
        ? undefined
        : { disturbed: asIs, clean: { ...asIs, salt: asSodium(salt, asIs.salt) } },
    remedy: "Take the cation out first: sodium carbonate, filter, acidify the filtrate with nitric acid.",
  },
  {
    kind: "tap water",
    aims: ["halide"],
    compare: (_, __, asIs) => ({ disturbed: withTapWater(asIs), clean: asIs }),
    remedy: "Use deionised water, also to rinse.",
  },
  {
    kind: "old alkali",
    aims: ["hydroxide"],
    compare: (_, __, asIs) => ({ disturbed: { ...asIs, part: withOldAlkali(asIs.part) }, clean: asIs }),
    remedy: "Use freshly made alkali, or take a faint white cloud for carbonate.",
  },
];
