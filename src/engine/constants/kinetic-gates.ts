/**
 * What equilibrium alone cannot say: reactions that happen (or not) within the minutes of a test. Few, named, each with its source.
 * Solids that do not form in minutes are marked in their own rows (log-k); these gates are the changes of oxidation state and the
 * help of heat.
 */
export interface KineticGate {
  id: string;
  /** In words, for the page. */
  name: string;
  /** The reaction as it is taken to happen, mhchem, balanced. */
  equation: string;
  /** Change of each component for one turn of the equation, mol. */
  change: Readonly<Record<string, number>>;
  /** Needed in the tube. */
  needs: { heat?: true; aluminium?: true; alkali?: true; notAlkaline?: true };
  /** A product that binds some of a reactant in a solid: CuI takes one more iodide for each copper(I). */
  binds?: { ion: string; with: string; moles: number };
  /** Part of the limiting reactant that reacts in the time of the test. */
  extent: number;
  source: string;
}

/** Changes of oxidation state, tried in this order. */
export const REDOX_GATES: readonly KineticGate[] = [
  {
    id: "iodide-copper",
    name: "copper(II) oxidises iodide at once",
    equation: "2 Cu^2+(aq) + 4 I-(aq) -> 2 CuI(s) + I2(aq)",
    change: { "Cu^2+": -2, "I-": -2, "Cu+": 2, I2: 1 },
    binds: { ion: "I-", with: "Cu+", moles: 1 },
    needs: { notAlkaline: true },
    extent: 1,
    source: "textbook reaction (Vogel, qualitative analysis, copper with potassium iodide), from memory",
  },
  {
    id: "iodide-iron",
    name: "iron(III) oxidises iodide at once",
    equation: "2 Fe^3+(aq) + 2 I-(aq) -> 2 Fe^2+(aq) + I2(aq)",
    change: { "Fe^3+": -2, "I-": -2, "Fe^2+": 2, I2: 1 },
    needs: { notAlkaline: true },
    extent: 1,
    source: "textbook reaction (Vogel, qualitative analysis, iron(III) with potassium iodide), from memory",
  },
  {
    id: "aluminium-nitrate",
    name: "aluminium in warm alkali reduces nitrate to ammonia",
    equation: "8 Al(s) + 3 NO3-(aq) + 5 OH-(aq) + 18 H2O(l) -> 8 [Al(OH)4]-(aq) + 3 NH3(aq)",
    change: { "NO3-": -3, NH3: 3, "Al^3+": 8, "H+": -27, H2O: 9 },
    needs: { heat: true, aluminium: true, alkali: true },
    extent: 0.3,
    source: "textbook reaction; that about 30 % is reduced in a minute or two is an assumption, no source",
  },
];

/** Solids that form only when the mixture is boiled, with the temperature from which they do, C. */
export const HEAT_OPENS: readonly { id: string; solid: string; fromCelsius: number; name: string; source: string }[] = [
  {
    id: "copper-oxide",
    solid: "CuO(s)",
    fromCelsius: 80,
    name: "copper(II) hydroxide turns to black copper(II) oxide only when boiled",
    source: "textbook observation (0620 notes: light blue precipitate; Vogel: black on boiling), from memory",
  },
];

/** Why aluminium fizzes in warm alkali, nitrate or not. */
export const ALUMINIUM_IN_ALKALI = {
  equation: "2 Al(s) + 2 OH-(aq) + 6 H2O(l) -> 2 [Al(OH)4]-(aq) + 3 H2(g)",
  source: "textbook reaction",
} as const;

/**
 * Solids that form within minutes only in part: seen faintly, plainly or not yet, all three are accepted. `usually` is what most people
 * record.
 */
export const SLOW_SOLIDS: readonly {
  id: string;
  solid: string;
  usually: "slight" | "none";
  name: string;
  source: string;
}[] = [
  {
    id: "iodine-stays-dissolved",
    solid: "I2(s)",
    usually: "none",
    name: "iodine stays in the brown solution for minutes before black crystals settle",
    source: "boards' and textbook observations with potassium iodide (brown solution), from memory",
  },
  {
    id: "gypsum-slow",
    solid: "CaSO4*2H2O(s)",
    usually: "slight",
    name: "calcium sulfate crystallises slowly",
    source:
      "boards' and textbook notes on calcium with dilute sulfuric acid: only from fairly concentrated solutions, slowly; from memory",
  },
];

/** A solid given that is still mostly there has not turned into another solid in the minutes of a test, whatever equilibrium says. */
export const SOLID_TO_SOLID = {
  id: "solid-to-solid",
  name: "a solid that lies in a liquid turns into another solid only slowly",
  /** Part of the given solid that must have gone before another solid made of it counts. */
  gone: { value: 0.5, source: "our choice" },
  source: "common practice, no source: a crust of product stops such changes",
} as const;

/** Temperature of a tube after a step, C. */
export const TEMPERATURE = {
  room: { value: 25, source: "reference temperature of the constants; benches stand at 15 to 25 C" },
  warm: { value: 60, source: "common practice, no source: warmed gently, too hot to hold for long" },
  /** "Warm" is not a number: a tube warmed a little longer than meant. */
  warmer: { value: 85, source: "common practice, no source: short of boiling" },
  boil: { value: 100, source: "water at 1 atm" },
} as const;

/** Water lost from a test tube that boils over a small flame, cm3/min. */
export const BOILED_AWAY = { value: 0.3, unit: "cm3/min", source: "common practice, no source" } as const;

/** pH that a gate calls alkaline: aluminium dissolves fast only above it, and hydroxides keep metals from iodide well below it. */
export const ALKALINE = {
  strong: { value: 12, source: "common practice, no source: dilute sodium hydroxide" },
  any: { value: 8, source: "hydroxides of iron(III) and copper(II) have formed by then (log K of their rows)" },
} as const;

/** Hydroxides that brown in air while a tube stands: what they become is not predicted. */
export const BROWN_IN_AIR = {
  solids: ["Fe(OH)2(s)", "Mn(OH)2(s)"],
  source: "boards' notes: turns brown on standing in air",
} as const;
