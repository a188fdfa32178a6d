import type { Reaction } from "./reaction.ts";

/** Calcium: pairs and solids. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const calcium: readonly Reaction[] = [
  { reaction: "Ca^2+ + H2O = CaOH+ + H+", logK: -12.697, dH: 64.11, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ca^2+ + CO3^2- = CaCO3(aq)", logK: 3.2, dH: 16, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ca^2+ + CO3^2- + H+ = CaHCO3+", logK: 11.599, dH: 5.4, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ca^2+ + SO4^2- = CaSO4(aq)", logK: 2.36, dH: 7.1, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ca^2+ + NO3- = CaNO3+", logK: 0.5, dH: -5.4, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ca^2+ + NH3 = [Ca(NH3)]^2+", logK: 0.1, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteqRecombined", logKVerified: false },
  { reaction: "Ca(OH)2(s) + 2 H+ = Ca^2+ + 2 H2O", logK: 22.804, dH: -128.62, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "CaSO4*2H2O(s) = Ca^2+ + SO4^2- + 2 H2O", logK: -4.61, dH: 1, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "CaSO3*0.5H2O(s) = Ca^2+ + SO3^2- + 0.5 H2O", logK: -6.5, dH: null, phase: "solid", colour: "white", formsInMinutes: true,
    source: "sit", logKVerified: true },
  { reaction: "CaCO3(s, vaterite) = Ca^2+ + CO3^2-", logK: -7.91, dH: -15, phase: "solid", colour: "white", formsInMinutes: true,
    source: "nist46", memory: true,
    alternatives: [{ logK: -6.4, source: "amorphous CaCO3, from memory" }] },
  { reaction: "CaCO3(s, calcite) = Ca^2+ + CO3^2-", logK: -8.48, dH: -8, phase: "solid", colour: "white", formsInMinutes: false,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    why: "ageing product of the first precipitate (minutes to hours)" },
  { reaction: "CaSO4(s, anhydrite) = Ca^2+ + SO4^2-", logK: -4.36, dH: -7.2, phase: "solid", colour: "white", formsInMinutes: false,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    why: "never forms below about 60 C in minutes" },
];
