/** The tube sizes a reader has chosen, kind by kind, and the address that shows them again. */
import { useEffect, useState } from "preact/hooks";
import { showInAddress } from "../address-bar.ts";
import type { RackTube, TubeKind } from "./rack.ts";

export interface TubeSizes {
  /** Ids of sizes, by kind. */
  chosen: readonly string[];
  /** What of a link could not be read, in sentences. */
  faults: readonly string[];
  choose(kind: number, id: string): void;
}

/** What reads and writes the address: fetched when it is first needed, for most readers' tubes are the planned ones. */
const address = () => import("./tube-address.ts");
const UNREAD = "The tube sizes in the link could not be fetched. Load the page again.";

/** @param inAddress the page is one practical's: its address keeps the choice */
export function useTubeSizes(tubes: readonly RackTube[], kinds: readonly TubeKind[], inAddress: boolean): TubeSizes {
  const planned = kinds.map(
    ({ sizes }) => tubes.find(({ size }) => sizes.some(({ id }) => id === size))?.size ?? sizes[0].id,
  );
  const [{ chosen, faults }, set] = useState({ chosen: planned, faults: [] as string[] });
  useEffect(() => {
    if (!inAddress || !/-size=/.test(location.search)) return;
    address().then(
      ({ fromAddress }) => set(fromAddress(location.search, kinds, planned)),
      () => set({ chosen, faults: [UNREAD] }),
    );
  }, []);
  const choose = (kind: number, id: string) => {
    const next = chosen.map((one, index) => (index === kind ? id : one));
    set({ chosen: next, faults: [] });
    if (!inAddress) return;
    address().then(
      ({ toAddress }) => showInAddress(toAddress(next, kinds, planned, location.search)),
      // Without a network the tubes change all the same; only the address does not tell of them.
      () => {},
    );
  };
  return { chosen, faults, choose };
}
