/** The class a reader is choosing: what is typed, what of it can be read, and the address that shows it again. */
import { useEffect, useState } from "preact/hooks";
import { type ClassEntry, type ClassSize, readEntry } from "../../engine/planning/class/class-size.ts";
import { showInAddress } from "../address-bar.ts";
import { capital } from "../capital.ts";
import { figures } from "../figures.ts";
import { entriesOf, fromAddress, toAddress } from "./class-address.ts";

export type Typed = Partial<Record<ClassEntry, string>>;

export interface ClassSizeState {
  typed: Typed;
  /** The last class that could be read. */
  size: ClassSize;
  /** What could not, in sentences. */
  faults: string[];
  type(entry: ClassEntry, text: string): void;
}

const asTyped = (size: ClassSize): Typed =>
  Object.fromEntries(entriesOf(size).map((entry) => [entry, figures(size[entry] ?? 0)]));

export function useClassSize(own: ClassSize): ClassSizeState {
  const [{ typed, size, faults }, set] = useState({ typed: asTyped(own), size: own, faults: [] as string[] });

  useEffect(() => {
    const found = fromAddress(location.search, own);
    if (found.faults.length > 0 || toAddress(found.size, own) !== "") set({ ...found, typed: asTyped(found.size) });
  }, []);

  const type = (entry: ClassEntry, text: string) => {
    const next = { ...typed, [entry]: text };
    const read = entriesOf(own).map((one) => ({ one, value: readEntry(one, next[one] ?? "") }));
    const wrong = read.flatMap(({ value }) => (typeof value === "number" ? [] : [`${capital(value.fault)}.`]));
    const chosen = { ...size };
    for (const { one, value } of read) if (typeof value === "number") chosen[one] = value;
    set({ typed: next, size: chosen, faults: wrong });
    showInAddress(toAddress(chosen, own, location.search));
  };
  return { typed, size, faults, type };
}
