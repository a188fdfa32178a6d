/** What somebody says of a practical they want written. */
export interface Wanted {
  title: string;
  summary: string;
  level: string;
  minutes: number;
  order: number;
  samples: { label: string; salt: string }[];
  /** Of all samples. */
  given: "solution" | "solid" | "both";
  /** Of the solutions, as written: "0.1 mol/dm3". */
  concentration: string;
  /** Names of standard tests, in the order of the parts. */
  tests: string[];
  /** A list, or the name of one that is ready. */
  cations: string | string[];
  anions: string | string[];
}
