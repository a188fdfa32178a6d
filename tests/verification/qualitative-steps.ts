/** Each published row's reagent text as steps an author would write, and the rows that cannot be carried out, by cause. */

/** Tests of one part; the last one is the one the row speaks of. */
export type Steps = unknown[][];

const take = { take: "1 cm3" };
const add = (reagent: string, volume = "1 cm3") => ({ add: reagent, volume });
const drops = (reagent: string) => ({ add: reagent, drops: 5 });
const excess = (reagent: string) => ({ add: reagent, until: "in excess" });
const warm = { warm: true };
const gas = (how: string) => ({ testGas: how });
/** "Boil off any ammonia first": until litmus stays red, which takes the 3 cm3 some minutes (common practice, no source). */
const foil = [
  [take, add("NaOH(aq)", "2 cm3"), { boil: "5 min" }],
  [{ add: "Al(s)", pieces: 1 }, warm, gas("damp red litmus")],
];
/** Plenty of carbon dioxide, and all of it through limewater. */
const carbonDioxideInExcess = [
  [{ take: "0.5 g" }, add("HCl(aq)", "8 cm3"), { leadThrough: "limewater", until: "in excess" }],
];
const silverAndAmmonia = [[take, add("HNO3(aq)", "0.5 cm3"), add("AgNO3(aq)")], [excess("NH3(aq)")]];

/** By the table's reagent text, where it says all. */
export const BY_REAGENT: Readonly<Record<string, Steps>> = {
  "dilute acid (HCl, HNO3)": [[take, add("HCl(aq)"), gas("limewater")]],
  "AgNO3(aq) without acid": [[take, add("AgNO3(aq)")]],
  "BaCl2(aq) or Ba(NO3)2(aq) without acid": [[take, add("BaCl2(aq)")]],
  "dilute HNO3 then AgNO3(aq)": [[take, add("HNO3(aq)")], [add("AgNO3(aq)")]],
  "then NH3(aq), dilute": silverAndAmmonia,
  "then NH3(aq), dilute or concentrated": silverAndAmmonia,
  "NaOH(aq) + Al foil (or Devarda's alloy), warm": foil,
  "NaOH(aq) + Al foil, warm": foil,
  "dilute HNO3 then Ba(NO3)2(aq)": [[take, add("HNO3(aq)")], [add("Ba(NO3)2(aq)")]],
  "dilute HCl then BaCl2(aq)": [[take, add("HCl(aq)")], [add("BaCl2(aq)")]],
  "BaCl2(aq)": [[take, add("BaCl2(aq)")]],
  "dilute acid, warm": [[take, add("HCl(aq)"), warm, gas("acidified manganate(VII) paper")]],
  "AgNO3(aq), neutral": [[take, drops("AgNO3(aq)")]],
  "AgNO3(aq), a few drops": [[take, drops("AgNO3(aq)")]],
  "AgNO3(aq)": [[take, add("AgNO3(aq)")]],
  "Pb(NO3)2(aq)": [[take, add("Pb(NO3)2(aq)")]],
  "MgSO4(aq)": [[take, add("MgSO4(aq)")]],
  "iodine solution": [[take, drops("I2(aq)")]],
  "acidified KMnO4(aq)": [[take, drops("acidified KMnO4(aq)")]],
  "acidified H2O2(aq)": [[take, add("acidified H2O2(aq)")]],
  "chlorine water (+ organic solvent)": [[take, add("Cl2(aq)")]],
  // No order in the row; textbooks add the nitrite to iron(II) sulfate that is acid already (Vogel, from memory).
  "FeSO4(aq) + dilute H2SO4": [[take, add("H2SO4(aq)"), add("FeSO4(aq)")]],
  // Textbooks let iodide be in excess; a row that says "a few drops" shows its precipitate on the way there.
  "KI(aq)": [[take, excess("KI(aq)")]],
  "K2CrO4(aq)": [[take, add("K2CrO4(aq)")]],
  "KSCN(aq)": [[take, drops("KSCN(aq)")]],
  "K4[Fe(CN)6](aq)": [[take, drops("K4[Fe(CN)6](aq)")]],
  "K3[Fe(CN)6](aq)": [[take, drops("K3[Fe(CN)6](aq)")]],
  "Na2CO3(aq)": [[take, add("Na2CO3(aq)")]],
  "add Na2CO3(aq)": [[take, add("Na2CO3(aq)")]],
  "dilute HCl": [[take, add("HCl(aq)")]],
  "dilute H2SO4": [[take, add("H2SO4(aq)")]],
  "NaOH(aq) excess then H2O2(aq), warm": [
    [take, excess("NaOH(aq)")],
    [add("H2O2(aq)"), warm],
  ],
  "H2O2(aq) in acid": [[take, add("H2SO4(aq)"), add("H2O2(aq)"), gas("glowing splint")]],
  "NaOH(aq) then H2O2(aq)": [
    [take, add("NaOH(aq)")],
    [add("H2O2(aq)"), gas("glowing splint")],
  ],
  "reduction with SO2 or sulfite": [[take, add("H2SO4(aq)"), add("Na2SO3(aq)"), warm]],
  "flame (clean nichrome wire, conc. HCl, roaring edge of blue flame)": [[{ flame: true }]],
  water: [[take]],
};

/** By row, where the reagent text is short for different things or the row speaks of one gas. */
export const BY_ROW: Readonly<Record<string, Steps>> = {
  // The row's own note: concentrated ammonia (14 to 15 mol/dm3, CRC Handbook, from memory) is used to get it all into solution.
  Q063: [[take, drops("NH3(aq)")], [{ add: "NH3(aq)", volume: "3 cm3", at: "15 mol/dm3" }]],
  Q078: [[take, add("HCl(aq)"), gas("limewater")]],
  Q081: [[{ take: "0.3 g" }, { heat: "strongly" }, gas("limewater")]],
  // The blue is that of strong nitrous acid: Vogel adds the cold acid to a solid nitrite (from memory).
  Q092: [[{ take: "0.5 g" }, add("H2SO4(aq)", "2 cm3")]],
  Q093: [[take, drops("acidified KMnO4(aq)"), warm]],
  Q094: [[take, drops("acidified KMnO4(aq)"), warm]],
  Q103: [[take, add("HCl(aq)"), warm, gas("acidified manganate(VII) paper")]],
  Q106: [[take, add("H2SO4(aq)")]],
  Q107: [[take, add("BaCl2(aq)")]],
  Q115: [[take, add("AgNO3(aq)")]],
  Q116: [[take, add("H2SO4(aq)"), add("BaCl2(aq)")]],
  Q118: [[take, add("NaOH(aq)"), warm, gas("damp red litmus")]],
  Q119: [[take, add("NaOH(aq)"), warm, gas("rod with hydrochloric acid")]],
  Q120: carbonDioxideInExcess,
  Q123: [[take, add("HCl(aq)", "2 cm3"), { add: "Zn(s)", pieces: 2 }, gas("lighted splint")]],
  Q124: [[take, drops("KMnO4(aq)"), gas("glowing splint")]],
  Q125: [[take, add("HCl(aq)"), warm, gas("acidified manganate(VII) paper")]],
  Q126: [[take, add("HCl(aq)"), warm, gas("acidified dichromate(VI) paper")]],
  Q127: [[{ take: "0.3 g" }, { heat: "strongly" }, gas("damp blue litmus")]],
  Q128: [[{ take: "0.3 g" }, { heat: "strongly" }, gas("anhydrous copper(II) sulfate")]],
  Q129: [[{ take: "0.3 g" }, { heat: "strongly" }, gas("cobalt(II) chloride paper")]],
  Q130: [[{ take: "0.3 g" }, { heat: "strongly" }, gas("damp blue litmus")]],
  Q226: [[take, add("acidified H2O2(aq)"), warm]],
  Q231: [[take, drops("acidified KMnO4(aq)"), warm]],
  Q237: [[take, drops("KMnO4(aq)"), gas("glowing splint")]],
  Q238: carbonDioxideInExcess,
  Q239: [[take, add("HCl(aq)"), warm, { leadThrough: "limewater" }]],
  Q240: [[take, drops("NH3(aq)")], [excess("NH3(aq)")]],
  Q241: [[take, drops("NaOH(aq)")]],
  Q243: [[take, add("Na2CO3(aq)")]],
};

/** Samples where the row's own column names none, or a gas: what gives it. */
export const SAMPLES: Readonly<Record<string, readonly string[]>> = {
  Q081: ["NaHCO3(s)"],
  Q092: ["NaNO2(s)"],
  Q115: ["CO3^2-", "SO3^2-"],
  Q116: ["SO3^2-"],
  Q118: ["NH4+"],
  Q119: ["NH4+"],
  Q120: ["Na2CO3(s)"],
  Q123: ["Cl-"],
  Q124: ["H2O2"],
  Q125: ["SO3^2-"],
  Q126: ["SO3^2-"],
  Q127: ["Cu(NO3)2(s)"],
  Q128: ["CuSO4(s)"],
  Q129: ["CuSO4(s)"],
  Q130: ["MgCl2(s)"],
  Q238: ["Na2CO3(s)"],
  Q239: ["SO3^2-"],
  Q240: ["Zn^2+", "Al^3+"],
  Q241: ["Al^3+", "Pb^2+"],
};

const CONCENTRATED = "needs a concentrated acid or alkali, for which the activity model does not hold";
const NO_CONSTANTS = "reagent without constants";
const NOT_MADE = "a gas that no test of the engine sets free";

/** Rows that cannot be compared, by cause. */
export const LEFT: Readonly<Record<string, string>> = {
  Q095: CONCENTRATED,
  Q117: "states an order of tests, no observation",
  Q121: NOT_MADE,
  Q122: NOT_MADE,
  Q131: "not to be made in class: the engine refuses to heat ammonium nitrate",
  Q222: NO_CONSTANTS,
  Q248: NO_CONSTANTS,
  Q249: NO_CONSTANTS,
  Q250: CONCENTRATED,
  Q251: NO_CONSTANTS,
  Q252: CONCENTRATED,
};
