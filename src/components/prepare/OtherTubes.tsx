/**
 * The rack as it is built into a walkthrough, and drawn anew when its reader chooses other tubes. What draws it, and what it is drawn from, is
 * fetched when a choice comes near: most readers take the planned tubes.
 */
import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { NOT_DRAWN, PLANNED_ONES } from "#words/other-tubes.ts";
import { useLater } from "../later.ts";
import type { DrawnRack } from "./rack.ts";

interface Props {
  /** Address of a DrawnRack. */
  rackAt: string;
  /** The rack as built. */
  children?: ComponentChildren;
}

/** @throws Error when the rack or the program cannot be fetched */
async function fetchRack(rackAt: string) {
  const [{ default: BenchPlan }, answer] = await Promise.all([import("./BenchPlan.tsx"), fetch(rackAt)]);
  if (!answer.ok) throw new Error(`${rackAt}: ${answer.status}`);
  return { BenchPlan, rack: (await answer.json()) as DrawnRack };
}

/** What was chosen before the rack could be drawn: the sizes in all lists, none where only the address asks; and the list in use. */
interface Asked {
  sizes: string[];
  list: number;
}

export default function OtherTubes({ rackAt, children }: Props) {
  const { module, failed, load } = useLater(() => fetchRack(rackAt));
  const [asked, ask] = useState<Asked>();
  const whole = useRef<HTMLDivElement>(null);
  const lists = () => [...(whole.current?.querySelectorAll("select") ?? [])];
  useEffect(() => {
    for (const list of lists()) list.disabled = false;
    if (!/-size=/.test(location.search)) return;
    ask({ sizes: [], list: -1 });
    load();
  }, []);
  const drawn = asked && module;
  // The list that was used is not the same element any more; who has gone on meanwhile is not called back.
  useEffect(() => {
    const list = lists()[asked?.list ?? -1];
    if (!drawn || !list || document.activeElement !== document.body) return;
    // It is about to be let go, and one that is not takes no focus.
    list.disabled = false;
    list.focus({ preventScroll: true });
  }, [drawn]);
  const choose = ({ target }: Event) => {
    const all = lists();
    ask({ sizes: all.map(({ value }) => value), list: all.indexOf(target as HTMLSelectElement) });
    load();
  };
  return (
    <div ref={whole} onPointerOver={load} onFocusIn={load} onChange={drawn ? undefined : choose}>
      {drawn ? <drawn.BenchPlan {...drawn.rack} inAddress asked={asked?.sizes} /> : children}
      {failed && asked && (
        <p class="caution small" role="status">
          <b>{NOT_DRAWN}</b> {PLANNED_ONES}
        </p>
      )}
    </div>
  );
}
