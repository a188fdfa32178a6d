import type { Reaction } from "./reaction.ts";

/** Nitrite: nitrous acid, complexes, silver nitrite and the brown nitrosyl of iron(II). */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const nitrite: readonly Reaction[] = [
  { reaction: "NO2- + H+ = HNO2", logK: 3.15, dH: -14.6, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "nist46", memory: true, dHSource: "formation enthalpies of the NBS tables, from memory" },
  { reaction: "2 NO2- + 2 H+ = N2O3(aq) + H2O", logK: 3.78, dH: null, phase: "aqueous", colour: "pale blue", formsInMinutes: true,
    source: "speciesLiterature", memory: true,
    why: "2 HNO2 = N2O3 + H2O with log K -2.52: the pale blue of cold acidified nitrite" },
  { reaction: "Ag+ + NO2- = AgNO2(aq)", logK: 2.32, dH: -29, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ag+ + 2 NO2- = [Ag(NO2)2]-", logK: 2.51, dH: -46, phase: "aqueous", colour: "colourless", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Cu^2+ + NO2- = CuNO2+", logK: 2.02, dH: null, phase: "aqueous", colour: "green", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Cu^2+ + 2 NO2- = Cu(NO2)2(aq)", logK: 3.03, dH: null, phase: "aqueous", colour: "green", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "Fe^2+ + NO = [FeNO]^2+", logK: 2.65, dH: null, phase: "aqueous", colour: "brown", formsInMinutes: true,
    source: "speciesLiterature", memory: true,
    colourNote: "the brown of the ring test" },
  { reaction: "AgNO2(s) = Ag+ + NO2-", logK: -4.1, dH: null, phase: "solid", colour: "pale yellow", formsInMinutes: true,
    source: "handbookRecalled", memory: true,
    why: "from 4.2 g/dm3 with the complexes above counted",
    alternatives: [{ logK: -3.22, source: "CRC Handbook, from memory (complexes not counted: five times too soluble here)" }],
    colourNote: "white to pale yellow" },
  { reaction: "NO(g) = NO", logK: -2.72, dH: -12.5, phase: "gas", colour: "colourless", formsInMinutes: true,
    source: "henry", memory: true,
    colourNote: "turns brown (NO2) where it meets air" },
];
