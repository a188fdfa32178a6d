/** The record a reader is changing: undo, the walkthrough's own again, an empty one; kept in the address of the page. */
import { useEffect, useState } from "preact/hooks";
import type { TableRecord } from "../../engine/bench/prediction-table.ts";
import { showInAddress } from "../address-bar.ts";
import { behindTheMark, fromAddress, type Kept, toAddress } from "./address.ts";
import type { RecordSheet } from "./record-sheet.ts";

export interface RecordState extends Kept {
  /** What changes are measured against: the walkthrough's record, or nothing once the reader has begun one of their own. */
  before: TableRecord;
  /** What of the page's address could not be read, in sentences. */
  faults: string[];
  /** There is something to undo. */
  canUndo: boolean;
  set(next: TableRecord): void;
  begin(own: boolean): void;
  undo(): TableRecord;
}

const EMPTY: TableRecord = {};

/** @param onFound called once, when the page was opened with a record in its address */
export function useRecord(table: RecordSheet, given: TableRecord, onFound: (found: Kept) => void): RecordState {
  const [{ kept, past, moved }, keep] = useState<{ kept: Kept; past: Kept[]; moved?: true }>({
    kept: { record: given, own: false },
    past: [],
  });
  const [faults, tell] = useState<string[]>([]);

  useEffect(() => {
    const { faults: found, ...kept } = fromAddress(table, given, location.search.slice(1));
    tell([...found, ...behindTheMark(location.hash)]);
    if (toAddress(table, given, kept) === "") return;
    keep({ kept, past: [] });
    onFound(kept);
  }, []);

  // After the frame is painted: writing an address takes a slow machine as long as half the conclusion.
  useEffect(() => {
    if (!moved) return;
    showInAddress(toAddress(table, given, kept, location.search));
  }, [kept]);

  const move = (kept: Kept, past: Kept[]) => keep({ kept, past, moved: true });
  const go = (next: Kept) => move(next, [...past, kept]);

  return {
    ...kept,
    before: kept.own ? EMPTY : given,
    faults,
    canUndo: past.length > 0,
    set: (record) => go({ record, own: kept.own }),
    begin: (own) => go({ record: own ? EMPTY : given, own }),
    undo: () => {
      const last = past.at(-1) ?? kept;
      move(last, past.slice(0, -1));
      return last.record;
    },
  };
}
