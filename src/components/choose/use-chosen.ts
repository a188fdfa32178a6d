/** What a teacher is choosing from, kept in the address of the page. */
import { useEffect, useState } from "preact/hooks";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import { showInAddress } from "../address-bar.ts";
import { type Chosen, fromAddress, toAddress } from "./choice-address.ts";

export interface ChosenState extends Chosen {
  /** It is not, or not any more, what the page was built for. */
  changed: boolean;
  /** What of the page's address could not be read, in sentences. */
  faults: string[];
  set(next: Chosen): void;
}

/** @param usual as the page is built */
export function useChosen(
  table: PredictionTable,
  usual: Chosen,
  possible: readonly number[],
  most: number,
): ChosenState {
  const [{ chosen, changed }, keep] = useState({ chosen: usual, changed: false });
  const [faults, tell] = useState<string[]>([]);
  useEffect(() => {
    const { faults: found, ...asked } = fromAddress(table, usual, possible, most, location.search.slice(1));
    tell(found);
    if (toAddress(table, usual, asked) !== "") keep({ chosen: asked, changed: true });
  }, []);
  return {
    ...chosen,
    changed,
    faults,
    set: (next) => {
      keep({ chosen: next, changed: true });
      showInAddress(toAddress(table, usual, next, location.search));
    },
  };
}
