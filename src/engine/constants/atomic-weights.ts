/** Abridged standard atomic weight, in g/mol of atoms. */
export type AtomicWeight = { readonly weight: number; readonly source: "CIAAW 2021"; readonly memory?: true };

const read = (weight: number): AtomicWeight => ({ weight, source: "CIAAW 2021" });
const remembered = (weight: number): AtomicWeight => ({ weight, source: "CIAAW 2021", memory: true });

/**
 * IUPAC Commission on Isotopic Abundances and Atomic Weights, Standard Atomic Weights 2021, abridged to five figures;
 * Prohaska et al., Pure Appl. Chem. 94 (2022) 573. Rows marked as remembered were not compared with the table.
 */
// biome-ignore format: one element a line, in order of atomic number
export const atomicWeights: Readonly<Record<string, AtomicWeight>> = {
  H: read(1.008),
  Li: read(6.94),
  B: remembered(10.81),
  C: read(12.011),
  N: read(14.007),
  O: read(15.999),
  F: remembered(18.998),
  Na: read(22.99),
  Mg: read(24.305),
  Al: read(26.982),
  Si: remembered(28.085),
  P: read(30.974),
  S: read(32.06),
  Cl: read(35.45),
  K: read(39.098),
  Ca: read(40.078),
  Ti: remembered(47.867),
  V: remembered(50.942),
  Cr: read(51.996),
  Mn: read(54.938),
  Fe: read(55.845),
  Co: read(58.933),
  Ni: read(58.693),
  Cu: read(63.546),
  Zn: read(65.38),
  As: remembered(74.922),
  Se: remembered(78.971),
  Br: read(79.904),
  Rb: remembered(85.468),
  Sr: remembered(87.62),
  Mo: remembered(95.95),
  Ag: read(107.87),
  Cd: remembered(112.41),
  Sn: remembered(118.71),
  Sb: remembered(121.76),
  I: read(126.9),
  Cs: remembered(132.91),
  Ba: remembered(137.33),
  Ce: remembered(140.12),
  W: remembered(183.84),
  Hg: remembered(200.59),
  Pb: remembered(207.2),
  Bi: remembered(208.98),
};
