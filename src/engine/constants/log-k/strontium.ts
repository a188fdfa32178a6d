import type { Reaction } from "./reaction.ts";

/** Strontium: pairs and solids. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const strontium: readonly Reaction[] = [
  { reaction: "Sr^2+ + H2O = SrOH+ + H+", logK: -13.177, dH: 60.81, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Sr^2+ + CO3^2- = SrCO3(aq)", logK: 2.81, dH: 20, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Sr^2+ + CO3^2- + H+ = SrHCO3+", logK: 11.539, dH: 10.4, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Sr^2+ + SO4^2- = SrSO4(aq)", logK: 2.3, dH: 8, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Sr^2+ + NO3- = SrNO3+", logK: 0.6, dH: -10, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Sr^2+ + NH3 = [Sr(NH3)]^2+", logK: -0.1, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteqDifference", logKVerified: true },
  { reaction: "SrCO3(s) = Sr^2+ + CO3^2-", logK: -9.27, dH: null, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true,
    alternatives: [{ logK: -9.03, source: "Martell and Smith 1976" }] },
  { reaction: "SrSO4(s) = Sr^2+ + SO4^2-", logK: -6.62, dH: 2, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Sr(OH)2*8H2O(s) + 2 H+ = Sr^2+ + 10 H2O", logK: 25.2, dH: -51.9, phase: "solid", colour: "white", formsInMinutes: true,
    source: "handbookRecalled", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory",
    why: "from about 0.185 mol/dm3 at 25 C",
    alternatives: [{ logK: 24.5, source: "solubility product 3.2e-4 of Lange's Handbook, from memory" }] },
];
