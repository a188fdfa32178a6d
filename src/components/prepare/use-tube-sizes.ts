/** The tube sizes a reader has chosen, kind by kind, and the address that shows them again. */
import { useEffect, useState } from "preact/hooks";
import { NOT_FETCHED } from "#words/bench-plan.ts";
import { showInAddress } from "../address-bar.ts";
import type { DrawnSize, RackTube, TubeKind } from "./rack.ts";

export interface TubeSizes {
  /** Ids of sizes, by kind. */
  chosen: readonly string[];
  /** What of a link could not be read, in sentences. */
  faults: readonly string[];
  choose(kind: number, id: string): void;
}

/** What reads and writes the address: fetched when it is first needed, for most readers' tubes are the planned ones. */
const address = () => import("./tube-address.ts");

const kindOf = (id: string, kinds: readonly TubeKind[]) =>
  kinds.findIndex(({ sizes }) => sizes.some((size) => size.id === id));

/** The size in which a tube is taken. */
export function sizeOf(tube: RackTube, kinds: readonly TubeKind[], chosen: readonly string[]): DrawnSize {
  const kind = kindOf(tube.size, kinds);
  return kinds[kind].sizes.find(({ id }) => id === chosen[kind]) as DrawnSize;
}

/**
 * @param inAddress the page is one practical's: its address keeps the choice
 * @param asked ids of sizes that were chosen before; without them the address is read
 */
export function useTubeSizes(
  tubes: readonly RackTube[],
  kinds: readonly TubeKind[],
  inAddress: boolean,
  asked: readonly string[] = [],
): TubeSizes {
  const planned = kinds.map(
    ({ sizes }) => tubes.find(({ size }) => sizes.some(({ id }) => id === size))?.size ?? sizes[0].id,
  );
  const first = kinds.map(
    ({ sizes }, kind) => asked.find((one) => sizes.some(({ id }) => id === one)) ?? planned[kind],
  );
  const [{ chosen, faults }, set] = useState({ chosen: first, faults: [] as string[] });
  useEffect(() => {
    if (asked.length > 0) return keep(first);
    if (!inAddress || !/-size=/.test(location.search)) return;
    address().then(
      ({ fromAddress, toSheets }) => {
        const found = fromAddress(location.search, kinds, planned);
        set(found);
        toSheets(found.chosen, kinds, planned);
      },
      () => set({ chosen, faults: [NOT_FETCHED] }),
    );
  }, []);
  const keep = (sizes: readonly string[]) => {
    if (!inAddress) return;
    address().then(
      ({ toAddress, toSheets }) => {
        showInAddress(toAddress(sizes, kinds, planned, location.search));
        toSheets(sizes, kinds, planned);
      },
      // Without a network the tubes change all the same; only the address does not tell of them.
      () => {},
    );
  };
  const choose = (kind: number, id: string) => {
    const next = chosen.map((one, index) => (index === kind ? id : one));
    set({ chosen: next, faults: [] });
    keep(next);
  };
  return { chosen, faults, choose };
}
