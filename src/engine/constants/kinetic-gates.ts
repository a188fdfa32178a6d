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
  needs: { heat?: true; aluminium?: true; alkali?: true };
  /** Part of the limiting reactant that reacts in the time of the test. */
  extent: number;
  source: string;
}

/** Changes of oxidation state, tried in this order. */
export const REDOX_GATES: readonly KineticGate[] = [
  {
    id: "iodide-copper",
    name: "copper(II) oxidises iodide at once",
    equation: "2 Cu^2+ + 2 I- = 2 Cu+ + I2(aq)",
    change: { "Cu^2+": -2, "I-": -2, "Cu+": 2, I2: 1 },
    needs: {},
    extent: 1,
    source: "textbook reaction (Vogel, qualitative analysis, copper with potassium iodide), from memory",
  },
  {
    id: "iodide-iron",
    name: "iron(III) oxidises iodide at once",
    equation: "2 Fe^3+ + 2 I- = 2 Fe^2+ + I2(aq)",
    change: { "Fe^3+": -2, "I-": -2, "Fe^2+": 2, I2: 1 },
    needs: {},
    extent: 1,
    source: "textbook reaction (Vogel, qualitative analysis, iron(III) with potassium iodide), from memory",
  },
  {
    id: "aluminium-nitrate",
    name: "aluminium in warm alkali reduces nitrate to ammonia",
    equation: "8 Al(s) + 3 NO3- + 5 OH- + 18 H2O = 8 [Al(OH)4]- + 3 NH3(aq)",
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

/** Solids that form within minutes only in part: seen faintly, plainly or not yet, all three are accepted. */
export const SLOW_SOLIDS: readonly { id: string; solid: string; name: string; source: string }[] = [
  {
    id: "gypsum-slow",
    solid: "CaSO4*2H2O(s)",
    name: "calcium sulfate crystallises slowly",
    source:
      "boards' and textbook notes on calcium with dilute sulfuric acid: only from fairly concentrated solutions, slowly; from memory",
  },
];

/** Temperature of a tube after a step, C. */
export const TEMPERATURE = {
  room: { value: 25, source: "reference temperature of the constants; benches stand at 15 to 25 C" },
  warm: { value: 60, source: "common practice, no source: warmed gently, too hot to hold for long" },
  boil: { value: 100, source: "water at 1 atm" },
} as const;

/** Water lost from a test tube that boils over a small flame, cm3/min. */
export const BOILED_AWAY = { value: 0.3, unit: "cm3/min", source: "common practice, no source" } as const;
