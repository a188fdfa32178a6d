import type { Reaction } from "./reaction.ts";

/** Iodine, triiodide and iodine vapour. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const iodine: readonly Reaction[] = [
  { reaction: "I- + I2 = I3-", logK: 2.85, dH: -17, phase: "aqueous", colour: "brown", formsInMinutes: true,
    source: "nist46", memory: true },
  { reaction: "I2(s) = I2", logK: -2.87, dH: 22.6, phase: "solid", colour: "grey-black", formsInMinutes: true,
    source: "crc", memory: true },
  { reaction: "I2(g) = I2", logK: 0.5, dH: -39.8, phase: "gas", colour: "violet", formsInMinutes: true,
    source: "henry", memory: true, dHSource: "22.6 kJ/mol of the row above less 62.4 kJ/mol, formation enthalpy of the vapour (CODATA), from memory" },
];
