/** What follows from a record and from what the paper says: the shapes only. */

/** A place in the record. */
export interface Place {
  sample: string;
  cell: string;
}

/** Why an ion (or a salt) cannot be in a sample. */
export type Reason =
  /** The observation at `cell` rules it out: the salt (index) would have shown reading `wouldShow` there. */
  | { by: "observation"; cell: string; salt: number; wouldShow: number; fact: number }
  /**
   * The salts with this ion cannot be such a sample at all; `reason` is the computed sentence. `salt` is -1 when the table holds no
   * salt of the ion.
   */
  | { by: "cannot be"; salt: number; reason: string }
  /** Its own observations fit, but no assignment of all samples obeys this statement of the paper (or these, joined by "and"). */
  | { by: "paper"; statement: string }
  /**
   * Its own observations fit, as some salt fits those of every other sample; but no choice of them obeys this statement of the paper. One
   * of `samples` must have been misread: repeating one alone could mend it. Nothing can be concluded before.
   */
  | { by: "not together"; statement: string; samples: string[] }
  /** Its own observations fit, but those of `sample` fit no salt at all, so nothing can be concluded before one is repeated. */
  | { by: "another sample"; sample: string };

export interface IonStanding {
  ion: string;
  kind: "cation" | "anion";
  standing: "certain" | "possible" | "impossible";
  /**
   * For an impossible ion: one reason for each salt that holds it, the clearest first: observations in the order of the paper, then
   * salts that cannot be such a sample, then what the paper says. Empty for a certain or possible ion.
   */
  reasons: Reason[];
}

export interface SampleConclusion {
  sample: string;
  /** Indices into the table's salts that stay possible in some joint assignment. */
  salts: number[];
  ions: IonStanding[];
}

/** What agrees with a record and with what the paper says. */
export interface Agreement {
  /**
   * Number of ways to give every sample a salt so that everything agrees; above 2^53 the nearest number a machine holds. 0: the
   * record fits nothing.
   */
  assignments: number;
  samples: SampleConclusion[];
}

/** What would restore agreement where there is none. */
export interface Repetition {
  /**
   * When nothing fits: every smallest set of record cells such that, were those observations repeated and found otherwise, some
   * assignment would agree; with the salts each set would lead to, by sample. Empty when something fits. Those most easily misread come
   * first (see misreading.ts), and among equals the order of the paper (by sample, then by cell); the first 24 of all.
   */
  repeats: Repeat[];
  /** Set when there are more of them than are told. */
  moreRepeats?: true;
  /** Set when no repeat could help, because what the paper says contradicts itself: the statements in question, in words. */
  contradiction?: string;
}

export interface Conclusion extends Agreement, Repetition {}

/** An observation to repeat, and the readings to look for there: what the salts it would lead to show. */
export interface RepeatedPlace extends Place {
  lookFor: number[];
}

/** Observations to repeat, with the salts that would be left for each sample were those places blank. */
export interface Repeat {
  places: RepeatedPlace[];
  leadsTo: Record<string, number[]>;
}

/** What a test is for: the allowed ions it splits into groups that look different. */
export interface Purpose {
  cell: string;
  /**
   * Each group: salts (indices) that show the same reading, with that reading. A salt with several readings stands in each of their
   * groups; what it would show only at the border makes no group.
   */
  groups: { reading: number; salts: number[]; cations: string[]; anions: string[] }[];
  /** Salts (indices) without a prediction here: they may show anything. */
  unpredicted: number[];
  /**
   * Ion kinds the test tells apart. A kind is listed when it has two ions X and Y such that no observation a salt of X may show could
   * be recorded for a salt of Y, nor the other way round, whatever the other ion is; and some other ion goes with both, so that the
   * difference is theirs. A salt without a prediction here may show anything.
   */
  tellsApart: ("cation" | "anion")[];
  /** Gases that could come off for some allowed salt. */
  gases: string[];
}
