/**
 * What a solution does to a person at which strength, source by source. A limit stands as its source prints it: in mol/dm3, or in per cent
 * by mass, taken as g in 100 cm3 (a density near that of water; good to 5 % at 5 %, and on the careful side). Where sources differ, the
 * stricter is followed and all are shown. Teaching data, not a label: what was not `read` has to be confirmed on the supplier's sheet.
 */
import type { SourceKey } from "./reagents.ts";

/** From harmless to worst: of two sources the one further on is followed. */
export const SEVERITIES = [
  "low hazard",
  "irritant",
  "harmful",
  "damages eyes",
  "corrosive",
  "toxic",
  "serious",
] as const;
export type Severity = (typeof SEVERITIES)[number];

export interface HazardBand {
  /** The least strength at which it holds. */
  readonly from: { readonly percent: number } | { readonly molPerDm3: number };
  readonly severity: Severity;
  /** In plain words, up to the next band. */
  readonly words: string;
}

/** What one source says of one substance. */
export interface LimitRow {
  readonly source: SourceKey;
  readonly read: boolean;
  /** Weakest first. Empty: the source sets no limit, at any strength a school makes up. */
  readonly bands: readonly HazardBand[];
  readonly note?: string;
}

const at = (molPerDm3: number, severity: Severity, words: string): HazardBand => ({
  from: { molPerDm3 },
  severity,
  words,
});
const percent = (value: number, severity: Severity, words: string): HazardBand => ({
  from: { percent: value },
  severity,
  words,
});

const IRRITATES = "irritates skin and eyes";
const IRRITATES_EYES = "irritates eyes";
const EYES = "damages eyes";
const BURNS = "burns skin and damages eyes";
const GENERAL = "class of the solid or gas, with the general limits for mixtures";

/** By formula, water of crystallisation left out. */
// biome-ignore format: one source a block
export const hazardLimits: Readonly<Record<string, readonly LimitRow[]>> = {
  NaOH: [
    { source: "CLP-NAOH", read: true, bands: [percent(0.5, "irritant", IRRITATES), percent(2, "corrosive", BURNS)] },
    { source: "SSSX", read: false, bands: [at(0.1, "irritant", IRRITATES), at(0.5, "corrosive", BURNS)] },
  ],
  NH3: [
    { source: "CLP", read: false, note: GENERAL, bands: [percent(1, "irritant", IRRITATES), percent(3, "damages eyes", "damages eyes and irritates skin"), percent(5, "corrosive", BURNS)] },
    { source: "SSS30", read: true, bands: [at(3, "irritant", IRRITATES), at(6, "corrosive", BURNS)] },
  ],
  HCl: [
    { source: "DE-MAT1", read: true, bands: [percent(10, "irritant", "irritates skin, eyes and throat"), percent(25, "corrosive", BURNS)] },
    { source: "SSSX", read: false, note: "older issue; a newer one says 2.7 mol/dm3", bands: [at(2, "irritant", IRRITATES), at(6.5, "corrosive", BURNS)] },
  ],
  HNO3: [
    { source: "NITRIC-CHIP", read: true, bands: [percent(5, "corrosive", BURNS)] },
    { source: "CLP", read: false, note: "general limits below 5 %", bands: [percent(1, "irritant", IRRITATES), percent(3, "damages eyes", "damages eyes and irritates skin")] },
    { source: "DE-MAT1", read: true, bands: [at(0.5, "damages eyes", "damages eyes and irritates skin"), at(1, "corrosive", BURNS)] },
    { source: "RSC-NEG", read: true, bands: [at(0.4, "irritant", IRRITATES), at(0.5, "corrosive", BURNS)] },
    { source: "SSSX", read: false, bands: [at(0.1, "irritant", IRRITATES), at(0.5, "corrosive", BURNS)] },
  ],
  H2SO4: [
    { source: "SDS-H2SO4", read: true, note: "quoted second-hand", bands: [percent(5, "irritant", IRRITATES), percent(15, "corrosive", BURNS)] },
    { source: "SSSX", read: false, bands: [at(0.5, "irritant", IRRITATES), at(1.5, "corrosive", BURNS)] },
  ],
  CH3COOH: [
    { source: "CLP", read: false, bands: [percent(10, "irritant", IRRITATES), percent(25, "corrosive", BURNS)] },
    { source: "SSSX", read: false, bands: [at(1.7, "irritant", IRRITATES)] },
  ],
  AgNO3: [
    { source: "CLP", read: false, note: `${GENERAL}; the class itself was read, and a stricter one was proposed in 2023`, bands: [percent(1, "irritant", IRRITATES), percent(3, "damages eyes", EYES), percent(5, "corrosive", BURNS)] },
    { source: "SSSX", read: false, bands: [at(0.06, "irritant", IRRITATES), at(0.18, "damages eyes", EYES)] },
    { source: "RSC-NEG", read: true, note: "gives 0.1 mol/dm3 and says only that it stains skin", bands: [] },
  ],
  BaCl2: [
    { source: "RSC-NEG", read: true, note: "by older rules", bands: [at(0.1, "harmful", "harmful if swallowed")] },
    { source: "CLP", read: false, note: "by calculation from 100 mg/kg", bands: [percent(5, "harmful", "harmful if swallowed"), percent(33, "toxic", "toxic if swallowed")] },
  ],
  "Ba(NO3)2": [
    { source: "SSSX", read: false, note: "as for barium chloride", bands: [at(0.1, "harmful", "harmful if swallowed")] },
    { source: "CLP", read: false, note: "by calculation not classed at 2.6 %", bands: [] },
  ],
  KI: [
    { source: "SUPPLIER", read: false, note: "some suppliers only", bands: [percent(1, "harmful", "may harm the thyroid with repeated use")] },
    { source: "SSSX", read: false, bands: [] },
  ],
  K2CrO4: [
    { source: "SSS47", read: true, bands: [at(0.01, "serious", "can cause cancer"), at(0.04, "serious", "can cause cancer and skin allergy")] },
    { source: "CLP", read: false, note: GENERAL, bands: [percent(0.1, "serious", "can cause cancer and genetic damage"), percent(0.5, "serious", "can cause cancer, genetic damage and skin allergy")] },
  ],
  K2Cr2O7: [
    { source: "CLP", read: false, note: GENERAL, bands: [percent(0.1, "serious", "can cause cancer and genetic damage and allergy of skin and lungs")] },
  ],
  Na2CO3: [
    { source: "SSS33", read: true, bands: [at(0.8, "irritant", IRRITATES_EYES)] },
    { source: "CLP", read: false, note: GENERAL, bands: [percent(10, "irritant", IRRITATES_EYES)] },
  ],
  NaHCO3: [{ source: "SSS33", read: true, bands: [] }],
  K2CO3: [{ source: "SSS33", read: true, bands: [at(0.8, "irritant", IRRITATES_EYES)] }],
  NH4Cl: [{ source: "CLP", read: false, note: GENERAL, bands: [percent(10, "irritant", IRRITATES_EYES), percent(25, "harmful", "harmful if swallowed, irritates eyes")] }],
  NaNO2: [{ source: "CLP", read: false, note: "by calculation from 100 mg/kg", bands: [percent(5, "harmful", "harmful if swallowed"), percent(33, "toxic", "toxic if swallowed")] }],
  FeSO4: [{ source: "CLP", read: false, bands: [percent(10, "irritant", IRRITATES_EYES), percent(25, "harmful", "harmful if swallowed, irritates skin and eyes")] }],
  FeCl3: [{ source: "SSSX", read: false, bands: [at(0.2, "irritant", IRRITATES)] }],
  "Pb(NO3)2": [
    { source: "CLP", read: false, bands: [percent(0.3, "serious", "can harm an unborn child"), percent(0.5, "serious", "can harm an unborn child, damages organs with repeated use")] },
    { source: "SSSX", read: false, bands: [at(0.01, "serious", "can harm an unborn child")] },
  ],
  KMnO4: [{ source: "SSS48", read: true, bands: [at(0.1, "irritant", IRRITATES)] }],
  H2O2: [
    { source: "SSS57", read: true, bands: [at(1.5, "irritant", IRRITATES_EYES), at(2.3, "damages eyes", EYES)] },
    { source: "CLP", read: false, bands: [percent(5, "irritant", IRRITATES_EYES), percent(8, "damages eyes", EYES), percent(50, "corrosive", BURNS)] },
  ],
  "Ca(OH)2": [{ source: "SSS32", read: true, note: "saturated; the undissolved solid is worse", bands: [] }],
  KI3: [{ source: "SSSX", read: false, bands: [at(1, "harmful", "harmful if swallowed or on skin")] }],
  MgSO4: [{ source: "SSS36", read: true, bands: [] }],
  MgCl2: [{ source: "SSS36", read: true, bands: [] }],
  "Mg(NO3)2": [{ source: "SSS36", read: true, bands: [at(0.5, "irritant", IRRITATES)] }],
  CaCl2: [{ source: "SSS36", read: true, bands: [at(0.9, "irritant", IRRITATES_EYES)] }],
  "Ca(NO3)2": [{ source: "SSS36", read: true, bands: [at(0.05, "irritant", IRRITATES_EYES), at(0.15, "damages eyes", EYES)] }],
  "Al2(SO4)3": [{ source: "SSS45", read: true, bands: [at(0.03, "irritant", IRRITATES_EYES), at(0.1, "damages eyes", EYES)] }],
  "KAl(SO4)2": [{ source: "SSS45", read: true, bands: [] }],
  "Al(NO3)3": [{ source: "HAZ2B", read: true, note: "an older card", bands: [at(0.5, "irritant", IRRITATES)] }],
  AlCl3: [{ source: "SSS45", read: true, bands: [at(0.8, "irritant", IRRITATES)] }],
  ZnSO4: [
    { source: "SSS49", read: true, note: "older issue", bands: [at(0.4, "harmful", "harmful if swallowed, irritates eyes")] },
    { source: "CLP", read: false, note: GENERAL, bands: [percent(1, "irritant", IRRITATES_EYES), percent(3, "damages eyes", EYES)] },
  ],
  ZnCl2: [{ source: "SSS49", read: true, note: "older issue", bands: [at(0.3, "irritant", IRRITATES), at(0.7, "corrosive", BURNS)] }],
  CuSO4: [{ source: "SSS40", read: true, bands: [at(0.02, "irritant", IRRITATES), at(0.2, "damages eyes", "damages eyes and irritates skin"), at(1, "damages eyes", "damages eyes, harmful if swallowed")] }],
  CuCl2: [{ source: "SSS40", read: true, bands: [at(0.8, "irritant", IRRITATES), at(1.8, "harmful", "harmful if swallowed, irritates skin and eyes")] }],
  "Cu(NO3)2": [{ source: "SSS40", read: true, bands: [at(0.05, "irritant", IRRITATES), at(0.15, "damages eyes", EYES)] }],
  MnSO4: [{ source: "SSS48", read: true, bands: [at(0.7, "harmful", "may damage organs with repeated use")] }],
  MnCl2: [{ source: "SSS48", read: true, bands: [at(1.5, "harmful", "harmful if swallowed")] }],
  "KCr(SO4)2": [{ source: "SSS47", read: true, bands: [at(0.4, "irritant", IRRITATES)] }],
  CoCl2: [{ source: "CLP", read: false, bands: [percent(0.01, "serious", "can cause cancer and allergy")] }],
};
