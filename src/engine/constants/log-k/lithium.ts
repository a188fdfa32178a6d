import type { Reaction } from "./reaction.ts";

/** Lithium: the sulfate pair and the carbonate, the only lithium salt of the bench that is not freely soluble. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const lithium: readonly Reaction[] = [
  { reaction: "Li+ + SO4^2- = LiSO4-", logK: 0.64, dH: null, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Li2CO3(s) = 2 Li+ + CO3^2-", logK: -2.45, dH: -18.2, phase: "solid", colour: "white", formsInMinutes: true,
    source: "handbookRecalled", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory",
    why: "from 1.3 g/100 g of water, no lithium carbonate pair in the model",
    alternatives: [{ logK: -3.09, source: "CRC Handbook, from memory" }] },
];
