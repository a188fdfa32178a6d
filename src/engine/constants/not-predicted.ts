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
  /** Only when it is warmed or boiled, or stands in air. */
  readonly when?: "hot" | "in air";
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
];
