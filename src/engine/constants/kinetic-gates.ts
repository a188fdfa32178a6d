/**
 * What equilibrium alone cannot say: reactions that happen (or not) within the minutes of a test. Few, named, each with its source.
 * Solids that do not form in minutes are marked in their own rows (log-k), changes of oxidation state have theirs in redox-gates.ts; here
 * stand the help of heat and what comes slowly.
 */

/** Solids that form only from another one, `of`, when the mixture is boiled, with the temperature from which they do, C. */
export const HEAT_OPENS: readonly {
  id: string;
  solid: string;
  of: string;
  fromCelsius: number;
  name: string;
  source: string;
}[] = [
  {
    id: "copper-oxide",
    solid: "CuO(s)",
    of: "Cu(OH)2(s)",
    fromCelsius: 80,
    name: "copper(II) hydroxide turns to black copper(II) oxide only when boiled",
    source: "boards' notes (light blue) and Vogel (black on boiling), from memory",
  },
];

/**
 * Solids that form within minutes only in part: seen faintly, plainly or not yet, all three are accepted. `usually` is what most people
 * record.
 */
export const SLOW_SOLIDS: readonly {
  id: string;
  solid: string;
  /** Only where this couple of potentials.ts, being oxidised, makes its metal in a mixture more acid than `belowPH`. */
  made?: { by: string; belowPH: number };
  usually: "slight" | "none";
  /** Dissolved species that it stays in the meantime: it colours the liquid, and no other precipitate. */
  meanwhile?: string;
  name: string;
  source: string;
}[] = [
  {
    id: "iodine-stays-dissolved",
    solid: "I2(s)",
    usually: "none",
    meanwhile: "I2",
    name: "iodine stays in the brown solution for minutes before black crystals settle",
    source: "boards' notes and textbooks on potassium iodide with oxidants: a brown solution; from memory",
  },
  {
    id: "gypsum-slow",
    solid: "CaSO4*2H2O(s)",
    usually: "slight",
    name: "calcium sulfate crystallises slowly",
    source:
      "boards' notes and textbooks on calcium with dilute sulfuric acid: only from fairly strong solutions, and slowly; from memory",
  },
  {
    id: "iron-hydroxide-slow-in-acid",
    solid: "Fe(OH)3(s, amorphous)",
    made: { by: "Fe^3+/Fe^2+", belowPH: 3 },
    usually: "none",
    name: "iron(III) that is made of iron(II) in acid is slow to fall as hydroxide: the solution stays clear and turns yellow or brown",
    source:
      "C. M. Flynn, Chem. Rev. 84 (1984) 31, from memory: with fewer than about 2.5 hydroxide for each iron(III), so below about pH 3, solutions stay clear for hours",
  },
];

/**
 * Solids that need alkali: where nothing was brought that takes up acid, a solution stays clear for hours whatever equilibrium says. `least`:
 * moles of acid that must be taken up for each mole of the metal, `of`, before the solid counts.
 */
export const NEEDS_ALKALI = {
  solids: ["Fe(OH)3(s, amorphous)"],
  of: "Fe^3+",
  least: 0.01,
  source:
    "C. M. Flynn, Chem. Rev. 84 (1984) 31, from memory: iron(III) with fewer than about 2.5 hydroxide stays in solution for hours; iron alum of 0.1 mol/dm3 is a bench solution. Our choice of `least`, far below that: drops of alkali bring hydroxide down where they land",
} as const;

/** Acid that a component takes up by its formula, mol for each mole: acids and bases of any textbook. */
export const TAKES_UP_ACID: Readonly<Record<string, number>> = {
  NH3: 1,
  "CO3^2-": 2,
  "SO3^2-": 1,
  "HS-": 1,
  "NO2-": 1,
  "CrO4^2-": 1,
};

/**
 * Solids that have other colours first, too short-lived for a constant. All are accepted, those seen at once before that of the minutes
 * after it. `by`: the couple of potentials.ts that makes the solid.
 */
export const SEEN_FIRST: readonly {
  id: string;
  solid: string;
  by: string;
  colours: readonly ("white" | "yellow" | "brown")[];
  name: string;
  source: string;
}[] = [
  {
    id: "silver-thiosulfate-first",
    solid: "Ag2S(s)",
    by: "S2O3^2-/Ag2S",
    colours: ["white", "yellow", "brown"],
    name: "silver thiosulfate falls white and turns yellow, brown and at last black, silver sulfide, within minutes",
    source: "Vogel and school textbooks on thiosulfate with silver nitrate, from memory",
  },
  {
    id: "sulfur-milky-first",
    solid: "S(s)",
    by: "S2O3^2-/S",
    colours: ["white"],
    name: "sulfur clouds the liquid white, like milk, before it is seen to be pale yellow",
    source: "Vogel and school textbooks on thiosulfate with acid: a white to pale yellow turbidity; from memory",
  },
];

/** Colours that come and go within seconds while a pair of couples (potentials.ts) reacts: seen by whoever looks at once. */
export const FLEETING_COLOURS: readonly { pair: string; colour: "deep blue" | "violet"; source: string }[] = [
  {
    pair: "Cr2O7^2-/Cr^3+ with O2/H2O2",
    colour: "deep blue",
    source:
      "Vogel, from memory: acidified peroxide turns chromate deep blue (chromium peroxide), which fades to green within seconds",
  },
  {
    pair: "Fe^3+/Fe^2+ with S4O6^2-/S2O3^2-",
    colour: "violet",
    source:
      "Vogel, from memory: thiosulfate turns iron(III) dark violet, a complex that fades within seconds to minutes",
  },
];

/**
 * Colours that the textbook names for a reaction whose other coloured product or reactant takes away as much light, as far as absorptivities good to a
 * factor of two can say: told before what is reckoned. `pair` of potentials.ts.
 */
export const NAMED_COLOURS: readonly { pair: string; colour: "green" | "brown"; source: string }[] = [
  {
    pair: "Cr2O7^2-/Cr^3+ with Fe^3+/Fe^2+",
    colour: "green",
    source: "textbook: iron(II) turns acidified dichromate(VI) green, beside the yellow of the iron(III); from memory",
  },
  {
    pair: "Cr2O7^2-/Cr^3+ with I2/I-",
    colour: "brown",
    source:
      "textbook: acidified dichromate(VI) sets brown iodine free from iodide, beside what is left of it; from memory",
  },
];

/**
 * Solids that may fall though the constants keep what they come from dissolved, so that either is accepted. `held`: so much of that, mol/kg.
 * `toPH`: at once in a liquid as acid as this; without it, only once the tube was warmed, boiled or left.
 */
export const MAY_FALL: readonly {
  held: { id: string; molality: number };
  toPH?: number;
  colour: "green" | "white";
  source: string;
}[] = [
  {
    held: { id: "[Cr(OH)4]-", molality: 0.003 },
    colour: "green",
    source:
      "Vogel, from memory: boiling brings chromium(III) hydroxide down again from its solution in alkali; how long that takes is not known, and the least is what would be certain to be seen (0.3 g/dm3, 103 g/mol)",
  },
  {
    held: { id: "S2O3^2-", molality: 0.003 },
    toPH: 2,
    colour: "white",
    source:
      "Vogel, from memory: acid makes thiosulfate milky with sulfur; with little acid, or little thiosulfate left, the potentials have it end at a few tenths of a gram for each dm3 or before, seen or not; both limits are our choice",
  },
];

/** Solids that handbooks let dissolve where the constants leave them, so that either is accepted. `free`: what they dissolve in, mol/kg. */
export const MAY_DISSOLVE: readonly {
  solid: string;
  free: { id: string; molality: number };
  solution: "yellow-brown";
  source: string;
}[] = [
  {
    solid: "Co(OH)2(s)",
    free: { id: "NH3", molality: 0.5 },
    solution: "yellow-brown",
    source:
      "Vogel, from memory: dissolves in excess ammonia, straw then brown in air; the constants let it in concentrated ammonia or beside an ammonium salt only, and how fresh the solid is and how much ammonium there is are not known",
  },
];

/**
 * Solids that fall where a drop lands, while the tube as a whole would hold none: what they need is `of`, all of them in tube or drop. Those
 * that dissolve slowly when the tube is shaken are seen plainly, faintly or not at all; those that dissolve at once are mostly not written
 * down, but they may be. `fromPH`: not in a liquid more acid than this. `seenAs`: an unstable solid without a constant, which this one, that it turns into, stands for.
 */
export const LOCAL_SOLIDS: readonly {
  id: string;
  solid: string;
  of: readonly string[];
  dissolves: "slowly" | "when shaken";
  fromPH?: number;
  seenAs?: { solid: string; colour: "white"; equation: string };
  name: string;
  source: string;
}[] = [
  {
    id: "lead-at-the-drop",
    solid: "Pb(OH)2(s)",
    of: ["Pb^2+"],
    dissolves: "slowly",
    name: "lead(II) hydroxide falls where a drop of alkali lands and is slow to dissolve again",
    source:
      "common practice, no source; boards' notes have a white precipitate with a few drops of alkali, whatever its strength",
  },
  {
    id: "silver-sulfite-at-the-drop",
    solid: "Ag2SO3(s)",
    of: ["Ag+", "SO3^2-"],
    dissolves: "when shaken",
    fromPH: 4,
    name: "white silver sulfite falls where a drop of silver nitrate lands and dissolves in the rest of the sulfite when shaken",
    source:
      "Vogel, from memory: at first nothing is seen to change, as a sulfito complex forms, and more silver nitrate brings white silver sulfite; school tables have a white precipitate, soluble in excess sulfite and in dilute nitric acid; the limit of pH is our choice",
  },
  {
    id: "silver-thiosulfate-at-the-drop",
    solid: "Ag2S(s)",
    of: ["Ag+", "S2O3^2-"],
    dissolves: "when shaken",
    fromPH: 4,
    seenAs: { solid: "Ag2S2O3(s)", colour: "white", equation: "2 Ag+(aq) + S2O3^2-(aq) -> Ag2S2O3(s)" },
    name: "white silver thiosulfate falls where a drop of silver nitrate lands and dissolves in the rest of the thiosulfate when shaken",
    source:
      "Vogel, from memory: at first no precipitate stays, as the complex with two thiosulfates forms; with more silver nitrate silver thiosulfate stays, white, and darkens to silver sulfide; in acid thiosulfate falls apart, and the limit of pH is our choice",
  },
];

/**
 * Volumes of sample that a drop meets as it spreads, in drops. What dissolves as soon as the drop has spread is seen, if at all, at its rim,
 * where it meets less than itself.
 */
export const DROP_SPREADS = {
  slowly: [1, 3, 10],
  "when shaken": [0.3],
  source:
    "our choice: from its own volume to half a cubic centimetre; its own volume alone would leave 1 mol/dm3 lead clear under a drop or two; a rim of a third",
} as const;

/** A solid given that is still mostly there has not turned into another solid in the minutes of a test, whatever equilibrium says. */
export const SOLID_TO_SOLID = {
  id: "solid-to-solid",
  name: "a solid that lies in a liquid turns into another solid only slowly, under a crust of what it turns into",
  /** Part of the given solid that must have gone before another solid made of it counts. */
  gone: { value: 0.5, source: "our choice" },
  source: "common practice, no source",
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
