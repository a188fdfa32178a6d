/**
 * The redox rows of the published table (tests/reference/qualitative-tables.json) as mixtures, and what the row's words mean for
 * substances. Bench strengths: samples 0.05 mol, acid 0.5 mol of sulfuric acid, manganate(VII) 0.002 mol (some drops), dichromate(VI)
 * 0.01 mol, peroxide 0.3 mol, all in 1 kg of water.
 */
import type { Surroundings } from "./mixture.ts";

type Amounts = Readonly<Record<string, number>>;

export interface PublishedRedox {
  /** Row of the table. */
  row: string;
  /** The row's own words on which the expectation rests: of `resultingColour`, `colour`, `gas` or `notes`. */
  says: string;
  mol: Amounts;
  around?: Surroundings;
  /** Species used up (below a thousandth of what was there) or, as a solid, formed; `none`: nothing happens. */
  gone?: string;
  made?: string;
  none?: true;
}

const acid: Amounts = { "H+": 1, "SO4^2-": 0.5 };
const alkali: Amounts = { "Na+": 1, "OH-": 1 };
const manganate: Amounts = { ...acid, "K+": 0.002, "MnO4-": 0.002 };
const dichromate: Amounts = { ...acid, "K+": 0.02, "Cr2O7^2-": 0.01 };
const iodide: Amounts = { "K+": 0.05, "I-": 0.05 };
const sodium = (ion: string, charge = 1): Amounts => ({ "Na+": 0.05 * charge, [ion]: 0.05 });
const nitrate = (ion: string, charge: number): Amounts => ({ [ion]: 0.05, "NO3-": 0.05 * charge });
const ironII: Amounts = { "Fe^2+": 0.05, "Cl-": 0.1 };
const warm = { celsius: 60 };

/** Adds amounts; `Na+` and others may stand in several. */
function together(...all: Amounts[]): Amounts {
  const sum: Record<string, number> = {};
  for (const one of all) for (const [id, mol] of Object.entries(one)) sum[id] = (sum[id] ?? 0) + mol;
  return sum;
}

// biome-ignore format: one row of the table a line
export const publishedRedox: readonly PublishedRedox[] = [
  // acidified manganate(VII)
  { row: "Q229", says: "purple to colourless", mol: together(manganate, ironII), gone: "MnO4-" },
  { row: "Q230", says: "purple to brown", mol: together(manganate, iodide), gone: "MnO4-", made: "I2" },
  { row: "Q231", says: "purple to orange", mol: together(manganate, sodium("Br-")), around: warm, gone: "MnO4-", made: "Br2" },
  { row: "Q231", says: "warm", mol: together(manganate, sodium("Br-")), none: true },
  { row: "Q232", says: "purple to colourless", mol: together(manganate, sodium("SO3^2-", 2)), gone: "MnO4-" },
  { row: "Q101", says: "purple to colourless", mol: together(manganate, sodium("SO3^2-", 2)), gone: "MnO4-" },
  { row: "Q233", says: "purple to colourless", mol: together(manganate, sodium("NO2-")), gone: "MnO4-" },
  { row: "Q093", says: "purple to colourless", mol: together(manganate, sodium("NO2-")), around: warm, gone: "MnO4-" },
  { row: "Q234", says: "purple to colourless", mol: together(manganate, sodium("S2O3^2-", 2)), gone: "MnO4-" },
  { row: "Q235", says: "purple to colourless", mol: together(manganate, { H2O2: 0.05 }), gone: "MnO4-", made: "O2(g)" },
  { row: "Q236", says: "purple stays", mol: together(manganate, sodium("Cl-")), none: true },
  { row: "Q236", says: "purple stays", mol: together(manganate, sodium("SO4^2-", 2)), none: true },
  { row: "Q236", says: "purple stays", mol: together(manganate, sodium("NO3-")), none: true },
  { row: "Q094", says: "purple stays", mol: together(manganate, sodium("NO3-")), none: true },
  { row: "Q094", says: "cold or warm", mol: together(manganate, sodium("NO3-")), around: warm, none: true },
  // dichromate(VI), chromium(III) and hydrogen peroxide
  { row: "Q223", says: "green to yellow", mol: together(alkali, nitrate("Cr^3+", 3), { H2O2: 0.3 }), around: warm, gone: "[Cr(OH)4]-", made: "CrO4^2-" },
  { row: "Q224", says: "green Cr3+ at the end", mol: together(dichromate, { H2O2: 0.3 }), gone: "Cr2O7^2-", made: "O2(g)" },
  { row: "Q225", says: "red-brown", mol: together(alkali, ironII, { H2O2: 0.3 }), made: "Fe(OH)3(s, amorphous)" },
  { row: "Q225", says: "O2", mol: together(alkali, ironII, { H2O2: 0.3 }), made: "O2(g)" },
  { row: "Q226", says: "pale green to yellow", mol: together(acid, ironII, { H2O2: 0.3 }), around: warm, gone: "Fe^2+", made: "Fe^3+" },
  { row: "Q227", says: "dark brown", mol: together(alkali, { "Mn^2+": 0.05, "SO4^2-": 0.05, H2O2: 0.3 }), made: "MnO2(s)" },
  { row: "Q227", says: "O2", mol: together(alkali, { "Mn^2+": 0.05, "SO4^2-": 0.05, H2O2: 0.3 }), made: "O2(g)" },
  { row: "Q228", says: "colourless to brown", mol: together(acid, iodide, { H2O2: 0.3 }), made: "I2" },
  { row: "Q237", says: "O2", mol: { H2O2: 0.5, "MnO2(s)": 0.01 }, gone: "H2O2", made: "O2(g)" },
  // chlorine water
  { row: "Q113", says: "colourless to orange", mol: together({ Cl2: 0.02 }, sodium("Br-")), gone: "Cl2", made: "Br2" },
  { row: "Q114", says: "colourless to brown", mol: together({ Cl2: 0.02 }, sodium("I-")), gone: "Cl2", made: "I2" },
  // potassium iodide, in some excess where it reacts
  { row: "Q197", says: "brown", mol: { "Cu^2+": 0.05, "SO4^2-": 0.05, "K+": 0.2, "I-": 0.2 }, made: "CuI(s)" },
  { row: "Q198", says: "brown", mol: together(nitrate("Fe^3+", 3), { "K+": 0.1, "I-": 0.1 }), made: "I2" },
  { row: "Q196", says: "yellow", mol: together(nitrate("Pb^2+", 2), iodide), none: true },
  { row: "Q199", says: "yellow", mol: together(nitrate("Ag+", 1), iodide), none: true },
  { row: "Q200", says: "no visible change", mol: together(nitrate("Al^3+", 3), iodide), none: true },
  { row: "Q201", says: "no visible change", mol: together(nitrate("Zn^2+", 2), iodide), none: true },
  { row: "Q202", says: "no visible change", mol: together(nitrate("Ca^2+", 2), iodide), none: true },
  { row: "Q203", says: "no visible change", mol: together(nitrate("Mg^2+", 2), iodide), none: true },
  { row: "Q204", says: "no visible change", mol: together(nitrate("Ba^2+", 2), iodide), none: true },
  // nitrate and nitrite
  { row: "Q090", says: "NH3", mol: together(alkali, sodium("NO3-"), { "Al(s)": 1 }), around: warm, made: "NH3" },
  { row: "Q091", says: "NH3", mol: together(alkali, sodium("NO2-"), { "Al(s)": 1 }), around: warm, made: "NH3" },
  { row: "Q092", says: "NO is released", mol: together(acid, sodium("NO2-")), made: "NO(g)" },
  { row: "Q096", says: "brown solution", mol: together(acid, ironII, ironII, sodium("NO2-")), made: "[FeNO]^2+" },
  { row: "Q095", says: "conc", mol: together(acid, ironII, sodium("NO3-")), none: true },
  // thiosulfate
  { row: "Q103", says: "pale yellow", mol: together(sodium("S2O3^2-", 2), { "H+": 0.5, "Cl-": 0.5 }), made: "S(s)" },
  { row: "Q104", says: "black", mol: { "Na+": 0.01, "S2O3^2-": 0.005, "Ag+": 0.02, "NO3-": 0.02 }, made: "Ag2S(s)" },
  { row: "Q104", says: "an excess of thiosulfate dissolves it first", mol: { "Na+": 0.2, "S2O3^2-": 0.1, "Ag+": 0.01, "NO3-": 0.01 }, none: true },
  { row: "Q105", says: "brown to colourless", mol: together(sodium("S2O3^2-", 2), { "K+": 0.03, "I-": 0.03, I2: 0.01 }), gone: "I3-" },
  // iron and the hexacyanidoferrates
  { row: "Q212", says: "dark blue", mol: together(ironII, { "K+": 0.06, "[Fe(CN)6]^3-": 0.02 }), made: "Fe4[Fe(CN)6]3(s)" },
  { row: "Q213", says: "pale blue", mol: together(ironII, { "K+": 0.08, "[Fe(CN)6]^4-": 0.02 }), around: { air: true }, made: "Fe4[Fe(CN)6]3(s)" },
  { row: "Q214", says: "brown", mol: together(nitrate("Fe^3+", 3), { "K+": 0.06, "[Fe(CN)6]^3-": 0.02 }), none: true },
  { row: "Q211", says: "dark blue", mol: together(nitrate("Fe^3+", 3), { "K+": 0.08, "[Fe(CN)6]^4-": 0.02 }), none: true },
  { row: "Q253", says: "yellow to pale green", mol: together(acid, nitrate("Fe^3+", 3), sodium("SO3^2-", 2)), around: warm, gone: "Fe^3+", made: "Fe^2+" },
  { row: "Q253", says: "warm", mol: together(acid, nitrate("Fe^3+", 3), sodium("SO3^2-", 2)), none: true },
  // reagents of other rows that change no oxidation state
  { row: "Q209", says: "blood-red", mol: together(nitrate("Fe^3+", 3), { "K+": 0.01, "SCN-": 0.01 }), none: true },
  { row: "Q106", says: "yellow to orange", mol: together(acid, { "K+": 0.1, "CrO4^2-": 0.05 }), none: true },
];
