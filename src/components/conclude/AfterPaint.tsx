/** What takes its time to work out, so that nothing around it waits. */
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";

interface Props {
  /** Worked out anew when this is another one. */
  on: unknown;
  of(): ComponentChildren;
  /** Stands there before it has been worked out for the first time. */
  first?: ComponentChildren;
}

/** A page being built is painted by nobody. */
const AT_BUILD = typeof document === "undefined";

/** Works it out when everything else has been painted; until then what stood there stays. At build it is there at once. */
export function AfterPaint({ on, of, first }: Props) {
  const [shown, show] = useState<ComponentChildren>(() => (AT_BUILD ? of() : first));
  // Effects run after the frame is painted.
  useEffect(() => show(of()), [on]);
  return <>{shown}</>;
}
