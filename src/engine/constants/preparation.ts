/**
 * How each reagent is made up, and what to mind with the ions a sample may hold. A reagent without a row is weighed by its formula, as the
 * store keeps it, and dissolved in deionised water.
 */

/** A sentence with its source. */
export interface SourcedNote {
  readonly text: string;
  readonly source: string;
}

const COMMON = "common practice, no source";
const MEMORY = "from memory of the trade";

export interface Making {
  /** Solids to weigh: mol of each for one mol of the reagent. `bought`: the bottles that will do, the usual first. */
  readonly weigh?: readonly { readonly bought: readonly string[]; readonly molPerMol: number }[];
  /** Stocks of which one is measured, the usual first. */
  readonly stocks?: readonly string[];
  /** What is taken for each dm3, g, where strength has no meaning or is that of a saturated solution. */
  readonly grams?: readonly { readonly what: string; readonly perDm3: number }[];
  /** Said instead of "dissolve and make up". */
  readonly method?: string;
  /** Bought or made as the employer says: nothing is reckoned. */
  readonly ready?: true;
  readonly source: string;
}

/** By id of the reagent. */
// biome-ignore format: one reagent a block
export const makings: Readonly<Record<string, Making>> = {
  "NaOH(aq)": { method: "A few pellets at a time into cold water, stirring: it gets hot. Cool, then make up. Plastic bottle, no glass stopper.", source: MEMORY },
  "NH3(aq)": { stocks: ["880 ammonia", "25 % ammonia"], source: "stock's own" },
  "HCl(aq)": { stocks: ["concentrated hydrochloric acid"], source: "stock's own" },
  "HNO3(aq)": { stocks: ["concentrated nitric acid"], source: "stock's own" },
  "H2SO4(aq)": { stocks: ["concentrated sulfuric acid"], source: "stock's own" },
  "CH3COOH(aq)": { stocks: ["glacial ethanoic acid"], source: "stock's own" },
  "AgNO3(aq)": { method: "Dissolve and make up. Brown bottle: light darkens it.", source: MEMORY },
  "Ba(NO3)2(aq)": { method: "Dissolve in warm water, cool, make up.", source: MEMORY },
  "KI(aq)": { method: "Dissolve and make up. Brown bottle; throw it away when it is yellow.", source: MEMORY },
  "K2CrO4(aq)": { method: "Gloves, and no dust. Dissolve and make up.", source: MEMORY },
  "acidified K2Cr2O7(aq)": { method: "Gloves, and no dust. Dissolve, add the acid, make up.", source: MEMORY },
  "Na2CO3(aq)": { weigh: [{ bought: ["Na2CO3", "Na2CO3*10H2O"], molPerMol: 1 }], source: MEMORY },
  "FeSO4(aq)": { weigh: [{ bought: ["FeSO4*7H2O"], molPerMol: 1 }], method: "Add the acid to the water, dissolve, make up. No ammonium iron(II) sulfate instead: warm alkali would find its ammonia.", source: MEMORY },
  "K4[Fe(CN)6](aq)": { weigh: [{ bought: ["K4[Fe(CN)6]*3H2O"], molPerMol: 1 }], source: MEMORY },
  "K3[Fe(CN)6](aq)": { method: "Dissolve and make up, fresh. Dark bottle.", source: MEMORY },
  "Pb(NO3)2(aq)": { method: "Gloves, and no dust. Dissolve in deionised water, with a few drops of dilute nitric acid if it is cloudy, and make up.", source: MEMORY },
  "KMnO4(aq)": { method: "Dissolve in warm water, let it stand, pour off from any brown solid, make up. Brown bottle.", source: MEMORY },
  "acidified KMnO4(aq)": { method: "Dissolve in warm water, let it stand and cool, pour off from any brown solid; add the acid and make up on the day.", source: MEMORY },
  "H2O2(aq)": { stocks: ["100 volume hydrogen peroxide"], method: "Make up on the day. Vented cap, dark, cool.", source: MEMORY },
  "acidified H2O2(aq)": { stocks: ["100 volume hydrogen peroxide"], method: "Add the acid and make up on the day. Vented cap, dark, cool.", source: MEMORY },
  "I2(aq)": { weigh: [{ bought: ["KI"], molPerMol: 2.4 }, { bought: ["I2"], molPerMol: 1 }], method: "Dissolve the iodide in very little water, then the iodine in that, then make up. Fume cupboard; no metal spatula. Brown bottle.", source: MEMORY },
  "Ca(OH)2(aq)": { grams: [{ what: "calcium hydroxide (an excess: it saturates)", perDm3: 3 }], method: "Shake with boiled and cooled water, leave overnight, pour off or filter until clear. Keep the bottle full and stoppered: air clouds it. Where a test asks for it weaker, dilute some with boiled and cooled water.", source: MEMORY },
  "starch solution": { grams: [{ what: "soluble starch", perDm3: 10 }], method: "Stir to a paste with a little cold water, pour into boiling water, cool. It keeps for a week.", source: MEMORY },
  "Cl2(aq)": { ready: true, method: "Buy it, or make it by your employer's own recipe in a fume cupboard, the same day. Keep it stoppered.", source: MEMORY },
  "universal indicator": { ready: true, method: "Bought ready made.", source: MEMORY },
  "H2O(l)": { ready: true, method: "From the still or the ion exchanger.", source: MEMORY },
};

/** Bottles of a salt besides those in the store's list, water of crystallisation as on their label. From memory. */
export const ALSO_SOLD: readonly { readonly name: string; readonly formula: string }[] = [
  { name: "sodium carbonate decahydrate", formula: "Na2CO3*10H2O" },
  { name: "aluminium sulfate-18-water", formula: "Al2(SO4)3*18H2O" },
  { name: "sodium sulfate decahydrate", formula: "Na2SO4*10H2O" },
  { name: "sodium thiosulfate, anhydrous", formula: "Na2S2O3" },
  { name: "potassium hexacyanoferrate(II) trihydrate", formula: "K4[Fe(CN)6]*3H2O" },
  { name: "potassium hexacyanoferrate(III)", formula: "K3[Fe(CN)6]" },
  { name: "sodium hydroxide, pellets", formula: "NaOH" },
  { name: "potassium iodide", formula: "KI" },
  { name: "iodine", formula: "I2" },
  { name: "potassium manganate(VII)", formula: "KMnO4" },
  { name: "potassium dichromate(VI)", formula: "K2Cr2O7" },
  { name: "potassium thiocyanate", formula: "KSCN" },
];

/** What to mind when a sample holds the ion. */
export const sampleNotes: Readonly<Record<string, SourcedNote>> = {
  "Fe^2+": {
    text: "Make it the same day in boiled and cooled water: air turns it to iron(III).",
    source: "school sheet on iron, read in part",
  },
  "Fe^3+": {
    text: "If a brown cloud forms, add a few drops of the dilute acid with the same anion, and no more.",
    source: COMMON,
  },
  "Pb^2+": {
    text: "Deionised water. If it is cloudy, a few drops of dilute nitric acid clear it; add them only to a nitrate.",
    source: MEMORY,
  },
  "Ag+": { text: "Deionised water only, and a brown bottle.", source: MEMORY },
  "Al^3+": {
    text: "It is acidic, near pH 3: litmus goes red without any free acid.",
    source: "CLEAPSS Hazcard 2B, Aluminium compounds (2007)",
  },
  "I-": { text: "Brown bottle; throw it away when it is yellow.", source: MEMORY },
  "SO3^2-": {
    text: "Make it the same day: air turns it to sulfate, and the barium test then misleads.",
    source: COMMON,
  },
  "NO2-": { text: "Make it the same day.", source: COMMON },
};

/** The last word on a class's bottles, said on every sheet. */
export const classTrial: readonly SourcedNote[] = [
  {
    text: "Carry out the tests yourself the day before, with the same bottles that the class will get.",
    source: "Cambridge 0620/05, instructions to supervisors, 2003 and 2009: a trial by the supervisor",
  },
  {
    text: "Keep what is left of each bottle back until the reports are written: a group may ask for more.",
    source: "Cambridge 0654/52, 2019: more material may be issued",
  },
  { text: "Keep the master list of letters and salts where no student sees it.", source: COMMON },
];

/** Who decides. Shown in plain sight on every sheet. */
export const WHO_DECIDES =
  "Your employer's risk assessment and your local rules decide, and come before anything on this sheet. " +
  "The hazards below are teaching data, not labels: take what goes onto a label from the supplier's safety data sheet.";
