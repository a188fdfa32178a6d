import type { Reaction } from "./reaction.ts";

/** Barium: pairs and solids. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const barium: readonly Reaction[] = [
  { reaction: "Ba^2+ + H2O = BaOH+ + H+", logK: -13.357, dH: 60.81, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ba^2+ + CO3^2- = BaCO3(aq)", logK: 2.71, dH: 16, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ba^2+ + CO3^2- + H+ = BaHCO3+", logK: 11.309, dH: 10.4, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ba^2+ + NO3- = BaNO3+", logK: -0.31, dH: 6.819, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true, dHSource: "as log K",
    alternatives: [{ logK: 0.7, source: "minteq.v4.dat (PHREEQC distribution)" }] },
  { reaction: "Ba^2+ + SO4^2- = BaSO4(aq)", logK: 2.7, dH: 7.367, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ba^2+ + NH3 = [Ba(NH3)]^2+", logK: -0.2, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteqRecombined", logKVerified: false },
  { reaction: "BaSO4(s) = Ba^2+ + SO4^2-", logK: -9.98, dH: 23, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "BaCO3(s) = Ba^2+ + CO3^2-", logK: -8.57, dH: 4, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "BaSO3(s) = Ba^2+ + SO3^2-", logK: -9.3, dH: null, phase: "solid", colour: "white", formsInMinutes: true,
    source: "crc", memory: true,
    alternatives: [{ logK: -6.1, source: "Lange's, from memory" }] },
  { reaction: "Ba(OH)2*8H2O(s) + 2 H+ = Ba^2+ + 10 H2O", logK: 25.5, dH: -54.32, phase: "solid", colour: "white", formsInMinutes: true,
    source: "handbookSolubility", memory: true,
    alternatives: [{ logK: 24.394, source: "minteq.v4.dat (gives 0.07 mol/L solubility, a third of the handbook value, and a false precipitate)" }, { logK: 23.87, source: "sit.dat" }] },
  { reaction: "Ba(NO3)2(s) = Ba^2+ + 2 NO3-", logK: -1.65, dH: 41, phase: "solid", colour: "white", formsInMinutes: true,
    source: "handbookSolubility", memory: true,
    alternatives: [{ logK: -2.33, source: "CRC, from memory (gives half the handbook solubility)" }] },
];
