/** What the eye finds in a tube: solids with their colour and amount, and the colour of the liquid. */
import { ABSORPTIVITY } from "../constants/absorptivities.ts";
import { basis } from "../constants/log-k/index.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { EquilibriumResult } from "../equilibrium/solve.ts";
import { compileDatabase } from "../equilibrium/species.ts";
import { molarMass } from "../formula/molar-mass.ts";
import { parseFormula } from "../formula/parse.ts";
import type { Colour } from "../practical.ts";

export interface SolidSeen {
  id: string;
  mol: number;
  grams: number;
  gramsPerDm3: number;
  colour: Colour;
}

export interface Sight {
  solids: SolidSeen[];
  solution: Colour;
  /** Absorbance behind the colour. */
  absorbance: number;
  cm3: number;
}

const database = compileDatabase();
const basisColour = new Map(basis.map(({ id, colour }) => [id, colour]));
const colourOf = new Map<string, Colour>(
  [...database.species, ...database.phases].map((entry) => [
    entry.id,
    (entry.row?.colour ?? basisColour.get(entry.id) ?? "colourless") as Colour,
  ]),
);
const gramsPerMol = new Map(
  database.phases.flatMap((phase) => (phase.kind === "solid" ? [[phase.id, molarMass(parseFormula(phase.id))]] : [])),
);

/** Looks into a tube that has come to rest. */
export function look(result: EquilibriumResult): Sight {
  const cm3 = result.waterKg * 1000;
  const solids: SolidSeen[] = [];
  for (const [id, mol] of result.phases) {
    const mass = gramsPerMol.get(id);
    if (mass === undefined || mol <= 0) continue;
    const grams = mol * mass;
    solids.push({ id, mol, grams, gramsPerDm3: (grams / cm3) * 1000, colour: colourOf.get(id) ?? "white" });
  }
  let solution: Colour = "colourless";
  let absorbance = 0;
  for (const [id, strength] of Object.entries(ABSORPTIVITY)) {
    const molality = result.molality.get(id);
    if (molality === undefined) continue;
    const own = strength * molality * VISIBILITY.path.value;
    if (own > absorbance) {
      absorbance = own;
      solution = colourOf.get(id) ?? "colourless";
    }
  }
  if (absorbance < VISIBILITY.absorbance.value) solution = "colourless";
  return { solids, solution, absorbance, cm3 };
}

/** Colour of several solids seen together: a coloured one shows over white from a fifth of the mass. */
export function colourTogether(solids: readonly { grams: number; colour: Colour }[]): Colour {
  const all = solids.reduce((sum, { grams }) => sum + grams, 0);
  const byMass = [...solids].sort((a, b) => b.grams - a.grams);
  const coloured = byMass.find(({ grams, colour }) => colour !== "white" && grams >= all / 5);
  return (coloured ?? byMass[0])?.colour ?? "white";
}
