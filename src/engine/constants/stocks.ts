/**
 * Strong solutions as a store room buys them, from which weaker ones are measured. `cm3PerMol`: how much of the stock holds one mole, cm3:
 * so many to make 1 dm3 of 1 mol/dm3.
 */
import type { SourceKey } from "./reagents.ts";

export interface Stock {
  readonly id: string;
  readonly name: string;
  readonly formula: string;
  readonly cm3PerMol: number;
  /** Said before it is opened. */
  readonly care: string;
  /** Where the figure is from, and how. */
  readonly source: string;
  /** Key of the source, where the figure was read in it. */
  readonly read?: SourceKey;
}

const ACID =
  "Fume cupboard, goggles and gloves. Acid into water, never water into acid, a little at a time and stirring.";
const AMMONIA =
  "Fume cupboard, goggles and gloves: it fumes and burns. Open the bottle slowly, it may be under pressure.";

// biome-ignore format: one stock a block
export const stocks: readonly Stock[] = [
  { id: "880 ammonia", name: "880 ammonia (35 %, 0.88 g/cm3)", formula: "NH3", cm3PerMol: 56, care: AMMONIA,
    source: "British Pharmacopoeia, Appendix I A: 56 cm3 for each mol, made up to 1 dm3", read: "BP-IA" },
  { id: "25 % ammonia", name: "25 % ammonia (0.91 g/cm3)", formula: "NH3", cm3PerMol: 75, care: AMMONIA,
    source: "British Pharmacopoeia, Appendix I A: 13.5 mol/dm3; 75 cm3 for each mol", read: "BP-IA" },
  { id: "concentrated hydrochloric acid", name: "concentrated hydrochloric acid (36 %, 1.18 g/cm3)", formula: "HCl", cm3PerMol: 86, care: ACID,
    source: "from memory (CRC Handbook): 36 % and 1.18 g/cm3 are 11.65 mol/dm3" },
  { id: "concentrated nitric acid", name: "concentrated nitric acid (70 %, 1.42 g/cm3)", formula: "HNO3", cm3PerMol: 64, care: ACID,
    source: "from memory (CRC Handbook): 69 to 70 % and 1.42 g/cm3 are 15.6 to 15.8 mol/dm3" },
  { id: "concentrated sulfuric acid", name: "concentrated sulfuric acid (98 %, 1.84 g/cm3)", formula: "H2SO4", cm3PerMol: 54.4, care: `${ACID} Cool the mixture: it gets very hot.`,
    source: "from memory (CRC Handbook): 98 % and 1.84 g/cm3 are 18.4 mol/dm3" },
  { id: "glacial ethanoic acid", name: "glacial ethanoic acid", formula: "CH3COOH", cm3PerMol: 57, care: `${ACID} It is flammable.`,
    source: "from memory: 17.4 mol/dm3" },
  { id: "100 volume hydrogen peroxide", name: "100 volume hydrogen peroxide (30 %)", formula: "H2O2", cm3PerMol: 114, care: "Goggles and gloves: it burns skin and eyes. Vented cap, dark and cool.",
    source: "from memory: 30 % is 8.8 mol/dm3; the school sheet pairs 100 volume with 8.3 mol/dm3, and old stock is weaker" },
  { id: "dilute sulfuric acid", name: "dilute sulfuric acid, 1 mol/dm3", formula: "H2SO4", cm3PerMol: 1000, care: "Goggles: it irritates skin and eyes.",
    source: "1 mol/dm3 by its label" },
];
