import { useMemo } from "preact/hooks";
import { rich } from "./sentence.ts";

/** A sentence of the engine, its formulas typeset, in the page or in an island; one without any is plain text, which most are. */
export function Words({ of }: { of: string }) {
  const html = useMemo(() => ({ __html: rich(of) }), [of]);
  return /[<&]/.test(html.__html) ? <span dangerouslySetInnerHTML={html} /> : html.__html;
}
