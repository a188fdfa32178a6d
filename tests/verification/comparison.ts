/** The result of holding the engine against one outside reference. */
export interface Miss {
  /** The reference's own id for the row. */
  id: string;
  /** What the reference says and what the engine finds. */
  difference: string;
  /** Why they differ, from tests/reference/known-differences.json; absent when nobody has explained it. */
  reason?: string;
}

export interface Comparison {
  name: string;
  source: string;
  compared: number;
  agreed: number;
  misses: Miss[];
  /** Rows of the reference that the engine does not cover yet, with the number of them by cause. */
  left: Record<string, number>;
  /** Rows that agree only through the second reading of a borderline prediction. */
  borderline: number;
}

/** An empty comparison to count into. */
export const comparison = (name: string, source: string): Comparison => ({
  name,
  source,
  compared: 0,
  agreed: 0,
  misses: [],
  left: {},
  borderline: 0,
});
