import type { Reaction } from "./reaction.ts";

/** Iodine and triiodide. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const iodine: readonly Reaction[] = [
  { reaction: "I- + I2 = I3-", logK: 2.85, dH: -17, phase: "aqueous", colour: "brown", formsInMinutes: true,
    source: "nist46", memory: true },
  { reaction: "I2(s) = I2", logK: -2.87, dH: 22.6, phase: "solid", colour: "grey-black", formsInMinutes: true,
    source: "crc", memory: true },
];
