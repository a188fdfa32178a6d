import type { Reaction } from "./reaction.ts";

/** Chlorine and bromine in water. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const halogens: readonly Reaction[] = [
  { reaction: "Cl2 + H2O = HClO + H+ + Cl-", logK: -3.4, dH: 21.2, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory" },
  { reaction: "Cl2 + H2O = ClO- + 2 H+ + Cl-", logK: -10.93, dH: 35, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory",
    why: "with pKa 7.53 of HClO" },
  { reaction: "Br2 + Br- = Br3-", logK: 1.23, dH: null, phase: "aqueous", colour: "orange", formsInMinutes: true,
    source: "nist46", memory: true },
  { reaction: "Br2 + H2O = HBrO + H+ + Br-", logK: -8.4, dH: 53.9, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory" },
  { reaction: "Br2 + H2O = BrO- + 2 H+ + Br-", logK: -17.0, dH: 72.8, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory",
    why: "with pKa 8.6 of HBrO" },
  { reaction: "Cl2(g) = Cl2", logK: -1.03, dH: -17.5, phase: "gas", colour: "yellow-green", formsInMinutes: true,
    source: "henry", memory: true },
  { reaction: "Br2(g) = Br2", logK: -0.12, dH: -34, phase: "gas", colour: "red-brown", formsInMinutes: true,
    source: "henry", memory: true },
];
