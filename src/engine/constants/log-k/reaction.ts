import type { SourceKey } from "./sources.ts";

/** A second point of log K against temperature. */
export type SecondPoint = {
  readonly celsius: number;
  readonly logK: number;
  /** The solubility it was converted from with the engine's own species and activities, and who printed that. */
  readonly source: string;
  /** The solubility is remembered, not read in its source. */
  readonly memory?: true;
};

/** One equilibrium constant at 25 C and ionic strength 0, on the molal scale (gases at 1 atm). */
export type Reaction = {
  /**
   * The reaction in mhchem notation. An aqueous row forms one mole of a species, which stands first on the right; a solid
   * or gas row dissolves one mole of it, which stands first on the left. All other terms are basis components or H2O.
   * The species is known elsewhere by exactly the text of its term: `[Ag(NH3)2]+`, `AgCl(s)`, `Zn(OH)2(s, amorphous)`.
   */
  readonly reaction: string;
  readonly logK: number;
  /** Enthalpy of the reaction as written, kJ/mol; null where none is known. */
  readonly dH: number | null;
  readonly phase: "aqueous" | "solid" | "gas";
  readonly colour: string;
  readonly colourNote?: string;
  readonly source: SourceKey;
  /** The figure is remembered, not read in its source. */
  readonly memory?: true;
  /** Whether the species appears within the minutes of a test-tube test at room temperature. */
  readonly formsInMinutes: boolean;
  /** Why the row is left out, or why this value was taken. */
  readonly why?: string;
  /** Rows that are only of use together, such as `basic-salt`. */
  readonly group?: string;
  readonly alternatives?: readonly { readonly logK: number; readonly source: string }[];
  /** Where dH comes from; absent where it was not recorded. */
  readonly dHSource?: string;
  /** log K at another temperature, where constant dH alone strays too far from the solubility when hot. */
  readonly second?: SecondPoint;
  /** Whether log K was compared with the text of the named source. */
  readonly logKVerified?: boolean;
};
