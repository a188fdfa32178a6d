/**
 * Reactions of the bench that textbooks describe and no potential, constant or gate here covers. A test in which one could happen is left
 * without an opinion, so that nobody's ion is ruled out by a reaction we do not know. A row goes when its chemistry comes.
 */

export interface NotPredicted {
  /** One component of each group in one tube. */
  readonly together: readonly (readonly string[])[];
  /** Lowest and highest pH of the mixture. */
  readonly fromPH?: number;
  readonly toPH?: number;
  /** Only when it is warmed or boiled, or stands in air, or is left cold at the end of its test. */
  readonly when?: "hot" | "in air" | "cold";
  /** Only once this pair of couples (potentials.ts) has reacted in the tube, or as long as this one has not. */
  readonly after?: string;
  readonly unless?: string;
  readonly source: string;
}

const VOGEL = "textbooks of qualitative analysis (Vogel), from memory";
const HALOGENS = ["Cl2", "Br2"];
const ALKALINE = { fromPH: 7.5 };

export const NOT_PREDICTED: readonly NotPredicted[] = [
  {
    together: [["Co^2+"], [...HALOGENS, "H2O2", "MnO4-", "[Fe(CN)6]^3-"]],
    ...ALKALINE,
    source: `${VOGEL}: cobalt(II) in alkali turns at once to brown-black cobalt(III) hydroxide, which makes peroxide fizz`,
  },
  {
    together: [["Co^2+"]],
    ...ALKALINE,
    when: "in air",
    source: `${VOGEL}: cobalt(II) hydroxide and the ammines turn brown in air, within minutes or hours`,
  },
  {
    together: [["Co^2+"], ["NO2-"]],
    toPH: 7,
    source: `${VOGEL}: yellow potassium hexanitritocobaltate(III) or its brown solution`,
  },
  {
    together: [["Ni^2+"], HALOGENS],
    ...ALKALINE,
    source: `${VOGEL}: chlorine and bromine, not peroxide, turn nickel(II) hydroxide to black nickel(III) oxide hydroxide`,
  },
  {
    together: [["Pb^2+"], [...HALOGENS, "H2O2"]],
    ...ALKALINE,
    source: `${VOGEL}: brown lead(IV) oxide comes from lead(II) in alkali, faster when warm`,
  },
  {
    together: [["I-"], ["H2O2"]],
    fromPH: 4,
    toPH: 9,
    when: "cold",
    unless: "H2O2/H2O with I2/I-",
    source:
      "textbooks, from memory: iodide makes neutral peroxide fizz and turns it yellow to brown within a minute or several",
  },
  {
    together: [["Ag+"], ["H2O2"]],
    ...ALKALINE,
    source: `${VOGEL}: silver oxide fizzes with peroxide and turns to black silver`,
  },
  {
    together: [["Cu^2+"], ["H2O2"]],
    ...ALKALINE,
    source: "textbooks, from memory: copper(II) hydroxide turns olive-brown with peroxide and makes it fizz",
  },
  {
    together: [["Fe^2+"], ["H2O2"]],
    fromPH: 4,
    toPH: 8,
    source:
      "textbooks, from memory: peroxide turns iron(II) yellow to rust-brown without acid too, and how much of it falls hangs on its age",
  },
  {
    together: [["I2"]],
    fromPH: 9,
    source: "textbooks, from memory: alkali takes the colour from iodine, and ammonia makes a dark solid with it",
  },
  {
    together: [["NO2-"], ["NH3"]],
    toPH: 9,
    when: "hot",
    source: `${VOGEL}: a nitrite boiled with an ammonium salt gives nitrogen`,
  },
  {
    together: [["Mn^2+"], ["MnO4-"]],
    fromPH: 1.5,
    source:
      "textbooks, from memory: without much acid manganate(VII) and manganese(II) make brown manganese(IV) oxide; the limit is our choice",
  },
  {
    together: [["Pb^2+", "Cu^2+", "Cu+"], ["S2O3^2-"]],
    when: "hot",
    source: `${VOGEL}: boiled with thiosulfate, lead and copper come down as black sulfides`,
  },
  {
    together: [["Cu^2+", "Zn^2+", "Co^2+", "Ni^2+"], ["[Fe(CN)6]^3-"]],
    source: `${VOGEL}: solids in their own colours with hexacyanidoferrate(III), yellow-green, orange, dark red-brown and yellow-brown; no solubility product at hand`,
  },
  {
    together: [["Cu^2+"], ["SCN-"]],
    source: `${VOGEL}: green, then a black solid with more; how strongly the green complex colours is not known`,
  },
  {
    together: [["SCN-"], ["MnO4-", ...HALOGENS]],
    source: "textbooks, from memory: thiocyanate is oxidised, in acid to hydrogen cyanide (see not-mixed.ts)",
  },
  {
    together: [["SCN-"], ["NO2-"]],
    toPH: 4,
    source: "textbooks, from memory: nitrous acid turns thiocyanate red, and the red goes on warming",
  },
  {
    together: [["CrO4^2-"], ["Fe^2+"]],
    fromPH: 3,
    source:
      "textbooks, from memory: iron(II) reduces chromate at once without acid too, and brown hydroxides of iron(III) and chromium(III) fall; no couple here covers it from pH 4, the limit is our choice",
  },
  {
    together: [["CrO4^2-"], ["Mn^2+", "Co^2+", "Ni^2+", "Al^3+"]],
    fromPH: 3,
    source: `${VOGEL}: brown chromates or basic chromates, a yellow one of aluminium, which acid dissolves; no solubility product at hand, the limit is our choice`,
  },
  {
    together: [["Ag+"], ["S2O3^2-"]],
    toPH: 4,
    unless: "S2O3^2-/Ag2S with SO4^2-/S2O3^2-",
    source: `${VOGEL}: acid breaks silver thiosulfate and its complex up, and brown to black silver sulfide falls; how soon is not known, the limit is our choice`,
  },
  {
    together: [["Ag+"]],
    after: "S2O3^2-/S with SO2/S2O3^2-",
    source: `${VOGEL}: what acid leaves of a thiosulfate blackens silver, for it takes minutes to fall apart; how much is left is not known`,
  },
  {
    together: [["Al^3+", "Cr^3+"], ["S2O3^2-"]],
    toPH: 7,
    when: "hot",
    source: `${VOGEL}: boiled with thiosulfate, aluminium and chromium(III) come down as hydroxides with sulfur while sulfur dioxide leaves`,
  },
  {
    together: [["Ca^2+"], ["[Fe(CN)6]^4-"]],
    source: `${VOGEL}: white dipotassium calcium hexacyanidoferrate(II); no solubility product at hand`,
  },
  {
    together: [["Fe^3+"], ["SO3^2-"]],
    when: "cold",
    source: `${VOGEL}: cold sulfite turns iron(III) red to red-brown, a complex that goes as the iron(III) is reduced; no constant at hand`,
  },
  {
    together: [["Cu^2+"], ["SO3^2-"]],
    source:
      "textbooks, from memory: sulfite turns copper(II) green or lets a yellow, red or brown copper(I) copper(II) sulfite fall, slowly or when warm; no constant at hand",
  },
  {
    together: [["I2"], ["Cl2", "MnO4-"]],
    source:
      "textbooks, from memory: an excess of chlorine takes the colour from iodine, to iodate, and manganate(VII) does the same slowly; no couple here covers it",
  },
];

/** Less than this of a component makes nothing that is seen. */
export const LEAST_PRESENT = {
  value: 1e-7,
  unit: "mol",
  source: "our choice: in 1 cm3, 0.02 g/dm3 of a solid of 200 g/mol, less than anyone sees (visibility.ts, `unseen`)",
} as const;

/** With zinc, whose gates hold for dilute acid in the cold and nothing else. */
export const ZINC_BEYOND = {
  actsOnIt: {
    ids: [
      ...["Cu^2+", "Cu+", "Ag+", "Pb^2+", "Fe^3+", "Fe^2+", "Co^2+", "Ni^2+", "Cr^3+"],
      ...["MnO4-", "CrO4^2-", "[Fe(CN)6]^3-", "I2", "Br2", "Cl2", "H2O2", "NO2-", "SO3^2-", "S2O3^2-"],
    ],
    source:
      "what zinc displaces, or what oxidises it: standard potentials, any data book; no gate says how far in minutes",
  },
  acid: {
    value: 3,
    unit: "pH",
    source: "our choice: below it nitrate takes part as well as acid (textbook: no pure hydrogen from nitric acid)",
  },
  alkali: {
    value: 11,
    unit: "pH",
    source: "our choice: above it zinc dissolves when warm, as zincate (textbook, from memory)",
  },
} as const;
