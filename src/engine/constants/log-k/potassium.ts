import type { Reaction } from "./reaction.ts";

/** Potassium: the nitrate, which crystallises when a hot strong solution cools. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const potassium: readonly Reaction[] = [
  { reaction: "KNO3(s) = K+ + NO3-", logK: 0.887, dH: 34.9, phase: "solid", colour: "white", formsInMinutes: true,
    source: "handbookRecalled", memory: true, dHSource: "enthalpy of solution, CRC Handbook, from memory",
    why: "from 38.3 g in 100 g of water; at such strength the figure holds only with the activities of this engine",
    second: { celsius: 80, logK: 2.142, source: "169 g of KNO3 in 100 g of water at 80 C, CRC Handbook, from memory", memory: true } },
];
