import type { Reaction } from "./reaction.ts";

/** Water, ammonia and the weak acids, and the pairs that alkali metal and ammonium ions form with anions. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const acidsAndBases: readonly Reaction[] = [
  { reaction: "H2O = OH- + H+", logK: -13.997, dH: 55.81, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "NH3 + H+ = NH4+", logK: 9.244, dH: -52, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: false },
  { reaction: "CO3^2- + H+ = HCO3-", logK: 10.329, dH: -14.6, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "CO3^2- + 2 H+ = H2CO3", logK: 16.681, dH: -23.76, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "SO4^2- + H+ = HSO4-", logK: 1.99, dH: 22, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "SO3^2- + H+ = HSO3-", logK: 7.17, dH: 3.668, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true, dHSource: "as log K" },
  { reaction: "SO3^2- + 2 H+ = H2SO3", logK: 9.03, dH: 21.453, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true, dHSource: "as log K" },
  { reaction: "Na+ + SO4^2- = NaSO4-", logK: 0.73, dH: 1, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "K+ + SO4^2- = KSO4-", logK: 0.85, dH: 4.1, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "NH3 + H+ + SO4^2- = NH4SO4-", logK: 10.274, dH: -52, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteqRecombined", logKVerified: false },
  { reaction: "Na+ + CO3^2- = NaCO3-", logK: 1.27, dH: -20.35, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Na+ + CO3^2- + H+ = NaHCO3(aq)", logK: 10.079, dH: -28.33, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
];
