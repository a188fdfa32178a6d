import type { Reaction } from "./reaction.ts";

/** Chromium(VI): protonation to dichromate, pairs and the sparingly soluble chromates. */
// biome-ignore format: one reaction a block, its chemistry on the first line and where it comes from below
export const chromate: readonly Reaction[] = [
  { reaction: "CrO4^2- + H+ = HCrO4-", logK: 6.51, dH: 2, phase: "aqueous", colour: "orange-yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "CrO4^2- + 2 H+ = H2CrO4", logK: 6.4188, dH: 39, phase: "aqueous", colour: "orange-yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "2 CrO4^2- + 2 H+ = Cr2O7^2- + H2O", logK: 14.56, dH: -15, phase: "aqueous", colour: "orange", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Na+ + CrO4^2- = NaCrO4-", logK: 0.6963, dH: null, phase: "aqueous", colour: "yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "K+ + CrO4^2- = KCrO4-", logK: 0.57, dH: null, phase: "aqueous", colour: "yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true },
  { reaction: "BaCrO4(s) = Ba^2+ + CrO4^2-", logK: -9.67, dH: 33, phase: "solid", colour: "yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    colourNote: "pale" },
  { reaction: "PbCrO4(s) = Pb^2+ + CrO4^2-", logK: -12.6, dH: 44.18, phase: "solid", colour: "bright yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "Ag2CrO4(s) = 2 Ag+ + CrO4^2-", logK: -11.59, dH: 62, phase: "solid", colour: "red-brown", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K",
    alternatives: [{ logK: -11.92, source: "Martell and Smith 1976" }],
    colourNote: "brick red" },
  { reaction: "SrCrO4(s) = Sr^2+ + CrO4^2-", logK: -4.65, dH: -10.1253, phase: "solid", colour: "yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "CaCrO4(s) = Ca^2+ + CrO4^2-", logK: -2.2657, dH: -26.945, phase: "solid", colour: "yellow", formsInMinutes: true,
    source: "minteq", logKVerified: true, dHSource: "as log K" },
  { reaction: "CuCrO4(s) = Cu^2+ + CrO4^2-", logK: -5.44, dH: null, phase: "solid", colour: "brown", formsInMinutes: true,
    source: "minteq", logKVerified: true },
];
