/** Parts of a long page that change with the record, of which a reader sees one or two at a time. */
import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";

interface Props {
  /** Worked out anew when this is another one. */
  on: unknown;
  of(): ComponentChildren;
  class: string;
}

/** What is in sight changes at once, what is not when everything in sight has been painted; until then what stood there stays. */
export function InSight({ on, of, class: name }: Props) {
  const place = useRef<HTMLDivElement>(null);
  // Until the browser has told, and in a page being built, it counts as seen.
  const seen = useRef(true);
  const kept = useRef<{ on: unknown; shown: ComponentChildren }>();
  const [, drawAgain] = useState({});
  if (!kept.current || (seen.current && kept.current.on !== on)) kept.current = { on, shown: of() };
  useEffect(() => {
    if (!place.current || typeof IntersectionObserver === "undefined") return;
    const watch = new IntersectionObserver((found) => {
      seen.current = found.some(({ isIntersecting }) => isIntersecting);
    });
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  // Effects run after the frame is painted.
  useEffect(() => {
    if (kept.current?.on === on) return;
    kept.current = { on, shown: of() };
    drawAgain({});
  }, [on]);
  return (
    <div class={name} ref={place}>
      {kept.current.shown}
    </div>
  );
}
