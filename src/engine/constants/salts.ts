import type { SourceKey, Waste } from "./reagents.ts";

/**
 * The salts (and a few insoluble carbonates and oxides) that a school store keeps. The molar mass is computed from the
 * formula. Concentrations are those in which candidates usually get a solution.
 */
export type Salt = {
  readonly name: string;
  /** As bought, water of crystallisation included. */
  readonly formula: string;
  /** The ions of one formula unit, with their number. */
  readonly ions: Readonly<Record<string, number>>;
  readonly cations: readonly string[];
  readonly anions: readonly string[];
  /** The salt of one cation and one anion that no store keeps and by whose name this bottle goes, in mhchem. */
  readonly standsFor?: string;
  /** The solid, from memory of the bench. */
  readonly appearance: string;
  /** Usual solution for candidates, mol/dm3 of formula units; null where the salt is given as a solid only. */
  readonly concentration: number | null;
  /** In plain words; the stricter reading where sources differ. */
  readonly hazard: string;
  readonly waste: Waste;
  readonly note?: string;
  /** Where the hazard was looked up. */
  readonly sources: readonly SourceKey[];
  /** The hazard is remembered: confirm it with the supplier's sheet and the local rules. */
  readonly confirm?: true;
};

type Row = Omit<Salt, "cations" | "anions">;

// biome-ignore format: one salt a block
const rows: readonly Row[] = [
  // Alkali metals
  { name: "sodium chloride", formula: "NaCl", ions: { "Na+": 1, "Cl-": 1 }, appearance: "white crystals", concentration: 0.2,
    hazard: "Low hazard.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "potassium chloride", formula: "KCl", ions: { "K+": 1, "Cl-": 1 }, appearance: "white crystals", concentration: 0.2,
    hazard: "Low hazard.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "lithium chloride", formula: "LiCl", ions: { "Li+": 1, "Cl-": 1 }, appearance: "white crystals that turn damp in air", concentration: 0.2,
    hazard: "The solid is harmful if swallowed and irritates skin and eyes.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "sodium bromide", formula: "NaBr", ions: { "Na+": 1, "Br-": 1 }, appearance: "white crystals", concentration: 0.1,
    hazard: "Low hazard.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "potassium bromide", formula: "KBr", ions: { "K+": 1, "Br-": 1 }, appearance: "white crystals", concentration: 0.1,
    hazard: "Low hazard; some suppliers call the solid an eye irritant.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "sodium iodide", formula: "NaI", ions: { "Na+": 1, "I-": 1 }, appearance: "white crystals, yellowing in air", concentration: 0.1,
    hazard: "Low hazard; some suppliers name harm to the thyroid and to water life.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "sodium nitrate", formula: "NaNO3", ions: { "Na+": 1, "NO3-": 1 }, appearance: "white crystals", concentration: 0.2,
    hazard: "The solid is an oxidiser and irritates eyes: keep it from anything that burns.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "potassium nitrate", formula: "KNO3", ions: { "K+": 1, "NO3-": 1 }, appearance: "white crystals", concentration: 0.2,
    hazard: "The solid is an oxidiser: keep it from anything that burns.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "sodium nitrite", formula: "NaNO2", ions: { "Na+": 1, "NO2-": 1 }, appearance: "white to pale yellow crystals", concentration: 0.1,
    hazard: "The solid is toxic if swallowed and an oxidiser. Brown, toxic fumes with acid: small scale, ventilate.", waste: "drain", sources: ["CLP"], confirm: true },
  { name: "sodium sulfate", formula: "Na2SO4", ions: { "Na+": 2, "SO4^2-": 1 }, appearance: "white powder", concentration: 0.1,
    hazard: "Low hazard.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "potassium sulfate", formula: "K2SO4", ions: { "K+": 2, "SO4^2-": 1 }, appearance: "white crystals", concentration: 0.1,
    hazard: "Low hazard.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "sodium sulfite", formula: "Na2SO3", ions: { "Na+": 2, "SO3^2-": 1 }, appearance: "white powder", concentration: 0.1,
    hazard: "Low hazard itself. Acid sets free sulfur dioxide, which is toxic and can bring on an asthma attack.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "sodium thiosulfate pentahydrate", formula: "Na2S2O3*5H2O", ions: { "Na+": 2, "S2O3^2-": 1 }, appearance: "colourless crystals", concentration: 0.1,
    hazard: "Low hazard itself. Acid sets free sulfur dioxide, which is toxic and can bring on an asthma attack.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "sodium carbonate, anhydrous", formula: "Na2CO3", ions: { "Na+": 2, "CO3^2-": 1 }, appearance: "white powder", concentration: 0.2,
    hazard: "The solid irritates eyes; solutions below 0.8 mol/dm3 are low hazard.", waste: "drain", sources: ["SSS33", "CLP"] },
  { name: "sodium hydrogencarbonate", formula: "NaHCO3", ions: { "Na+": 1, "HCO3-": 1 }, appearance: "white powder", concentration: 0.2,
    hazard: "Low hazard.", waste: "drain", sources: ["SSS33"] },
  { name: "potassium carbonate", formula: "K2CO3", ions: { "K+": 2, "CO3^2-": 1 }, appearance: "white powder that turns damp in air", concentration: 0.2,
    hazard: "The solid irritates skin, eyes and throat; solutions below 0.8 mol/dm3 are low hazard.", waste: "drain", sources: ["SSS33"] },
  { name: "lithium carbonate", formula: "Li2CO3", ions: { "Li+": 2, "CO3^2-": 1 }, appearance: "white powder", concentration: null,
    hazard: "Harmful if swallowed, irritates eyes; harm to unborn children is under discussion.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "potassium chromate(VI)", formula: "K2CrO4", ions: { "K+": 2, "CrO4^2-": 1 }, appearance: "yellow crystals", concentration: 0.01,
    hazard: "Can cause cancer, genetic damage and skin allergy; low hazard only below 0.01 mol/dm3. Gloves, smallest amounts.", waste: "chromium(VI)", sources: ["SSS47"] },

  // Ammonium
  { name: "ammonium chloride", formula: "NH4Cl", ions: { "NH4+": 1, "Cl-": 1 }, appearance: "white crystals", concentration: 0.2,
    hazard: "The solid is harmful if swallowed and irritates eyes.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "ammonium sulfate", formula: "(NH4)2SO4", ions: { "NH4+": 2, "SO4^2-": 1 }, appearance: "white crystals", concentration: 0.2,
    hazard: "Low hazard.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "ammonium nitrate", formula: "NH4NO3", ions: { "NH4+": 1, "NO3-": 1 }, appearance: "white crystals that turn damp in air", concentration: 0.2,
    hazard: "The solid is an oxidiser, irritates eyes and can explode: never heat the solid in class.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "ammonium carbonate", formula: "(NH4)2CO3", ions: { "NH4+": 2, "CO3^2-": 1 }, appearance: "white lumps that smell of ammonia", concentration: 0.2,
    hazard: "Harmful if swallowed; gives off ammonia that irritates eyes and throat.", waste: "drain", sources: ["SUPPLIER"], confirm: true },

  // Magnesium, calcium, barium
  { name: "magnesium sulfate heptahydrate", formula: "MgSO4*7H2O", ions: { "Mg^2+": 1, "SO4^2-": 1 }, appearance: "colourless crystals", concentration: 0.2,
    hazard: "Low hazard.", waste: "drain", sources: ["SSS36"] },
  { name: "magnesium chloride hexahydrate", formula: "MgCl2*6H2O", ions: { "Mg^2+": 1, "Cl-": 2 }, appearance: "white crystals that turn damp in air", concentration: 0.2,
    hazard: "Low hazard.", waste: "drain", sources: ["SSS36"] },
  { name: "magnesium nitrate hexahydrate", formula: "Mg(NO3)2*6H2O", ions: { "Mg^2+": 1, "NO3-": 2 }, appearance: "colourless crystals", concentration: 0.2,
    hazard: "The solid is an oxidiser; solutions below 0.5 mol/dm3 are low hazard.", waste: "drain", sources: ["SSS36"] },
  { name: "magnesium carbonate", formula: "MgCO3", ions: { "Mg^2+": 1, "CO3^2-": 1 }, appearance: "white powder", concentration: null,
    hazard: "Low hazard.", waste: "drain", note: "What is sold is usually a basic carbonate such as 4MgCO3*Mg(OH)2*5H2O.", sources: ["SSS33"] },
  { name: "calcium chloride dihydrate", formula: "CaCl2*2H2O", ions: { "Ca^2+": 1, "Cl-": 2 }, appearance: "white lumps or powder that turn damp in air", concentration: 0.2,
    hazard: "The solid irritates eyes, and so do solutions from 0.9 mol/dm3.", waste: "drain", sources: ["SSS36", "CLP"] },
  { name: "calcium chloride hexahydrate", formula: "CaCl2*6H2O", ions: { "Ca^2+": 1, "Cl-": 2 }, appearance: "colourless crystals that turn damp in air", concentration: 0.2,
    hazard: "The solid irritates eyes, and so do solutions from 0.9 mol/dm3.", waste: "drain", sources: ["SSS36", "CLP"] },
  { name: "calcium nitrate tetrahydrate", formula: "Ca(NO3)2*4H2O", ions: { "Ca^2+": 1, "NO3-": 2 }, appearance: "colourless crystals that turn damp in air", concentration: 0.1,
    hazard: "Damages eyes from 0.15 mol/dm3, irritates from 0.05 mol/dm3; the solid is an oxidiser.", waste: "drain",
    note: "0.1 mol/dm3 keeps it in the irritant band; 0.2 mol/dm3 would not.", sources: ["SSS36"] },
  { name: "calcium carbonate", formula: "CaCO3", ions: { "Ca^2+": 1, "CO3^2-": 1 }, appearance: "white powder or chips", concentration: null,
    hazard: "Low hazard.", waste: "drain", sources: ["SSS33"] },
  { name: "barium chloride dihydrate", formula: "BaCl2*2H2O", ions: { "Ba^2+": 1, "Cl-": 2 }, appearance: "colourless crystals", concentration: 0.1,
    hazard: "The solid is toxic if swallowed; treat the solution as harmful and wash hands.", waste: "barium", sources: ["CLP", "RSC-NEG"], confirm: true },
  { name: "barium nitrate", formula: "Ba(NO3)2", ions: { "Ba^2+": 1, "NO3-": 2 }, appearance: "white crystals", concentration: 0.1,
    hazard: "The solid is toxic if swallowed and an oxidiser; treat the solution as harmful and wash hands.", waste: "barium", sources: ["CLP", "SUPPLIER"], confirm: true },
  { name: "barium carbonate", formula: "BaCO3", ions: { "Ba^2+": 1, "CO3^2-": 1 }, appearance: "white powder", concentration: null,
    hazard: "Harmful if swallowed: stomach acid dissolves it.", waste: "barium", sources: ["CLP"], confirm: true },

  // Aluminium
  { name: "aluminium sulfate-16-water", formula: "Al2(SO4)3*16H2O", ions: { "Al^3+": 2, "SO4^2-": 3 }, appearance: "white crystals or powder", concentration: 0.1,
    hazard: "Damages eyes from 0.1 mol/dm3, irritates from 0.03 mol/dm3. The solution is acidic, about pH 3.", waste: "drain",
    note: "Also sold with 18 water: read the bottle before weighing.", sources: ["SSS45", "HAZ2B"] },
  { name: "potassium aluminium sulfate (alum)", formula: "KAl(SO4)2*12H2O", ions: { "K+": 1, "Al^3+": 1, "SO4^2-": 2 }, appearance: "colourless crystals", concentration: 0.1,
    hazard: "Low hazard.", waste: "drain", sources: ["SSS45"] },
  { name: "aluminium nitrate nonahydrate", formula: "Al(NO3)3*9H2O", ions: { "Al^3+": 1, "NO3-": 3 }, appearance: "colourless crystals", concentration: 0.2,
    hazard: "The solid is an oxidiser and irritates or damages eyes; solutions irritate from 0.5 mol/dm3.", waste: "drain", sources: ["HAZ2B", "SUPPLIER"], confirm: true },
  { name: "aluminium chloride hexahydrate", formula: "AlCl3*6H2O", ions: { "Al^3+": 1, "Cl-": 3 }, appearance: "white to pale yellow crystals", concentration: 0.2,
    hazard: "The solid irritates skin and eyes, and so do solutions from 0.8 mol/dm3.", waste: "drain",
    note: "Never use the anhydrous solid: it reacts violently with water.", sources: ["SSS45"] },

  // Zinc
  { name: "zinc sulfate heptahydrate", formula: "ZnSO4*7H2O", ions: { "Zn^2+": 1, "SO4^2-": 1 }, appearance: "colourless crystals", concentration: 0.1,
    hazard: "The solid damages eyes and is harmful if swallowed. Treat solutions from 0.19 mol/dm3 as damaging to eyes.", waste: "copper or zinc", sources: ["SSS49", "CLP"], confirm: true },
  { name: "zinc chloride", formula: "ZnCl2", ions: { "Zn^2+": 1, "Cl-": 2 }, appearance: "white solid that turns damp in air", concentration: 0.2,
    hazard: "The solid burns skin; solutions burn from 0.7 and irritate from 0.3 mol/dm3.", waste: "copper or zinc", sources: ["SSS49", "CLP"], confirm: true },
  { name: "zinc nitrate hexahydrate", formula: "Zn(NO3)2*6H2O", ions: { "Zn^2+": 1, "NO3-": 2 }, appearance: "colourless crystals that turn damp in air", concentration: 0.2,
    hazard: "The solid is an oxidiser, harmful if swallowed, and irritates skin and eyes.", waste: "copper or zinc", sources: ["SUPPLIER"], confirm: true },
  { name: "zinc carbonate", formula: "ZnCO3", ions: { "Zn^2+": 1, "CO3^2-": 1 }, appearance: "white powder", concentration: null,
    hazard: "Low hazard; harms water life.", waste: "copper or zinc", note: "What is sold is usually a basic carbonate.", sources: ["SSS49"], confirm: true },
  { name: "zinc oxide", formula: "ZnO", ions: { "Zn^2+": 1, "O^2-": 1 }, appearance: "white powder, yellow while hot", concentration: null,
    hazard: "Low hazard; harms water life.", waste: "copper or zinc", sources: ["SSS49", "CLP"], confirm: true },

  // Copper
  { name: "copper(II) sulfate pentahydrate", formula: "CuSO4*5H2O", ions: { "Cu^2+": 1, "SO4^2-": 1 }, appearance: "blue crystals", concentration: 0.1,
    hazard: "Damages eyes from 0.2 mol/dm3, irritates from 0.02 mol/dm3, harmful if swallowed from 1.0 mol/dm3.", waste: "copper or zinc",
    note: "0.1 mol/dm3 keeps it in the irritant band.", sources: ["SSS40", "CLP"] },
  { name: "copper(II) chloride dihydrate", formula: "CuCl2*2H2O", ions: { "Cu^2+": 1, "Cl-": 2 }, appearance: "blue-green crystals", concentration: 0.2,
    hazard: "The solid is harmful if swallowed; solutions irritate from 0.8 mol/dm3.", waste: "copper or zinc", sources: ["SSS40"] },
  { name: "copper(II) nitrate trihydrate", formula: "Cu(NO3)2*3H2O", ions: { "Cu^2+": 1, "NO3-": 2 }, appearance: "blue crystals that turn damp in air", concentration: 0.1,
    hazard: "Damages eyes from 0.15 mol/dm3, irritates from 0.05 mol/dm3.", waste: "copper or zinc", sources: ["SSS40"] },
  { name: "basic copper(II) carbonate", formula: "CuCO3*Cu(OH)2", ions: { "Cu^2+": 2, "CO3^2-": 1, "OH-": 2 }, standsFor: "CuCO3", appearance: "green powder", concentration: null,
    hazard: "Harmful if swallowed, irritates eyes, harms water life.", waste: "copper or zinc",
    note: "What is sold as copper(II) carbonate is this basic carbonate.", sources: ["SSS40"] },
  { name: "copper(II) oxide", formula: "CuO", ions: { "Cu^2+": 1, "O^2-": 1 }, appearance: "black powder", concentration: null,
    hazard: "Harmful if swallowed, irritates, harms water life.", waste: "copper or zinc", sources: ["SSS40"] },

  // Iron
  { name: "iron(II) sulfate heptahydrate", formula: "FeSO4*7H2O", ions: { "Fe^2+": 1, "SO4^2-": 1 }, appearance: "pale green crystals", concentration: 0.1,
    hazard: "The solid is harmful if swallowed and irritates skin and eyes.", waste: "drain", sources: ["CLP", "SSSX"], confirm: true },
  { name: "ammonium iron(II) sulfate hexahydrate", formula: "(NH4)2Fe(SO4)2*6H2O", ions: { "NH4+": 2, "Fe^2+": 1, "SO4^2-": 2 }, appearance: "pale blue-green crystals", concentration: 0.1,
    hazard: "The solid irritates skin and eyes.", waste: "drain", note: "Keeps better than iron(II) sulfate; also gives the test for ammonium.", sources: ["SUPPLIER"], confirm: true },
  { name: "iron(II) chloride tetrahydrate", formula: "FeCl2*4H2O", ions: { "Fe^2+": 1, "Cl-": 2 }, appearance: "pale green crystals", concentration: 0.1,
    hazard: "The solid damages eyes and is harmful if swallowed.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "iron(III) chloride hexahydrate", formula: "FeCl3*6H2O", ions: { "Fe^3+": 1, "Cl-": 3 }, appearance: "yellow-brown lumps that turn damp in air", concentration: 0.1,
    hazard: "The solid damages eyes and is harmful if swallowed; solutions irritate from about 0.2 mol/dm3.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "iron(III) nitrate nonahydrate", formula: "Fe(NO3)3*9H2O", ions: { "Fe^3+": 1, "NO3-": 3 }, appearance: "pale violet crystals", concentration: 0.1,
    hazard: "The solid is an oxidiser and irritates skin and eyes.", waste: "drain", sources: ["SUPPLIER"], confirm: true },
  { name: "ammonium iron(III) sulfate (iron alum)", formula: "NH4Fe(SO4)2*12H2O", ions: { "NH4+": 1, "Fe^3+": 1, "SO4^2-": 2 }, appearance: "pale violet crystals", concentration: 0.1,
    hazard: "The solid irritates skin and eyes.", waste: "drain", sources: ["SUPPLIER"], confirm: true },

  // Lead, silver
  { name: "lead(II) nitrate", formula: "Pb(NO3)2", ions: { "Pb^2+": 1, "NO3-": 2 }, appearance: "white crystals", concentration: 0.1,
    hazard: "Can harm an unborn child and damages organs with repeated use; a reproductive hazard from 0.01 mol/dm3. Students get the solution only.", waste: "lead", sources: ["CLP", "SSSX"], confirm: true },
  { name: "lead(II) carbonate", formula: "PbCO3", ions: { "Pb^2+": 1, "CO3^2-": 1 }, appearance: "white powder", concentration: null,
    hazard: "Can harm an unborn child and damages organs with repeated use. In many places for the teacher only.", waste: "lead", sources: ["CLP"], confirm: true },
  { name: "silver nitrate", formula: "AgNO3", ions: { "Ag+": 1, "NO3-": 1 }, appearance: "colourless crystals, darkening in light", concentration: 0.05,
    hazard: "The solid burns skin and eyes and is an oxidiser; solutions irritate from about 0.06 and damage eyes from about 0.18 mol/dm3. Stains.", waste: "silver", sources: ["CLP-AGNO3"], confirm: true },

  // Manganese, chromium, cobalt, nickel
  { name: "manganese(II) sulfate monohydrate", formula: "MnSO4*H2O", ions: { "Mn^2+": 1, "SO4^2-": 1 }, appearance: "pale pink crystals", concentration: 0.1,
    hazard: "The solid damages organs with repeated use; solutions below 0.7 mol/dm3 are low hazard.", waste: "heavy metal", sources: ["SSS48", "CLP"] },
  { name: "manganese(II) chloride tetrahydrate", formula: "MnCl2*4H2O", ions: { "Mn^2+": 1, "Cl-": 2 }, appearance: "pink crystals", concentration: 0.1,
    hazard: "The solid is harmful or toxic if swallowed; solutions below 1.5 mol/dm3 are low hazard.", waste: "heavy metal", sources: ["SSS48"] },
  { name: "manganese(II) carbonate", formula: "MnCO3", ions: { "Mn^2+": 1, "CO3^2-": 1 }, appearance: "pale brown to pale pink powder", concentration: null,
    hazard: "Low hazard.", waste: "heavy metal", sources: ["SSS48"] },
  { name: "chromium(III) potassium sulfate (chrome alum)", formula: "KCr(SO4)2*12H2O", ions: { "K+": 1, "Cr^3+": 1, "SO4^2-": 2 }, appearance: "dark violet crystals", concentration: 0.1,
    hazard: "Low hazard below 0.4 mol/dm3, irritates above.", waste: "heavy metal", sources: ["SSS47"] },
  { name: "chromium(III) chloride hexahydrate", formula: "CrCl3*6H2O", ions: { "Cr^3+": 1, "Cl-": 3 }, appearance: "dark green crystals", concentration: 0.1,
    hazard: "The solid is harmful if swallowed and can cause skin allergy.", waste: "heavy metal", note: "The green form; it dissolves slowly.", sources: ["SUPPLIER"], confirm: true },
  { name: "cobalt(II) chloride hexahydrate", formula: "CoCl2*6H2O", ions: { "Co^2+": 1, "Cl-": 2 }, appearance: "pink to red crystals", concentration: 0.05,
    hazard: "Can cause cancer and allergy: avoid as a class sample.", waste: "heavy metal", sources: ["CLP"], confirm: true },
  { name: "nickel(II) sulfate hexahydrate", formula: "NiSO4*6H2O", ions: { "Ni^2+": 1, "SO4^2-": 1 }, appearance: "blue-green crystals", concentration: 0.05,
    hazard: "Can cause cancer and allergy: avoid as a class sample.", waste: "heavy metal", sources: ["CLP"], confirm: true },
];

const isCation = (ion: string) => ion.endsWith("+");

export const salts: readonly Salt[] = rows.map((row) => {
  const ions = Object.keys(row.ions);
  return { ...row, cations: ions.filter(isCation), anions: ions.filter((ion) => !isCation(ion)) };
});
