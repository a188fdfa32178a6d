import type { COLOURS } from "../colours.ts";

/**
 * Where a figure was read.
 * - CRC: CRC Handbook of Chemistry and Physics, "Standard Thermodynamic Properties of Chemical Substances", read in the open
 *   copy of that table that the `thermo` package for Python carries.
 * - NBS: The NBS Tables of Chemical Thermodynamic Properties, J. Phys. Chem. Ref. Data 11, suppl. 2 (1982), from memory.
 * - JANAF: NIST-JANAF Thermochemical Tables, 4th ed. (1998), from memory.
 * - colour only: no figures known here; the row says what the substance looks like.
 */
export type ThermochemistrySource = "CRC" | "NBS" | "JANAF" | "colour only";

type ColourName = keyof typeof COLOURS;

/** One substance at 298.15 K and 1 bar. A figure that is absent is unknown here; it is never replaced by a guess in this table. */
export interface SubstanceRow {
  /** mhchem, water of crystallisation included. */
  formula: string;
  state: "s" | "g";
  /** Standard enthalpy of formation, kJ/mol. */
  dHf?: number;
  /** Standard entropy, J/(mol K). */
  S?: number;
  source: ThermochemistrySource;
  /** The figures are remembered, not read. */
  memory?: true;
  /** What it looks like at room temperature; textbook colours, from memory. A gas without one cannot be seen. */
  cold?: ColourName;
  /** While hot, where that differs; textbook colours, from memory. */
  hot?: ColourName;
}
