/** What takes its time to work out, so that nothing around it waits. */
import { useEffect, useState } from "preact/hooks";

/** A page being built is painted by nobody. */
const AT_BUILD = typeof document === "undefined";

/**
 * Works it out when everything else has been painted; until then what was found before stays. At build it is there at once.
 * @param on worked out anew when this is another one
 */
export function useAfterPaint<T>(on: unknown, of: () => T): T | undefined {
  const [found, keep] = useState<T | undefined>(() => (AT_BUILD ? of() : undefined));
  // Effects run after the frame is painted.
  useEffect(() => {
    const now = of();
    keep(() => now);
  }, [on]);
  return found;
}
