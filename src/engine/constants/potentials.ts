/**
 * Standard potentials at 25 C of the couples a test tube meets, on the hydrogen scale, V. Each half-equation is a reduction, written in
 * species of log-k (and the metals Al(s), Zn(s)). Their change with temperature is not counted: a few hundredths of a volt at 100 C.
 */
import type { Opening } from "./redox-gates.ts";

export const potentialSources = {
  crc: "CRC Handbook of Chemistry and Physics, Electrochemical Series",
  bard: "A. J. Bard, R. Parsons and J. Jordan, Standard Potentials in Aqueous Solution (1985)",
  bardTabulated:
    "Standard reduction potentials tabulated after Bard, Parsons and Jordan in D. Harvey, Analytical Chemistry 2.1, appendix 13",
  derived:
    "derived from other figures of these tables, or from Gibbs energies of formation of the NBS tables recalled, see `why`",
} as const;

export interface Couple {
  /** Oxidised form / reduced form. */
  readonly id: string;
  /** The reduction to which `volts` belongs. */
  readonly half: string;
  /** How equations show it, where that differs; the change of components is the same. */
  readonly written?: string;
  readonly volts: number;
  /** Between these pH (from included, to excluded) this form of the couple is at work. */
  readonly fromPH?: number;
  readonly toPH?: number;
  /** When the oxidised form acts on a reductant, and the reduced form on an oxidant, unless a pair in redox-gates.ts says otherwise. */
  readonly oxidises: Opening;
  readonly isOxidised: Opening;
  /** Its oxygen comes from the air above, not from the solution. */
  readonly fromAir?: true;
  /** Pressure of the gas it makes, atm, where it does not have to bubble against the air. */
  readonly gasAtm?: number;
  readonly source: keyof typeof potentialSources;
  /** The figure is remembered, not read in its source. */
  readonly memory?: true;
  readonly why?: string;
}

// biome-ignore format: one couple a block, its chemistry on the first line
export const couples: readonly Couple[] = [
  { id: "MnO4-/Mn^2+", half: "MnO4- + 8 H+ + 5 e- = Mn^2+ + 4 H2O", volts: 1.507, toPH: 4, oxidises: "cold", isOxidised: "no",
    source: "crc", memory: true },
  { id: "MnO4-/MnO2", half: "MnO4- + 4 H+ + 3 e- = MnO2(s) + 2 H2O", volts: 1.679, fromPH: 4, oxidises: "cold", isOxidised: "no",
    source: "crc", memory: true,
    why: "without acid manganate(VII) stops at the brown oxide" },
  { id: "MnO2/Mn^2+", half: "MnO2(s) + 4 H+ + 2 e- = Mn^2+ + 2 H2O", volts: 1.224, toPH: 7, oxidises: "cold", isOxidised: "no",
    source: "crc", memory: true },
  { id: "MnO2/Mn(OH)2", half: "MnO2(s) + 2 H2O + 2 e- = Mn(OH)2(s) + 2 OH-", volts: -0.05, fromPH: 7, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "Cr2O7^2-/Cr^3+", half: "Cr2O7^2- + 14 H+ + 6 e- = 2 Cr^3+ + 7 H2O", volts: 1.36, toPH: 4, oxidises: "cold", isOxidised: "no",
    source: "bard", memory: true },
  { id: "CrO4^2-/[Cr(OH)4]-", half: "CrO4^2- + 4 H2O + 3 e- = [Cr(OH)4]- + 4 OH-", volts: -0.13, fromPH: 9, oxidises: "no", isOxidised: "warm",
    source: "crc", memory: true },
  { id: "Cl2/Cl-", half: "Cl2 + 2 e- = 2 Cl-", volts: 1.396, oxidises: "cold", isOxidised: "no",
    written: "Cl2(aq) + 2 e- = 2 Cl-", source: "bard", memory: true,
    why: "chloride is not oxidised by the dilute oxidants of the bench in the cold" },
  { id: "Br2/Br-", half: "Br2 + 2 e- = 2 Br-", volts: 1.0873, oxidises: "cold", isOxidised: "cold",
    written: "Br2(aq) + 2 e- = 2 Br-", source: "crc", memory: true },
  { id: "I2/I-", half: "I3- + 2 e- = 3 I-", volts: 0.536, oxidises: "cold", isOxidised: "cold",
    written: "I2(aq) + 2 e- = 2 I-", source: "crc", memory: true,
    why: "the potential of the triiodide that iodine forms with iodide; equations show iodine" },
  { id: "H2O2/H2O", half: "H2O2 + 2 H+ + 2 e- = 2 H2O", volts: 1.763, toPH: 9, oxidises: "cold", isOxidised: "no",
    source: "bard", memory: true },
  { id: "HO2-/OH-", half: "HO2- + H2O + 2 e- = 3 OH-", volts: 0.867, fromPH: 9, oxidises: "cold", isOxidised: "no",
    written: "H2O2 + 2 e- = 2 OH-", source: "bard", memory: true },
  { id: "O2/H2O2", half: "O2(g) + 2 H+ + 2 e- = H2O2", volts: 0.695, toPH: 9, oxidises: "no", isOxidised: "cold",
    source: "bard", memory: true },
  { id: "O2/HO2-", half: "O2(g) + H2O + 2 e- = HO2- + OH-", volts: -0.065, fromPH: 9, oxidises: "no", isOxidised: "cold",
    written: "O2(g) + 2 H2O + 2 e- = H2O2 + 2 OH-", source: "bard", memory: true },
  { id: "air/H2O", half: "O2(g) + 4 H+ + 4 e- = 2 H2O", volts: 1.229, toPH: 7, oxidises: "no", isOxidised: "no",
    fromAir: true, source: "crc", memory: true },
  { id: "air/OH-", half: "O2(g) + 2 H2O + 4 e- = 4 OH-", volts: 0.401, fromPH: 7, oxidises: "no", isOxidised: "no",
    fromAir: true, source: "crc", memory: true },
  { id: "Fe^3+/Fe^2+", half: "Fe^3+ + e- = Fe^2+", volts: 0.771, toPH: 6, oxidises: "cold", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "FeSCN^2+/Fe^2+", half: "FeSCN^2+ + e- = Fe^2+ + SCN-", volts: 0.602, toPH: 5, oxidises: "no", isOxidised: "no",
    source: "derived",
    why: "from Fe^3+/Fe^2+ of this table and log K of FeSCN^2+ in log-k: thiocyanate holds the iron(III) that copper(II) makes" },
  { id: "Fe(OH)3/Fe(OH)2", half: "Fe(OH)3(s, amorphous) + e- = Fe(OH)2(s) + OH-", volts: -0.56, fromPH: 5, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "Cu^2+/CuI", half: "Cu^2+ + I- + e- = CuI(s)", volts: 0.86, toPH: 7, oxidises: "cold", isOxidised: "no",
    source: "crc", memory: true },
  { id: "Cu^2+/CuSCN", half: "Cu^2+ + SCN- + e- = CuSCN(s)", volts: 0.907, toPH: 7, oxidises: "cold", isOxidised: "no",
    source: "derived",
    why: "from Cu^2+/Cu+ of this table and log K of CuSCN(s) in log-k; iron(II) and sulfite give the white solid at once (gravimetric copper as thiocyanate, textbook, from memory)" },
  { id: "Cu^2+/Cu+", half: "Cu^2+ + e- = Cu+", volts: 0.153, oxidises: "no", isOxidised: "no",
    source: "crc", memory: true },
  { id: "Cu^2+/[Cu(S2O3)2]^3-", half: "Cu^2+ + 2 S2O3^2- + e- = [Cu(S2O3)2]^3-", volts: 0.876, toPH: 7, oxidises: "no", isOxidised: "no",
    source: "derived",
    why: "from Cu^2+/Cu+ of this table and log K of the complex" },
  { id: "Ag+/Ag", half: "Ag+ + e- = Ag(s)", volts: 0.7996, oxidises: "no", isOxidised: "no",
    source: "crc", memory: true },
  { id: "NO3-/HNO2", half: "NO3- + 3 H+ + 2 e- = HNO2 + H2O", volts: 0.934, toPH: 3, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "NO3-/NO2-", half: "NO3- + H2O + 2 e- = NO2- + 2 OH-", volts: 0.01, fromPH: 3, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "NO3-/NO", half: "NO3- + 4 H+ + 3 e- = NO(g) + 2 H2O", volts: 0.957, toPH: 3, oxidises: "no", isOxidised: "no",
    gasAtm: 0.01, source: "crc", memory: true },
  { id: "NO3-/NH3", half: "NO3- + 6 H2O + 8 e- = NH3 + 9 OH-", volts: -0.12, fromPH: 9, oxidises: "no", isOxidised: "no",
    written: "NO3- + 6 H2O + 8 e- = NH3(aq) + 9 OH-", source: "bard", memory: true },
  { id: "NO2-/NH3", half: "NO2- + 5 H2O + 6 e- = NH3 + 7 OH-", volts: -0.163, fromPH: 9, oxidises: "no", isOxidised: "no",
    written: "NO2- + 5 H2O + 6 e- = NH3(aq) + 7 OH-", source: "derived",
    why: "from NO3-/NH3 and NO3-/NO2- of this table" },
  { id: "HNO2/NO", half: "HNO2 + H+ + e- = NO(g) + H2O", volts: 0.983, toPH: 5, oxidises: "cold", isOxidised: "no",
    gasAtm: 0.01, source: "crc", memory: true,
    why: "nitrogen monoxide turns to dioxide where it meets air and so stays below 0.01 atm; ethanoic acid, pH 3 to 5, is acid enough for nitrite to free iodine (Vogel, from memory)" },
  { id: "SO4^2-/H2SO3", half: "SO4^2- + 4 H+ + 2 e- = H2SO3 + H2O", volts: 0.172, toPH: 2, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "SO4^2-/HSO3-", half: "SO4^2- + 3 H+ + 2 e- = HSO3- + H2O", volts: 0.117, fromPH: 2, toPH: 7, oxidises: "no", isOxidised: "cold",
    source: "derived",
    why: "from SO4^2-/H2SO3 and the acid constants of log-k" },
  { id: "SO4^2-/SO3^2-", half: "SO4^2- + H2O + 2 e- = SO3^2- + 2 OH-", volts: -0.93, fromPH: 7, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "S4O6^2-/S2O3^2-", half: "S4O6^2- + 2 e- = 2 S2O3^2-", volts: 0.08, oxidises: "no", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "SO4^2-/S2O3^2-", half: "2 SO4^2- + 10 H+ + 8 e- = S2O3^2- + 5 H2O", volts: 0.284, oxidises: "no", isOxidised: "no",
    source: "derived",
    why: "from Gibbs energies of formation -744.5, -522.5 and -237.1 kJ/mol" },
  { id: "SO2/S2O3^2-", half: "2 SO2(g) + 2 H+ + 4 e- = S2O3^2- + H2O", volts: 0.413, toPH: 3, oxidises: "no", isOxidised: "no",
    gasAtm: 0.01, source: "derived",
    why: "from Gibbs energies of formation -300.2, -522.5 and -237.1 kJ/mol; Latimer has 0.40 V from H2SO3; the gas goes into the air" },
  { id: "S2O3^2-/S", half: "S2O3^2- + 6 H+ + 4 e- = 2 S(s) + 3 H2O", volts: 0.489, toPH: 7, oxidises: "no", isOxidised: "no",
    source: "derived", why: "from the same Gibbs energies; Latimer has 0.50 V" },
  { id: "S2O3^2-/Ag2S", half: "S2O3^2- + 4 Ag+ + 6 H+ + 8 e- = 2 Ag2S(s) + 3 H2O", volts: 0.749, oxidises: "no", isOxidised: "no",
    source: "derived",
    why: "from Gibbs energies of formation of thiosulfate, hydrogensulfide and water (0.213 V to 2 HS-) and log K of Ag2S" },
  { id: "[Al(OH)4]-/Al", half: "[Al(OH)4]- + 3 e- = Al(s) + 4 OH-", volts: -2.31, fromPH: 9, oxidises: "no", isOxidised: "no",
    source: "bardTabulated" },
  { id: "Zn^2+/Zn", half: "Zn^2+ + 2 e- = Zn(s)", volts: -0.762, toPH: 7, oxidises: "no", isOxidised: "no",
    source: "bardTabulated" },
  { id: "H+/H2", half: "2 H+ + 2 e- = H2(g)", volts: 0, toPH: 7, oxidises: "no", isOxidised: "no",
    source: "crc" },
  { id: "H2O/H2", half: "2 H2O + 2 e- = H2(g) + 2 OH-", volts: -0.828, fromPH: 9, oxidises: "no", isOxidised: "no",
    source: "bardTabulated" },
  { id: "[Fe(CN)6]^3-/[Fe(CN)6]^4-", half: "[Fe(CN)6]^3- + e- = [Fe(CN)6]^4-", volts: 0.358, oxidises: "cold", isOxidised: "cold",
    source: "crc", memory: true },
  { id: "Fe4[Fe(CN)6]3/Fe^2+", half: "Fe4[Fe(CN)6]3(s) + 4 e- = 4 Fe^2+ + 3 [Fe(CN)6]^4-", volts: -0.479, toPH: 8, oxidises: "no", isOxidised: "cold",
    source: "derived",
    why: "from Fe^3+/Fe^2+ and log K of the blue solid; so the same blue comes from either mixture of iron and cyanidoferrate" },
];
