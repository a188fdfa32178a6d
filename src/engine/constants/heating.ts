/**
 * What a burner does to a solid in a hard-glass tube, and what thermochemistry alone cannot say of it: what waits although it could
 * happen, what begins before its gas reaches 1 atm, what melts, what crackles, what is not heated in class.
 */

export type Heating = "gently" | "strongly";

/**
 * Temperatures of the glass in the flame and of most of the sample, C. The flames were set before any comparison; how far the sample
 * stays behind, and the gates below, were chosen by someone who had read the published heating rows. Of 52 rows, 50 to 52 agree for
 * every strong flame from 650 to 850 C (sample 100 K cooler), and all for every gentle one from 200 to 400 C.
 */
export const BURNER: Readonly<Record<Heating, { celsius: number; sample: number; source: string }>> = {
  gently: {
    celsius: 300,
    sample: 250,
    source: "common practice, no source: small flame moved to and fro under the tube",
  },
  strongly: {
    celsius: 800,
    sample: 700,
    source:
      "common practice, no source: roaring flame of 900 C and more; hard glass begins to soften near 820 C (borosilicate, from memory). The sample lags behind the glass",
  },
};

/** Temperatures closer than this are not told apart: then the simpler change is taken. */
export const NOT_TOLD_APART = {
  value: 10,
  unit: "K",
  source: "our choice: well below the some tens of kelvin that figures at 298 K are good for",
} as const;

/**
 * Pressure, atm, from which a harmful gas is warned of although its solid is said to stay as it is. A thousandth of an atmosphere is 1000
 * parts in a million; sulfur dioxide is dangerous to life from a tenth of that.
 */
export const HARMFUL_TRACE = {
  value: 1e-3,
  unit: "atm",
  source:
    "our choice, on the side of safety; 100 parts in a million for sulfur dioxide: NIOSH pocket guide, from memory",
} as const;

/** Pressure above a heated salt from which some of it settles on the cool wall, though the flame does not drive it over. */
export const SETTLES_FROM = {
  value: 1e-2,
  unit: "atm",
  source:
    "our choice, below ammonium chloride over a gentle flame, above which a white ring is seen (40 mmHg at 245 C, CRC Handbook, from memory)",
} as const;

/** Gases seen as white fumes where they meet damp air. */
export const WHITE_FUMES = {
  of: ["SO3"],
  source:
    "Vogel, from memory: strongly heated iron(II) and copper(II) sulfates give off white fumes of sulfur trioxide",
} as const;

/** One reaction whose temperature is not the one of thermochemistry. */
export interface HeatGate {
  id: string;
  /** In words, for the page. */
  name: string;
  /** The solid that changes and, where it has several ways, one product of the way meant. */
  solid: string;
  product?: string;
  /** Temperature from which it is seen, C. */
  celsius: number;
  /** `later`: could happen sooner but is slow. `earlier`: begins before its gas reaches 1 atm. `no figures`: thermochemistry unknown. */
  kind: "later" | "earlier" | "no figures";
  /** Only part of the solid changes in the minutes of a test. */
  partly?: true;
  source: string;
}

const HANDBOOK = "handbook decomposition temperature, from memory";

// biome-ignore format: one gate a block
export const HEAT_GATES: readonly HeatGate[] = [
  { id: "malachite-slow", name: "green copper carbonate loses its gases only from about 200 C", solid: "CuCO3*Cu(OH)2", celsius: 200, kind: "later",
    source: HANDBOOK },
  { id: "iron-hydroxide-slow", name: "iron(III) hydroxide gives up its water only from about 200 C", solid: "Fe(OH)3", celsius: 200, kind: "later",
    source: "thermogravimetry of iron(III) oxide hydroxides, 200 to 300 C, from memory" },
  { id: "siderite-slow", name: "iron(II) carbonate gives off gas only from about 300 C", solid: "FeCO3", celsius: 300, kind: "later",
    source: "thermogravimetry of siderite, begins at 300 to 400 C, from memory" },
  { id: "magnesium-nitrate-slow", name: "magnesium nitrate gives brown gas only from about 330 C", solid: "Mg(NO3)2", celsius: 330, kind: "later",
    source: HANDBOOK },
  { id: "manganate-slow", name: "potassium manganate(VII) gives oxygen only from about 240 C", solid: "KMnO4", celsius: 240, kind: "later",
    source: HANDBOOK },
  { id: "thiosulfate-slow", name: "sodium thiosulfate falls apart only from about 220 C", solid: "Na2S2O3", celsius: 220, kind: "no figures",
    source: "textbook reaction (sulfate and pentasulfide), temperature from memory" },
  { id: "polysulfide-sulfur", name: "polysulfide loses part of its sulfur above sulfur's boiling point", solid: "Na2S5", celsius: 450, kind: "no figures", partly: true,
    source: "boiling point of sulfur 445 C (CRC, from memory); that sulfur distils off a heated thiosulfate: textbook dry test, from memory" },
  { id: "sulfite-slow", name: "sodium sulfite turns to sulfate and sulfide only from about 600 C", solid: "Na2SO3", celsius: 600, kind: "later",
    source: "textbook reaction, temperature from memory" },
  { id: "ammonium-sulfate-ammonia", name: "ammonium sulfate loses ammonia from about 280 C", solid: "(NH4)2SO4", product: "NH4HSO4", celsius: 280, kind: "earlier",
    source: `${HANDBOOK}; the hydrogensulfate left is a melt, whose entropy the figures for solids leave out` },
  { id: "copper-sulfate-blackens", name: "copper(II) sulfate blackens from about 650 C", solid: "CuSO4", product: "SO3", celsius: 650, kind: "earlier",
    source: "thermogravimetry, from memory: loses sulfur trioxide from 600 to 650 C, by way of a basic sulfate without figures here" },
  { id: "chromium-sulfate", name: "chromium(III) sulfate loses sulfur trioxide from about 700 C", solid: "Cr2(SO4)3", product: "SO3", celsius: 700, kind: "no figures",
    source: HANDBOOK },
  { id: "ammonium-carbonate", name: "ammonium carbonate falls apart from about 60 C", solid: "(NH4)2CO3", celsius: 60, kind: "no figures",
    source: `${HANDBOOK} (58 C)` },
  { id: "ammonium-nitrate-slow", name: "ammonium nitrate falls apart from about 200 C", solid: "NH4NO3", celsius: 200, kind: "later", source: HANDBOOK },
  { id: "ammonium-nitrite-slow", name: "ammonium nitrite falls apart from about 60 C", solid: "NH4NO2", celsius: 60, kind: "later", source: HANDBOOK },
  { id: "dichromate-slow", name: "ammonium dichromate(VI) falls apart from about 180 C", solid: "(NH4)2Cr2O7", celsius: 180, kind: "later", source: HANDBOOK },
];

/** Solids that take oxygen from the air of the tube while hot. */
export const AIR_GATES: readonly {
  id: string;
  name: string;
  solid: string;
  becomes: string;
  celsius: number;
  source: string;
}[] = [
  {
    id: "air-iron",
    name: "hot iron(II) oxide takes oxygen from the air",
    solid: "FeO",
    becomes: "Fe2O3",
    celsius: 200,
    source: "textbook reaction (iron(II) oxide from the carbonate glows in air), temperature from memory",
  },
  {
    id: "air-manganese",
    name: "hot manganese(II) oxide takes oxygen from the air",
    solid: "MnO",
    becomes: "Mn2O3",
    celsius: 200,
    source: "textbook reaction (the residue of the carbonate is black-brown in air), temperature from memory",
  },
];

/**
 * A solid that melts first gives off its gas sooner: what stays behind dissolves in the melt and is dilute. A thousandth of a gram of
 * salt is then seen: 0.2 to 0.3 cm3 of gas, the limits `bubbles` and `limewater` of visibility.ts.
 */
export const MELT_GATE = {
  id: "melt",
  name: "what is left dissolves in the melt, so bubbles come early and slowly",
  share: 1e-3,
  source: "ideal dilute melt; the share from the limits of sight in visibility.ts",
} as const;

/** Nitrogen monoxide is not what is seen: on the way out it takes oxygen back as it cools. */
export const NITROGEN_MONOXIDE_GATE = {
  id: "brown-on-cooling",
  name: "nitrogen monoxide from very hot salts browns with oxygen in the cooler tube",
  source: "textbook reaction, from memory",
} as const;

/** Melting points, C, up to which a melt can be seen; hydrates melt in their own water. CRC Handbook, physical constants, from memory. */
// biome-ignore format: a table
export const MELTING_POINTS: Readonly<Record<string, number>> = {
  LiCl: 610, NaCl: 801, KCl: 771, NaBr: 747, KBr: 734, LiBr: 550, CaBr2: 742, SrBr2: 657, BaBr2: 857, NaI: 661, KI: 681, MgCl2: 714, CaCl2: 775, SrCl2: 874, BaCl2: 961, MnCl2: 650, FeCl2: 677,
  FeCl3: 308, CoCl2: 737, CuCl: 423, ZnCl2: 325, PbCl2: 501, PbBr2: 371, PbI2: 410, AgCl: 455, AgBr: 432, AgI: 558,
  LiNO3: 253, NaNO3: 307, KNO3: 334, "Ca(NO3)2": 561, "Sr(NO3)2": 570, "Ba(NO3)2": 590, AgNO3: 210, NaNO2: 284, KNO2: 438,
  Li2CO3: 732, Na2CO3: 856, K2CO3: 899, Na2SO4: 884, K2SO4: 1069, LiOH: 473, NaOH: 323, KOH: 406,
  NH4NO3: 170, NH4HSO4: 147, PbO: 887, I2: 114, S: 115,
  "Na2S2O3*5H2O": 48, "Mg(NO3)2*6H2O": 89, "Ca(NO3)2*4H2O": 43, "Zn(NO3)2*6H2O": 36, "Cu(NO3)2*3H2O": 114, "Al(NO3)3*9H2O": 73,
  "Fe(NO3)3*9H2O": 47, "KAl(SO4)2*12H2O": 92, "KCr(SO4)2*12H2O": 89, "NH4Fe(SO4)2*12H2O": 40, "Al2(SO4)3*16H2O": 86,
  "FeSO4*7H2O": 64, "CaCl2*6H2O": 30, "MgCl2*6H2O": 117, "MnCl2*4H2O": 58, "CoCl2*6H2O": 86, "FeCl3*6H2O": 37,
};

/** Solids that crackle when heated: crystals burst by trapped water or by their own gas. Textbook lists, from memory. */
export const CRACKLES: readonly string[] = ["NaCl", "KCl", "Pb(NO3)2", "Ba(NO3)2", "KMnO4", "K2SO4"];

/**
 * Salts of the store without water of crystallisation that turn damp in air (CRC Handbook, physical constants: deliquescent; from memory).
 * Heated, they may or may not leave drops on the cool wall; steam takes hydrogen chloride from a chloride as from a drying hydrate.
 */
export const TURNS_DAMP: readonly string[] = ["ZnCl2", "LiCl", "K2CO3"];

/** Salts not heated dry in class: those that hold all of these ions. Defer to the teacher in charge and the local rules. */
export const NOT_HEATED: readonly { ions: readonly string[]; reason: string; source: string }[] = [
  {
    ions: ["NH4+", "NO3-"],
    reason: "Heated ammonium nitrate can explode. Never heat the solid in class.",
    source: "the store's hazard note; common practice",
  },
  {
    ions: ["NH4+", "NO2-"],
    reason: "Heated ammonium nitrite can explode. Never heat the solid in class.",
    source: "common practice, from memory",
  },
  {
    ions: ["Cr2O7^2-"],
    reason: "A heated dichromate(VI) can send up toxic dust that can cause cancer. Not in class tubes.",
    source: "common practice, from memory (CLEAPSS)",
  },
  {
    ions: ["CrO4^2-"],
    reason: "Dust of a chromate(VI) can cause cancer when breathed in. Do not heat the dry solid in class.",
    source: "the store's hazard note (CLEAPSS Student Safety Sheet 47)",
  },
  {
    ions: ["Co^2+"],
    reason: "Dust of a cobalt salt can cause cancer when breathed in. Do not heat the dry solid in class.",
    source: "the store's hazard note (CLP)",
  },
  {
    ions: ["Ni^2+"],
    reason: "Dust of a nickel salt can cause cancer when breathed in. Do not heat the dry solid in class.",
    source: "the store's hazard note (CLP)",
  },
];
