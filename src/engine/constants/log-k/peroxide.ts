import type { Reaction } from "./reaction.ts";

/** Hydrogen peroxide, oxygen and hydrogen, manganese dioxide and silver as they turn up in redox tests. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const peroxide: readonly Reaction[] = [
  { reaction: "H2O2 = HO2- + H+", logK: -11.65, dH: 34, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true, dHSource: "as log K, from memory" },
  { reaction: "O2(g) = O2", logK: -2.906, dH: -12.5, phase: "gas", colour: "colourless", formsInMinutes: true,
    source: "minteqDifference", logKVerified: true, dHSource: "Henry constants of R. Sander, from memory" },
  { reaction: "H2(g) = H2", logK: -3.11, dH: -4.2, phase: "gas", colour: "colourless", formsInMinutes: true,
    source: "henry", memory: true },
  { reaction: "MnO2(s) = MnO2", logK: -8, dH: null, phase: "solid", colour: "dark brown", formsInMinutes: true,
    source: "formal", group: "formation-gate" },
  { reaction: "Ag(s) = Ag", logK: -8, dH: null, phase: "solid", colour: "grey", formsInMinutes: true,
    source: "formal", group: "formation-gate",
    colourNote: "grey to black when finely divided" },
];
