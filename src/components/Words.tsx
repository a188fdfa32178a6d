import { rich } from "./sentence.ts";

/** A sentence of the engine, its formulas typeset, in the page or in an island. */
export function Words({ of }: { of: string }) {
  return <span dangerouslySetInnerHTML={{ __html: rich(of) }} />;
}
