/** The list of further tests: at build it is given, in the browser it is fetched when it is first needed. */
import { useEffect, useState } from "preact/hooks";
import type { FurtherList } from "./further-list.ts";

const coming = new Map<string, Promise<FurtherList>>();

/** Asks once; after a failure once more the next time it is needed. */
function fetchList(address: string): Promise<FurtherList> {
  const known = coming.get(address);
  if (known) return known;
  const list = fetch(address).then((answer) => {
    if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
    return answer.json() as Promise<FurtherList>;
  });
  coming.set(address, list);
  list.catch(() => coming.delete(address));
  return list;
}

export function useFurther(given: FurtherList | undefined, address: string | undefined) {
  const [further, keep] = useState(given);
  const [failed, fail] = useState(false);
  useEffect(() => {
    if (further || !address) return;
    let wanted = true;
    fetchList(address).then(
      (list) => wanted && keep(list),
      () => wanted && fail(true),
    );
    return () => {
      wanted = false;
    };
  }, [address]);
  return { further, failed };
}
