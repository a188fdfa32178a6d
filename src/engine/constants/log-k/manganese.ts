import type { Reaction } from "./reaction.ts";

/** Manganese(II). */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const manganese: readonly Reaction[] = [
  { reaction: "Mn^2+ + H2O = MnOH+ + H+", logK: -10.597, dH: 55.81, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mn^2+ + 2 H2O = Mn(OH)2(aq) + 2 H+", logK: -22.2, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true },
  { reaction: "Mn^2+ + 3 H2O = [Mn(OH)3]- + 3 H+", logK: -34.8, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Mn^2+ + 4 H2O = [Mn(OH)4]^2- + 4 H+", logK: -48.288, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Mn^2+ + SO4^2- = MnSO4(aq)", logK: 2.25, dH: 8.7, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mn^2+ + Cl- = MnCl+", logK: 0.1, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Mn^2+ + NO3- = MnNO3+", logK: 0.2, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Mn^2+ + CO3^2- + H+ = MnHCO3+", logK: 11.629, dH: -10.6, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mn^2+ + NH3 = [Mn(NH3)]^2+", logK: 0.7, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true },
  { reaction: "Mn^2+ + 2 NH3 = [Mn(NH3)2]^2+", logK: 1.2, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "sit", logKVerified: true },
  { reaction: "Mn(OH)2(s) + 2 H+ = Mn^2+ + 2 H2O", logK: 15.31, dH: -97.2, phase: "solid", colour: "off-white", formsInMinutes: true,
    source: "llnl", logKVerified: true, dHSource: "as log K" },
  { reaction: "MnCO3(s) = Mn^2+ + CO3^2-", logK: -10.58, dH: -1.88, phase: "solid", colour: "off-white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
];
