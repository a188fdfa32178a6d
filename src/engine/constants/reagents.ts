/** Where the facts on reagents and salts come from. `read` says whether the text itself was read. */
export const reagentSources = {
  CLP: { cite: "Regulation (EC) No 1272/2008 (CLP), Annex VI Table 3 and the general limits of Annex I", read: false },
  "CLP-NAOH": { cite: "EU classification and labelling of sodium hydroxide, industry note", read: true },
  "CLP-AGNO3": {
    cite: "CLP Annex VI entry 047-001-00-2 (silver nitrate), quoted by CosmeticOBS, 20 September 2023",
    read: true,
  },
  EYE3: { cite: "GeSi 2017 on CLP: 3 % of corrosive ingredients damages eyes, 5 % burns skin", read: true },
  "NITRIC-CHIP": { cite: "nitric-acid.co.uk, hazards: corrosive from 5 %, severe burns above 20 %", read: true },
  "DE-MAT1": {
    cite: "German teaching material on classes of hydrochloric, nitric and other acids by mol/dm3 under CLP",
    read: true,
  },
  "SDS-H2SO4": { cite: "Safety data sheet of sulfuric acid, section 3, quoted second-hand", read: true },
  "SDS-K2CRO4": { cite: "Merck KGaA safety data sheet 104951, potassium chromate, 24 July 2013", read: true },
  "SDS-BACL2": { cite: "Chemwatch/VWR safety data sheet, barium chloride dihydrate, 2013", read: true },
  "ACS-CLIP-BA": { cite: "Journal of Chemical Education, CLIP, Barium chloride dihydrate (2001)", read: true },
  SSS30: { cite: "CLEAPSS Student Safety Sheet 30, Ammonia (older issue)", read: true },
  SSS32: { cite: "CLEAPSS Student Safety Sheet 32, Calcium hydroxide and oxide (older issue)", read: true },
  SSS33: { cite: "CLEAPSS Student Safety Sheet 33, Carbonates", read: true },
  SSS36: { cite: "CLEAPSS Student Safety Sheet 36, Magnesium and calcium salts", read: true },
  SSS40: { cite: "CLEAPSS Student Safety Sheet 40, Copper and its compounds", read: true },
  SSS45: { cite: "CLEAPSS Student Safety Sheet 45, Aluminium and its compounds", read: true },
  SSS47: { cite: "CLEAPSS Student Safety Sheet 47, Chromium and its compounds", read: true },
  SSS48: { cite: "CLEAPSS Student Safety Sheet 48, Manganese and its compounds", read: true },
  SSS49: { cite: "CLEAPSS Student Safety Sheet 49, Zinc and its compounds (older issue)", read: true },
  SSS57: { cite: "CLEAPSS Student Safety Sheet 57, Hydrogen peroxide (2018)", read: true },
  HAZ2B: { cite: "CLEAPSS Hazcard 2B, Aluminium compounds (2007)", read: true },
  SSSX: { cite: "CLEAPSS Student Safety Sheets, 2022, sheets 20-22, 31, 34, 35, 37, 38, 42, 43, 46", read: false },
  "RSC-NEG": { cite: "Royal Society of Chemistry, Learn Chemistry, Testing for negative ions", read: true },
  "BP-IA": { cite: "British Pharmacopoeia, Appendix I A, Ammonia", read: true },
  "CAIE-PLAN": { cite: "Cambridge International lists of bench reagents for 0620, 5070 and 9701", read: false },
  SUPPLIER: { cite: "typical supplier's safety data sheet; differs between suppliers", read: false },
  BENCH: { cite: "common practice, no source", read: false },
} as const satisfies Record<string, { cite: string; read: boolean }>;

export type SourceKey = keyof typeof reagentSources;

/** What to do with what is left in the tubes. Local rules come first. Common practice, no source, unless a row says more. */
export const wastes = {
  drain: "Down the sink with plenty of water and the tap running.",
  neutralise: "Neutralise, then down the sink with plenty of water.",
  "copper or zinc":
    "Test-tube amounts: down the sink, well diluted, where local rules allow. Larger amounts: precipitate with " +
    "carbonate and collect.",
  barium:
    "Into the bottle marked BARIUM, with sulfate in excess: the barium sulfate settles and is collected; the liquid goes where your teacher says.",
  silver:
    "Into the bottle marked SILVER. Make mixtures with ammonia acidic at once and never store them: dried, they can explode.",
  lead: "Into the bottle marked LEAD, solid and liquid. Never down the sink.",
  "chromium(VI)":
    "Into the bottle marked CHROMIUM. The technician reduces it, precipitates it as hydroxide and has it collected.",
  "heavy metal": "Into the bottle marked HEAVY METALS, for collection by a licensed contractor.",
  solid: "Reuse what is clean; the rest into the solid waste, not the sink.",
} as const;

export type Waste = keyof typeof wastes;

const EYES =
  "Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help.";

/** First aid by how bad it can be. Call the teacher first in every case. From memory of school safety sheets. */
export const firstAids = {
  rinse: `${EYES} Skin: wash off. Swallowed: rinse the mouth and drink some water.`,
  irritant: `${EYES} Skin: wash off. Swallowed: rinse the mouth and sip water.`,
  corrosive:
    `${EYES} Skin: take off wet clothing and rinse for at least twenty minutes. ` +
    "Swallowed: rinse the mouth, do not cause vomiting, get medical help.",
  toxic:
    "Swallowed: rinse the mouth, give water and get medical help at once, with the label. " +
    `${EYES} Skin: rinse with plenty of water. Wash hands after use.`,
  gas: `Go into fresh air. ${EYES} Get help if breathing suffers.`,
} as const;

export type FirstAid = keyof typeof firstAids;

export type Reagent = {
  /** Formula with state, or a plain name where no formula fits: `NaOH(aq)`, `litmus paper`. */
  readonly id: string;
  readonly name: string;
  /** What is dissolved, or the solid itself; absent for papers and mixtures. */
  readonly formula?: string;
  readonly kind: "solution" | "solid" | "paper" | "liquid";
  /** Default strength, mol/dm3 of formula units, with which tests are predicted; null where it has no meaning. */
  readonly concentration: number | null;
  /** Usual strengths, mol/dm3. */
  readonly range?: readonly [from: number, to: number];
  /** What one formula unit brings into the solution. Empty for what does not dissolve. */
  readonly components: Readonly<Record<string, number>>;
  /** Sulfuric acid it is made up with, mol/dm3, where it comes acidified. */
  readonly sulfuricAcid?: number;
  /** Plain words, at the default strength; the stricter reading where sources differ. */
  readonly hazards: readonly string[];
  /** Classes and codes behind the words. Teaching data, not a label. */
  readonly hazardCodes: readonly string[];
  /** The limits that decide. */
  readonly limits: readonly string[];
  readonly firstAid: FirstAid;
  readonly waste: Waste;
  readonly notes?: readonly string[];
  readonly sources: readonly SourceKey[];
  /** What was read in a source and what is remembered. */
  readonly status: string;
  /** Hazards remembered or doubtful: confirm them with the supplier's sheet and the local rules. */
  readonly confirm?: true;
};

// biome-ignore format: one reagent a block
export const reagents: readonly Reagent[] = [
  {
    id: "NaOH(aq)", name: "aqueous sodium hydroxide", formula: "NaOH", kind: "solution", concentration: 1, range: [0.4, 2], components: { "Na+": 1, "OH-": 1 },
    hazards: ["Burns skin and damages eyes: wear goggles.", "Spurts when heated."],
    hazardCodes: ["Skin Corr. 1B H314", "Eye Dam. 1 H318", "Met. Corr. 1 H290"],
    limits: ["burns from 2 % (0.5 mol/dm3)", "irritates from 0.5 % (0.125 mol/dm3)"],
    firstAid: "corrosive", waste: "neutralise",
    notes: ["0.4 mol/dm3 only irritates, but is too weak to redissolve lead(II) and zinc hydroxides quickly from 0.2 mol/dm3 samples.", "Old stock holds carbonate, which clouds barium and calcium samples."],
    sources: ["CLP-NAOH", "CLP", "SSSX", "CAIE-PLAN"], status: "limits read; the rest from memory", confirm: true,
  },
  {
    id: "NH3(aq)", name: "aqueous ammonia", formula: "NH3", kind: "solution", concentration: 2, range: [0.4, 2], components: { NH3: 1 },
    hazards: ["Treat as damaging to eyes and irritating to skin: wear goggles.", "The vapour irritates eyes, nose and lungs: keep the bottle closed, ventilate the room."],
    hazardCodes: ["Eye Dam. 1 H318", "Skin Irrit. 2 H315"],
    limits: ["3.4 % at 2 mol/dm3: by the general limits damaging to eyes from 3 %, irritating from 1 % (0.6 mol/dm3)", "a school sheet calls it low hazard below 3 mol/dm3 and corrosive from 6 mol/dm3"],
    firstAid: "corrosive", waste: "drain",
    sources: ["BP-IA", "SSS30", "CLP", "CAIE-PLAN"], status: "school limits read; the classes and the general limits from memory", confirm: true,
  },
  {
    id: "HCl(aq)", name: "dilute hydrochloric acid", formula: "HCl", kind: "solution", concentration: 1, range: [0.5, 2], components: { "H+": 1, "Cl-": 1 },
    hazards: ["Low hazard at this strength; it still stings in eyes and cuts, so wear eye protection."],
    hazardCodes: ["Met. Corr. 1 H290"],
    limits: ["irritates from 10 % (about 3 mol/dm3)", "burns from 25 % (about 7 mol/dm3)"],
    firstAid: "rinse", waste: "neutralise",
    sources: ["CLP", "DE-MAT1", "SSSX", "CAIE-PLAN"], status: "limits read; the school band from memory", confirm: true,
  },
  {
    id: "HNO3(aq)", name: "dilute nitric acid", formula: "HNO3", kind: "solution", concentration: 1, range: [0.4, 2], components: { "H+": 1, "NO3-": 1 },
    hazards: ["Burns skin and damages eyes: wear goggles."],
    hazardCodes: ["Skin Corr. 1B H314", "Eye Dam. 1 H318"],
    limits: ["burns from 5 % (0.8 mol/dm3)", "damages eyes from 3 % (0.5 mol/dm3)", "irritates from 1 %"],
    firstAid: "corrosive", waste: "neutralise",
    notes: ["0.4 mol/dm3 only irritates and is enough for the silver and barium tests."],
    sources: ["CLP", "NITRIC-CHIP", "DE-MAT1", "RSC-NEG", "SSSX", "CAIE-PLAN"], status: "limits read; the rest from memory", confirm: true,
  },
  {
    id: "H2SO4(aq)", name: "dilute sulfuric acid", formula: "H2SO4", kind: "solution", concentration: 1, range: [0.5, 1], components: { "H+": 2, "SO4^2-": 1 },
    hazards: ["Irritates skin and eyes; what dries up on skin or cloth grows strong and burns."],
    hazardCodes: ["Skin Irrit. 2 H315", "Eye Irrit. 2 H319"],
    limits: ["irritates from 5 % (0.5 mol/dm3)", "burns from 15 % (about 1.5 mol/dm3)"],
    firstAid: "irritant", waste: "neutralise",
    notes: ["For the technician: acid into water, never water into acid."],
    sources: ["CLP", "SDS-H2SO4", "SSSX", "CAIE-PLAN"], status: "limits read second-hand; the school band from memory", confirm: true,
  },
  {
    id: "CH3COOH(aq)", name: "dilute ethanoic acid", formula: "CH3COOH", kind: "solution", concentration: 1, range: [1, 2], components: { CH3COOH: 1 },
    hazards: ["Low hazard at this strength; wear eye protection."], hazardCodes: [],
    limits: ["irritates from 10 % (1.7 mol/dm3)", "burns from 25 %"],
    firstAid: "rinse", waste: "neutralise", sources: ["CLP", "SSSX"], status: "from memory", confirm: true,
  },
  {
    id: "AgNO3(aq)", name: "aqueous silver nitrate", formula: "AgNO3", kind: "solution", concentration: 0.05, range: [0.02, 0.1], components: { "Ag+": 1, "NO3-": 1 },
    hazards: ["Irritates eyes and skin; stains skin and cloth brown.", "Very toxic to water life."],
    hazardCodes: ["treated as Eye Irrit. 2 H319 and Skin Irrit. 2 H315", "Aquatic Acute 1", "Aquatic Chronic 1"],
    limits: ["irritates from 1 % (0.06 mol/dm3); 0.05 mol/dm3 is 0.85 % and is treated as irritating", "damages eyes from 3 % (0.18 mol/dm3)", "burns from 5 % (0.3 mol/dm3)"],
    firstAid: "irritant", waste: "silver",
    notes: ["Distilled or deionised water only: tap water gives a haze of silver chloride.", "A stricter class (reproduction, genetic damage) was proposed in 2023: look up the present one."],
    sources: ["CLP-AGNO3", "EYE3", "CLP", "SSSX", "CAIE-PLAN", "RSC-NEG"], status: "class of the solid read; the bands of solutions from memory", confirm: true,
  },
  {
    id: "BaCl2(aq)", name: "aqueous barium chloride", formula: "BaCl2", kind: "solution", concentration: 0.1, range: [0.1, 0.25], components: { "Ba^2+": 1, "Cl-": 2 },
    hazards: ["Treat as toxic if swallowed: nothing near the mouth, wash hands.", "The solid is toxic if swallowed: technician only."],
    hazardCodes: ["solid: Acute Tox. 3 H301", "solid: Acute Tox. 4 H332"],
    limits: ["by calculation not classed below about 5 % (0.25 mol/dm3)", "an older school list calls 0.1 mol/dm3 harmful"],
    firstAid: "toxic", waste: "barium",
    notes: ["Adds chloride: where silver nitrate follows, or silver or lead(II) may be present, take barium nitrate."],
    sources: ["CLP", "SDS-BACL2", "RSC-NEG", "ACS-CLIP-BA", "SSSX"], status: "classes and school list read; the calculation is ours", confirm: true,
  },
  {
    id: "Ba(NO3)2(aq)", name: "aqueous barium nitrate", formula: "Ba(NO3)2", kind: "solution", concentration: 0.1, range: [0.05, 0.2], components: { "Ba^2+": 1, "NO3-": 2 },
    hazards: ["Treat as toxic if swallowed: nothing near the mouth, wash hands.", "The solid is harmful if swallowed and an oxidiser: technician only."],
    hazardCodes: ["solid: Acute Tox. 4 H302, H332", "solid: Ox. Sol. 2"],
    limits: ["by calculation not classed at 2.6 %"],
    firstAid: "toxic", waste: "barium",
    notes: ["Adds no chloride, so it goes with the silver tests.", "Not above 0.3 mol/dm3: it does not dissolve."],
    sources: ["CLP", "SUPPLIER", "CAIE-PLAN"], status: "from memory", confirm: true,
  },
  {
    id: "KI(aq)", name: "aqueous potassium iodide", formula: "KI", kind: "solution", concentration: 0.1, range: [0.05, 0.2], components: { "K+": 1, "I-": 1 },
    hazards: ["Some suppliers name harm to the thyroid with repeated use; school sheets call it low hazard. Stains when it meets an oxidiser."], hazardCodes: [],
    limits: ["some suppliers name harm to the thyroid from 1 %"],
    firstAid: "rinse", waste: "drain", sources: ["SUPPLIER", "SSSX"], status: "from memory", confirm: true,
  },
  {
    id: "K2CrO4(aq)", name: "aqueous potassium chromate(VI)", formula: "K2CrO4", kind: "solution", concentration: 0.1, range: [0.01, 0.1], components: { "K+": 2, "CrO4^2-": 1 },
    hazards: ["Can cause cancer and genetic damage; can cause skin allergy: gloves, dropper bottle, smallest amount.", "Treat as toxic if swallowed.", "Toxic to water life."],
    hazardCodes: ["Carc. 1B H350i", "Muta. 1B H340", "Skin Sens. 1 H317", "Aquatic Chronic"],
    limits: ["cancer and genetic damage from 0.1 %", "serious health hazard from 0.01 mol/dm3; low hazard below", "skin allergy from 0.04 mol/dm3"],
    firstAid: "toxic", waste: "chromium(VI)",
    notes: ["Many schools no longer use it: iodide and sulfate tests can take its place."],
    sources: ["SSS47", "SDS-K2CRO4", "CLP"], status: "school limits and classes read; the 0.5 % allergy limit from memory", confirm: true,
  },
  {
    id: "Na2CO3(aq)", name: "aqueous sodium carbonate", formula: "Na2CO3", kind: "solution", concentration: 1, range: [0.5, 1], components: { "Na+": 2, "CO3^2-": 1 },
    hazards: ["Irritates eyes: wear eye protection."], hazardCodes: ["Eye Irrit. 2 H319"],
    limits: ["irritates from 0.8 mol/dm3 (school sheet) or 10 % (0.94 mol/dm3); 0.5 mol/dm3 is low hazard"],
    firstAid: "irritant", waste: "drain", sources: ["SSS33", "CLP"], status: "school limit read; the 10 % limit from memory", confirm: true,
  },
  {
    id: "KSCN(aq)", name: "aqueous potassium thiocyanate", formula: "KSCN", kind: "solution", concentration: 0.1, range: [0.05, 0.5], components: { "K+": 1, "SCN-": 1 },
    hazards: ["Low hazard when dilute. Do not warm it, add no strong acid: a very toxic gas can form."], hazardCodes: ["solid: Acute Tox. 4", "solid: EUH032"],
    limits: ["solid harmful; by calculation not classed at 1 %"],
    firstAid: "rinse", waste: "drain", sources: ["CLP"], status: "from memory", confirm: true,
  },
  {
    id: "NH4Cl(aq)", name: "aqueous ammonium chloride", formula: "NH4Cl", kind: "solution", concentration: 1, range: [0.5, 2], components: { "NH4+": 1, "Cl-": 1 },
    hazards: ["Low hazard when dilute."], hazardCodes: [],
    limits: ["solid harmful; eye irritant from 10 %"],
    firstAid: "rinse", waste: "drain", sources: ["CLP", "SSSX"], status: "from memory", confirm: true,
  },
  {
    id: "Na2S2O3(aq)", name: "aqueous sodium thiosulfate", formula: "Na2S2O3", kind: "solution", concentration: 0.1, range: [0.05, 0.2], components: { "Na+": 2, "S2O3^2-": 1 },
    hazards: ["Low hazard itself. Acid sets free sulfur dioxide: toxic, and it can bring on an asthma attack."], hazardCodes: [],
    limits: ["no harmonised class"],
    firstAid: "rinse", waste: "drain", sources: ["SSSX"], status: "from memory", confirm: true,
  },
  {
    id: "K4[Fe(CN)6](aq)", name: "aqueous potassium hexacyanoferrate(II)", formula: "K4[Fe(CN)6]", kind: "solution", concentration: 0.1, range: [0.02, 0.1], components: { "K+": 4, "[Fe(CN)6]^4-": 1 },
    hazards: ["Low hazard when dilute. Do not warm it, add no strong acid: a very toxic gas can form."], hazardCodes: ["EUH032"],
    limits: ["no harmonised class"],
    firstAid: "rinse", waste: "drain", sources: ["SUPPLIER"], status: "from memory", confirm: true,
  },
  {
    id: "K3[Fe(CN)6](aq)", name: "aqueous potassium hexacyanoferrate(III)", formula: "K3[Fe(CN)6]", kind: "solution", concentration: 0.1, range: [0.02, 0.1], components: { "K+": 3, "[Fe(CN)6]^3-": 1 },
    hazards: ["Low hazard when dilute. Do not warm it, add no strong acid: a very toxic gas can form."], hazardCodes: ["EUH032"],
    limits: ["no harmonised class"],
    firstAid: "rinse", waste: "drain", sources: ["SUPPLIER"], status: "from memory", confirm: true,
  },
  {
    id: "FeSO4(aq)", name: "freshly made aqueous iron(II) sulfate", formula: "FeSO4", kind: "solution", concentration: 0.2, range: [0.1, 0.5], components: { "Fe^2+": 1, "SO4^2-": 1 }, sulfuricAcid: 0.05,
    hazards: ["Low hazard when dilute."], hazardCodes: [],
    limits: ["skin irritant from 25 %, eye irritant from 10 %"],
    firstAid: "rinse", waste: "drain", notes: ["Make it the same day in boiled, cooled water with a little sulfuric acid: air turns it to iron(III)."],
    sources: ["CLP", "SSSX"], status: "from memory", confirm: true,
  },
  {
    id: "Pb(NO3)2(aq)", name: "aqueous lead(II) nitrate", formula: "Pb(NO3)2", kind: "solution", concentration: 0.1, range: [0.05, 0.1], components: { "Pb^2+": 1, "NO3-": 2 },
    hazards: ["Can harm an unborn child; damages organs with repeated use: gloves, smallest amount, wash hands.", "Very toxic to water life."],
    hazardCodes: ["Repr. 1A H360Df", "STOT RE 2 H373", "Aquatic Acute 1", "Aquatic Chronic 1"],
    limits: ["harm to unborn children from 0.3 % (0.009 mol/dm3)"],
    firstAid: "toxic", waste: "lead", sources: ["CLP", "SSSX"], status: "from memory", confirm: true,
  },
  {
    id: "KMnO4(aq)", name: "aqueous potassium manganate(VII)", formula: "KMnO4", kind: "solution", concentration: 0.02, range: [0.005, 0.02], components: { "K+": 1, "MnO4-": 1 },
    hazards: ["Low hazard at this strength; stains skin and cloth brown.", "Toxic to water life."], hazardCodes: ["Aquatic"],
    limits: ["irritates from 0.1 mol/dm3"],
    firstAid: "rinse", waste: "drain", notes: ["Acidify it for the sulfur dioxide test."],
    sources: ["SSS48", "CLP", "CAIE-PLAN"], status: "school limits read; the rest from memory", confirm: true,
  },
  {
    id: "acidified KMnO4(aq)", name: "acidified potassium manganate(VII)", formula: "KMnO4", kind: "solution", concentration: 0.02, range: [0.005, 0.02], components: { "K+": 1, "MnO4-": 1 }, sulfuricAcid: 0.5,
    hazards: ["Irritates skin and eyes (0.5 mol/dm3 sulfuric acid is in it); stains skin and cloth brown.", "Toxic to water life."],
    hazardCodes: ["Skin Irrit. 2 H315", "Eye Irrit. 2 H319", "Aquatic"],
    limits: ["sulfuric acid irritates from 5 % (0.5 mol/dm3)", "potassium manganate(VII) irritates from 0.1 mol/dm3"],
    firstAid: "irritant", waste: "drain",
    notes: ["Equal volumes of 0.04 mol/dm3 potassium manganate(VII) and 1 mol/dm3 sulfuric acid; never hydrochloric acid, which it can turn to chlorine.", "Add it by drops: an excess is purple whatever the sample was."],
    sources: ["SSS48", "CLP", "SSSX"], status: "school limit of the manganate read; the rest from memory", confirm: true,
  },
  {
    id: "acidified K2Cr2O7(aq)", name: "acidified potassium dichromate(VI)", formula: "K2Cr2O7", kind: "solution", concentration: 0.05, range: [0.01, 0.1], components: { "K+": 2, "CrO4^2-": 2, "H+": 2, H2O: -1 }, sulfuricAcid: 0.5,
    hazards: ["Can cause cancer and genetic damage, harm an unborn child and cause allergy of skin and lungs: gloves, dropper bottle, smallest amount.", "Treat as toxic if swallowed. The sulfuric acid in it (0.5 mol/dm3) irritates skin and eyes.", "The solid is toxic if swallowed and an oxidiser: technician only.", "Toxic to water life."],
    hazardCodes: ["Carc. 1B H350", "Muta. 1B H340", "Repr. 1B H360FD", "Resp. Sens. 1 H334", "Skin Sens. 1 H317", "Aquatic Chronic"],
    limits: ["cancer and genetic damage from 0.1 %"],
    firstAid: "toxic", waste: "chromium(VI)",
    notes: ["Many schools no longer use it: acidified manganate(VII) shows the same reducing agents.", "In the constants dichromate(VI) is two chromate(VI) with two protons, less water."],
    sources: ["SSS47", "CLP"], status: "school limits read; the rest from memory", confirm: true,
  },
  {
    id: "acidified H2O2(aq)", name: "acidified hydrogen peroxide, 10 volume", formula: "H2O2", kind: "solution", concentration: 0.9, range: [0.9, 1.7], components: { H2O2: 1 }, sulfuricAcid: 0.5,
    hazards: ["Irritates skin and eyes (0.5 mol/dm3 sulfuric acid is in it): wear eye protection."], hazardCodes: ["Skin Irrit. 2 H315", "Eye Irrit. 2 H319"],
    limits: ["sulfuric acid irritates from 5 % (0.5 mol/dm3)", "peroxide irritates eyes from 1.5 mol/dm3"],
    firstAid: "irritant", waste: "drain", sources: ["SSS57", "CLP", "SSSX"], status: "limits of the peroxide read; the rest from memory", confirm: true,
  },
  {
    id: "H2O2(aq)", name: "aqueous hydrogen peroxide, 10 volume", formula: "H2O2", kind: "solution", concentration: 0.9, range: [0.9, 1.7], components: { H2O2: 1 },
    hazards: ["Low hazard at this strength; wear eye protection."], hazardCodes: [],
    limits: ["irritates eyes from 1.5 mol/dm3", "damages eyes from 2.3 mol/dm3"],
    firstAid: "rinse", waste: "drain", sources: ["SSS57", "CLP"], status: "limits read",
  },
  {
    id: "Cl2(aq)", name: "chlorine water", formula: "Cl2", kind: "solution", concentration: 0.05, range: [0.02, 0.09], components: { Cl2: 1 },
    hazards: ["Gives off chlorine, toxic to breathe: fume cupboard or a well-ventilated room; not near asthmatics."], hazardCodes: [],
    limits: ["saturated at 20 C it holds about 0.09 mol/dm3; an open bottle loses much of it"],
    firstAid: "gas", waste: "neutralise", sources: ["BENCH"], status: "from memory", confirm: true,
  },
  {
    id: "I2(aq)", name: "iodine in potassium iodide solution", formula: "KI3", kind: "solution", concentration: 0.05, range: [0.01, 0.05], components: { "K+": 2.4, "I-": 2.4, I2: 1 },
    hazards: ["Low hazard at this strength; stains skin and cloth brown."], hazardCodes: [],
    limits: ["harmful from 1 mol/dm3"],
    firstAid: "rinse", waste: "drain", notes: ["For each mole of iodine 2.4 mol of potassium iodide, as it is weighed out: without it the iodine would not stay dissolved."],
    sources: ["SSSX", "BENCH"], status: "from memory", confirm: true,
  },
  {
    id: "MgSO4(aq)", name: "aqueous magnesium sulfate", formula: "MgSO4", kind: "solution", concentration: 0.5, range: [0.1, 1], components: { "Mg^2+": 1, "SO4^2-": 1 },
    hazards: ["Low hazard."], hazardCodes: [], limits: ["not classed"],
    firstAid: "rinse", waste: "drain", sources: ["SSS36", "CLP"], status: "school sheet read; the strength from memory",
  },
  {
    id: "Na2SO3(aq)", name: "freshly made aqueous sodium sulfite", formula: "Na2SO3", kind: "solution", concentration: 0.2, range: [0.1, 0.5], components: { "Na+": 2, "SO3^2-": 1 },
    hazards: ["Low hazard itself. Acid sets free sulfur dioxide: toxic, and it can bring on an asthma attack."], hazardCodes: [],
    limits: ["no harmonised class; acid sets free a toxic gas (EUH031)"],
    firstAid: "rinse", waste: "drain", notes: ["Make it the same day: air turns it to sulfate."],
    sources: ["SSSX", "BENCH"], status: "from memory", confirm: true,
  },
  {
    id: "Ca(OH)2(aq)", name: "limewater", formula: "Ca(OH)2", kind: "solution", concentration: 0.02, components: { "Ca^2+": 1, "OH-": 2 },
    hazards: ["Treat as irritating to eyes: it is alkaline, about pH 12.", "The undissolved solid damages eyes."], hazardCodes: [],
    limits: ["not classed at 0.15 %", "saturated: 0.021 to 0.023 mol/dm3 by handbooks, below 0.02 mol/dm3 by the school sheet; less when warm"],
    firstAid: "irritant", waste: "drain", sources: ["SSS32", "SUPPLIER"], status: "school sheet read; the rest from memory", confirm: true,
  },
  {
    id: "K2Cr2O7 paper", name: "acidified potassium dichromate(VI) paper", kind: "paper", concentration: null, components: {},
    hazards: ["Can cause cancer and allergy: tongs or gloves. Acidified manganate(VII) does the same job."],
    hazardCodes: ["Carc. 1B", "Muta. 1B", "Repr. 1B", "Resp. Sens. 1", "Skin Sens. 1"],
    limits: ["cancer and genetic damage from 0.1 %"],
    firstAid: "toxic", waste: "chromium(VI)", sources: ["SSS47", "CLP"], status: "read in part", confirm: true,
  },
  {
    id: "CoCl2 paper", name: "cobalt(II) chloride paper", kind: "paper", concentration: null, components: {},
    hazards: ["Can cause cancer and allergy: do not touch it with fingers; wash hands."], hazardCodes: ["Carc. 1B", "Resp. Sens. 1", "Skin Sens. 1"],
    limits: ["cancer from 0.01 %"],
    firstAid: "toxic", waste: "heavy metal", sources: ["CLP"], status: "from memory", confirm: true,
  },
  {
    id: "litmus paper", name: "litmus paper, red and blue", kind: "paper", concentration: null, components: {},
    hazards: ["Low hazard."], hazardCodes: [], limits: [], firstAid: "rinse", waste: "solid",
    notes: ["Damp it with distilled water for a gas, and keep it off the glass."], sources: ["BENCH"], status: "from memory",
  },
  {
    id: "universal indicator", name: "universal indicator solution", kind: "solution", concentration: null, components: {},
    hazards: ["Flammable if made up in ethanol: away from flames."], hazardCodes: ["Flam. Liq. 2 or 3"], limits: ["the ethanol in it decides"],
    firstAid: "irritant", waste: "drain", sources: ["SUPPLIER"], status: "from memory", confirm: true,
  },
  {
    id: "starch solution", name: "starch solution, 1 %", kind: "solution", concentration: null, components: {},
    hazards: ["Low hazard."], hazardCodes: [], limits: [], firstAid: "rinse", waste: "drain", sources: ["BENCH"], status: "from memory",
  },
  {
    id: "CuSO4(s)", name: "anhydrous copper(II) sulfate", formula: "CuSO4", kind: "solid", concentration: null, components: { "Cu^2+": 1, "SO4^2-": 1 },
    hazards: ["Damages eyes, irritates skin, harmful if swallowed: wear goggles.", "Very toxic to water life."],
    hazardCodes: ["Acute Tox. 4", "Skin Irrit. 2", "Eye Dam. 1", "Aquatic Acute 1", "Aquatic Chronic 1"], limits: [],
    firstAid: "corrosive", waste: "copper or zinc", sources: ["SSS40", "CLP"], status: "school sheet read; the classes from memory", confirm: true,
  },
  {
    id: "Al(s)", name: "aluminium foil", formula: "Al", kind: "solid", concentration: null, components: {},
    hazards: ["Low hazard as foil. In warm alkali it froths and sprays: small pieces, boiling tube, take it off the flame once it starts."], hazardCodes: [],
    limits: ["the powder is flammable: do not use it"],
    firstAid: "rinse", waste: "solid", sources: ["SSS45", "CLP"], status: "school sheet read",
  },
  {
    id: "Zn(s)", name: "granulated zinc", formula: "Zn", kind: "solid", concentration: null, components: {},
    hazards: ["Low hazard as granules. With acid it gives off hydrogen: keep flames away except for the splint."], hazardCodes: [],
    limits: ["the powder is flammable: do not use it"],
    firstAid: "rinse", waste: "solid", notes: ["Rinse what is left and use it again."],
    sources: ["SSS49", "CLP"], status: "school sheet read; the rest from memory", confirm: true,
  },
  {
    id: "H2O(l)", name: "distilled or deionised water", formula: "H2O", kind: "liquid", concentration: null, components: {},
    hazards: ["No hazard."], hazardCodes: [], limits: [], firstAid: "rinse", waste: "drain",
    notes: ["Not tap water: its chloride clouds silver nitrate and its hardness clouds carbonate."], sources: ["BENCH"], status: "common practice, no source",
  },
];
