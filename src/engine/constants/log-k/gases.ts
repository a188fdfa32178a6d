import type { Reaction } from "./reaction.ts";

/** Gases at 1 atm dissolving onto the basis. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const gases: readonly Reaction[] = [
  { reaction: "CO2(g) + H2O = CO3^2- + 2 H+", logK: -18.147, dH: 4.06, phase: "gas", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: false },
  { reaction: "SO2(g) + H2O = SO3^2- + 2 H+", logK: -8.94, dH: -48.42, phase: "gas", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: false },
  { reaction: "NH3(g) = NH3", logK: 1.797, dH: -35.2, phase: "gas", colour: "colourless", formsInMinutes: true,
    source: "llnl", logKVerified: false },
];
