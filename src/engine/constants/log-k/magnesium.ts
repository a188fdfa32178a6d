import type { Reaction } from "./reaction.ts";

/** Magnesium: pairs and solids. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const magnesium: readonly Reaction[] = [
  { reaction: "Mg^2+ + H2O = MgOH+ + H+", logK: -11.397, dH: 67.81, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mg^2+ + SO4^2- = MgSO4(aq)", logK: 2.26, dH: 5.8, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mg^2+ + CO3^2- = MgCO3(aq)", logK: 2.92, dH: 12, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mg^2+ + CO3^2- + H+ = MgHCO3+", logK: 11.339, dH: -10.6, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Mg^2+ + NH3 = [Mg(NH3)]^2+", logK: 0.24, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true },
  { reaction: "Mg(OH)2(s, active) + 2 H+ = Mg^2+ + 2 H2O", logK: 18, dH: -114, phase: "solid", colour: "white", formsInMinutes: true,
    source: "estimate", memory: true,
    alternatives: [{ logK: 16.844, source: "minteq.v4.dat Brucite" }, { logK: 18.794, source: "minteq.v4.dat Mg(OH)2(active)" }] },
  { reaction: "Mg(OH)2(s, brucite) + 2 H+ = Mg^2+ + 2 H2O", logK: 16.844, dH: -114, phase: "solid", colour: "white", formsInMinutes: false,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    why: "aged crystals" },
  { reaction: "MgCO3*3H2O(s) = Mg^2+ + CO3^2- + 3 H2O", logK: -4.67, dH: -24.2, phase: "solid", colour: "white", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "MgCO3(s, magnesite) = Mg^2+ + CO3^2-", logK: -7.46, dH: 20, phase: "solid", colour: "white", formsInMinutes: false,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    why: "never forms in minutes" },
  { reaction: "Mg5(CO3)4(OH)2*4H2O(s, hydromagnesite) + 2 H+ = 5 Mg^2+ + 4 CO3^2- + 6 H2O", logK: -8.766, dH: -218.4, phase: "solid", colour: "white", formsInMinutes: false,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    why: "hot or aged" },
];
