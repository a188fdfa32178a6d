/** What the eye finds in a tube: solids with their colour and amount, and the colour of the liquid. */
import { ABSORPTIVITY } from "../constants/absorptivities.ts";
import { SLOW_SOLIDS } from "../constants/kinetic-gates.ts";
import { basis } from "../constants/log-k/index.ts";
import { STARCH } from "../constants/starch.ts";
import { VISIBILITY } from "../constants/visibility.ts";
import type { Names } from "../equilibrium/named-values.ts";
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

const absorptivities = new Map(Object.entries(ABSORPTIVITY));

/** Species of one colour, with how strongly each is coloured, dm3/(mol cm). */
interface Coloured {
  colour: Colour;
  strengths: [id: string, strength: number][];
}

/** Species that a solid stays for minutes, by its id. */
const meanwhile = new Map(SLOW_SOLIDS.flatMap(({ solid, meanwhile: as }) => (as ? [[solid, as] as const] : [])));

/** Solids without those that stay dissolved for minutes, where there is another to be seen. */
export function inSightAtOnce<T extends { id: string }>(solids: readonly T[]): readonly T[] {
  const others = solids.filter(({ id }) => !meanwhile.has(id));
  return others.length > 0 ? others : solids;
}

/** The coloured ones among the species of a mixture, by colour; the same few mixtures are looked at again and again. */
const colouredOf = new WeakMap<Names, readonly Coloured[]>();

function colouredAmong(names: Names): readonly Coloured[] {
  const known = colouredOf.get(names);
  if (known) return known;
  const byColour = new Map<Colour, Coloured["strengths"]>();
  for (const id of names.keys()) {
    const strength = absorptivities.get(id);
    if (strength === undefined) continue;
    const colour = colourOf.get(id) ?? "colourless";
    byColour.set(colour, [...(byColour.get(colour) ?? []), [id, strength]]);
  }
  const found = [...byColour].map(([colour, strengths]) => ({ colour, strengths }));
  colouredOf.set(names, found);
  return found;
}

/** Looks into a tube that has come to rest; `starch`: it holds starch and is cold enough for its colour. */
export function look(result: EquilibriumResult, starch = false): Sight {
  const cm3 = result.waterKg * 1000;
  const solids: SolidSeen[] = [];
  const held = new Map<string, number>();
  for (const [id, mol] of result.phases) {
    const mass = gramsPerMol.get(id);
    if (mass === undefined || mol <= 0) continue;
    const as = meanwhile.get(id);
    if (as) held.set(as, mol / result.waterKg);
    const grams = mol * mass;
    solids.push({ id, mol, grams, gramsPerDm3: (grams / cm3) * 1000, colour: colourOf.get(id) ?? "white" });
  }
  const coloured = colouredAmong(result.molality.names);
  if (coloured.length === 0) return { solids, solution: "colourless", absorbance: 0, cm3 };
  // Absorbances add up; the colour that takes away most light is the one that is named.
  let solution: Colour = "colourless";
  let absorbance = 0;
  for (const { colour, strengths } of coloured) {
    let own = 0;
    for (const [id, strength] of strengths) {
      own += strength * ((result.molality.get(id) ?? 0) + (held.get(id) ?? 0)) * VISIBILITY.path.value;
    }
    if (own <= absorbance) continue;
    absorbance = own;
    solution = colour;
  }
  const iodine = starch ? STARCH.iodine.reduce((sum, id) => sum + (result.molality.get(id) ?? 0), 0) : 0;
  if (iodine >= STARCH.least.value) {
    absorbance = STARCH.absorptivity.value * iodine * VISIBILITY.path.value;
    solution = STARCH.colour;
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
