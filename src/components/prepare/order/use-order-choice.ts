/** What a reader is choosing for the order of work, and the address that shows it again. */
import { useEffect, useState } from "preact/hooks";
import { showInAddress } from "../../address-bar.ts";
import { type Choice, type Entry, fromAddress, type Offer, readEntry, toAddress, usualChoice } from "./order-choice.ts";

export interface OrderChoice {
  /** The last choice that could be read. */
  choice: Choice;
  /** As typed, for the fields in which figures are typed. */
  typed: Partial<Record<Entry, string>>;
  /** What could not be read, in sentences. */
  faults: string[];
  choose(entry: Entry, text: string): void;
}

const asTyped = (choice: Choice): OrderChoice["typed"] =>
  Object.fromEntries(Object.entries(choice).map(([entry, value]) => [entry, String(value)]));

/** @param inAddress the page is one practical's: its address keeps the choice */
export function useOrderChoice(offer: Offer, inAddress: boolean): OrderChoice {
  const [{ choice, typed, faults }, set] = useState(() => {
    const usual = usualChoice(offer);
    return { choice: usual, typed: asTyped(usual), faults: [] as string[] };
  });

  useEffect(() => {
    if (!inAddress) return;
    const found = fromAddress(location.search, offer);
    if (found.faults.length > 0 || toAddress(found.choice, offer) !== "") {
      set({ ...found, typed: asTyped(found.choice) });
    }
  }, []);

  const choose = (entry: Entry, text: string) => {
    const next = { ...typed, [entry]: text };
    const chosen = { ...choice };
    const wrong: string[] = [];
    for (const [one, bounds] of Object.entries(offer) as [Entry, Offer[Entry]][]) {
      const read = bounds && readEntry(one, next[one] ?? "", bounds);
      if (typeof read === "number") chosen[one] = read;
      else if (read) wrong.push(read.fault);
    }
    set({ choice: chosen, typed: next, faults: wrong });
    if (inAddress) showInAddress(toAddress(chosen, offer, location.search));
  };
  return { choice, typed, faults, choose };
}
