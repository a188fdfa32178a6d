/**
 * Tests of the ordinary school bench, to choose from when the tests of a paper leave something open: each a fresh portion, and tests done one
 * after the other in it. Written as an author writes a practical, for a sample in solution. Of equal use the one that stands first is chosen,
 * so the harmless ones come before those that need a toxic reagent or give off a toxic gas.
 */

/** A step as an author writes it: see `practical/step.ts`. */
export type WrittenStep = Readonly<Record<string, string | number | boolean>>;

export interface StandardTest {
  /** Kebab case; names the test for good. */
  id: string;
  /** What it is called on the bench. */
  title: string;
  /** One list of steps for each observation. */
  tests: readonly (readonly WrittenStep[])[];
  /** Where the test is described, or "common practice, no source". */
  source: string;
}

/** Read: the tables of tests for ions and gases. Amounts and strengths are common practice, no source. */
const NOTES = "Cambridge International 5070 Chemistry syllabus (2023), notes for qualitative analysis";
const FLAMES = "Pearson Edexcel International GCSE Chemistry (4CH1) specification, flame tests";
const VOGEL = "Vogel's Qualitative Inorganic Analysis, from memory";
const PRACTICE = "common practice, no source";

const take: WrittenStep = { take: "1 cm3" };
const add = (reagent: string, volume = "1 cm3"): WrittenStep => ({ add: reagent, volume });
const drops = (reagent: string, count = 5): WrittenStep => ({ add: reagent, drops: count });
const excess = (reagent: string): WrittenStep => ({ add: reagent, until: "in excess" });
const gas = (test: string): WrittenStep => ({ testGas: test });
const warm: WrittenStep = { warm: true };

export const STANDARD_TESTS: readonly StandardTest[] = [
  {
    id: "sodium-hydroxide",
    title: "Sodium hydroxide",
    tests: [[take, drops("NaOH(aq)")], [excess("NaOH(aq)")]],
    source: NOTES,
  },
  { id: "ammonia", title: "Aqueous ammonia", tests: [[take, drops("NH3(aq)")], [excess("NH3(aq)")]], source: NOTES },
  {
    id: "ammonium",
    title: "Warm alkali",
    tests: [[take, add("NaOH(aq)"), warm, gas("damp red litmus")]],
    source: NOTES,
  },
  {
    id: "nitrate",
    title: "Alkali and aluminium foil",
    // Any ammonium is driven off and found first, or it would pass for a nitrate.
    tests: [
      [take, add("NaOH(aq)", "2 cm3"), warm, gas("damp red litmus")],
      [{ add: "Al(s)", pieces: 1 }, warm, gas("damp red litmus")],
    ],
    source: NOTES,
  },
  { id: "sulfate", title: "Barium nitrate", tests: [[take, add("HNO3(aq)"), add("Ba(NO3)2(aq)")]], source: NOTES },
  {
    id: "sulfite",
    title: "Barium nitrate, then acid",
    tests: [[take, add("Ba(NO3)2(aq)")], [add("HNO3(aq)", "2 cm3")]],
    source: VOGEL,
  },
  { id: "sulfuric-acid", title: "Dilute sulfuric acid", tests: [[take, add("H2SO4(aq)")]], source: VOGEL },
  {
    id: "iodide",
    title: "Potassium iodide",
    tests: [[take, add("KI(aq)")]],
    source: `${VOGEL}; for lead(II) ${PRACTICE}`,
  },
  { id: "carbonate", title: "Dilute acid", tests: [[take, add("HCl(aq)"), gas("limewater")]], source: NOTES },
  { id: "flame", title: "Flame test", tests: [[{ flame: true }]], source: FLAMES },
  { id: "carbonate-or-not", title: "Sodium carbonate", tests: [[take, add("Na2CO3(aq)")]], source: VOGEL },
  {
    id: "hydrogencarbonate",
    title: "Magnesium sulfate",
    tests: [[take, add("MgSO4(aq)")], [{ boil: "1 min" }]],
    source: VOGEL,
  },
  // For carbonates and other salts that water leaves a powder: acid enough for 0.05 g of any of them, and the alkali can still be in excess.
  {
    id: "acid-then-alkali",
    title: "Acid, then sodium hydroxide",
    tests: [[take, { ...add("HCl(aq)", "2 cm3"), at: "1 mol/dm3" }], [{ ...excess("NaOH(aq)"), at: "1 mol/dm3" }]],
    source: PRACTICE,
  },
  {
    id: "acid-then-ammonia",
    title: "Acid, then aqueous ammonia",
    tests: [[take, { ...add("HNO3(aq)", "2 cm3"), at: "1 mol/dm3" }], [{ ...excess("NH3(aq)"), at: "2 mol/dm3" }]],
    source: PRACTICE,
  },
  // After the tests that do without silver, which is dear.
  {
    id: "halide",
    title: "Silver nitrate",
    tests: [[take, add("HNO3(aq)"), add("AgNO3(aq)")], [excess("NH3(aq)")]],
    source: NOTES,
  },
  { id: "thiocyanate", title: "Potassium thiocyanate", tests: [[take, drops("KSCN(aq)")]], source: VOGEL },
  {
    id: "hexacyanoferrate-ii",
    title: "Potassium hexacyanoferrate(II)",
    tests: [[take, drops("K4[Fe(CN)6](aq)")]],
    source: VOGEL,
  },
  {
    id: "hexacyanoferrate-iii",
    title: "Potassium hexacyanoferrate(III)",
    tests: [[take, drops("K3[Fe(CN)6](aq)")]],
    source: VOGEL,
  },
  {
    id: "manganate",
    title: "Acidified manganate(VII)",
    tests: [[take, drops("acidified KMnO4(aq)", 3)]],
    source: `${NOTES}, for sulfite`,
  },
  {
    id: "nitrite",
    title: "Acid, then potassium iodide",
    tests: [[take, add("H2SO4(aq)"), add("KI(aq)")]],
    source: VOGEL,
  },
  { id: "chlorine-water", title: "Chlorine water", tests: [[take, add("Cl2(aq)")]], source: PRACTICE },
  { id: "lead", title: "Lead(II) nitrate", tests: [[take, add("HNO3(aq)"), add("Pb(NO3)2(aq)")]], source: VOGEL },
  { id: "chromate", title: "Potassium chromate(VI)", tests: [[take, add("K2CrO4(aq)")]], source: VOGEL },
];
