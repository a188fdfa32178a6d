/** The page before and the page after. */

interface Around {
  /** What the two are. */
  both: string;
  before: string;
  after: string;
}
const around = (what: string): Around => ({
  both: `Previous and next ${what}`,
  before: `Previous ${what}`,
  after: `Next ${what}`,
});

export const PRACTICAL = around("practical");
export const METHOD = around("method page");
export const TEST = around("test");
export const ION = around("ion");
