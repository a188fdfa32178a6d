/**
 * The order of work: which hand does what when, from the first tube to the last line of the record. The waits of one tube (standing,
 * cooling, dripping through a filter) are filled with work on another. Shortest for the durations of constants/durations.ts, or within a
 * stated gap; a plan, not a promise: beginners take longer.
 */
import type { Paper } from "../../practical.ts";
import type { Bar, Means, Rinsed, TubeWork, Turn } from "./bench-work.ts";
import { lasting, QUARTERS } from "./quarter-minutes.ts";
import { shortest } from "./shortest.ts";
import { tubeWorkOf } from "./tube-work.ts";

/** What a reader has at the bench. */
export interface Hands {
  /** 1, or 2 for a pair. */
  people: number;
  burners: number;
  /** How many test-tubes and boiling tubes there are; absent when there are enough. */
  tubes?: Partial<Record<Rinsed, number>>;
  /** How many tubes can stand in the rack at a time; absent when there is room for all. */
  places?: number;
  /** Minutes for reading and planning before the first test; the usual ten when absent. */
  planning?: number;
  /** False: a part may be begun before the ones that stand before it in the paper. */
  partsInOrder: boolean;
}

/** A stretch of one person's work on one tube. Times in minutes from the first test. */
export interface Work {
  person: number;
  sample: string;
  /** Letter of the part. */
  part: string;
  /** Which stretch of work on this tube it is, from 0. */
  turn: number;
  /** Lines of the record it belongs to, the last of which is written down at its end unless the tube is left alone before. */
  cells: string[];
  start: number;
  minutes: number;
  burner: boolean;
  /** A used tube is rinsed first. */
  rinsed: boolean;
  /** How long the tube is then left alone, and for what. */
  wait?: { minutes: number; to: NonNullable<Turn["waitsTo"]> };
}

export interface OrderOfWork {
  /** In the order of their beginning. */
  work: Work[];
  /** From the first test to the last line of the record, minutes. */
  bench: number;
  /** Planning, the bench and clearing up, minutes. */
  whole: number;
  planning: number;
  clearingUp: number;
  /** No order of work takes less time at the bench than this, minutes. Equal to `bench` when this one is proved the shortest. */
  least: number;
  /** Most tubes in use at one moment. */
  tubesInUse: number;
}

/**
 * @param looks how long to look for a shorter order and for the proof: LOOKS of shortest.ts, quick when absent
 * @throws RangeError where no order can be found: no person, no burner for a test that needs one, fewer tubes or places than one test takes
 */
export function orderOfWork(practical: Pick<Paper, "samples" | "parts">, hands: Hands, looks?: number): OrderOfWork {
  return orderFor(
    tubeWorkOf(practical),
    practical.parts.map(({ label }) => label),
    hands,
    looks,
  );
}

/** The same from work already read from a paper. `letters`: of the parts, in order. */
export function orderFor(
  tubes: readonly TubeWork[],
  letters: readonly string[],
  hands: Hands,
  looks?: number,
): OrderOfWork {
  const means: Means = { ...hands, tubes: hands.tubes ?? {}, rinse: lasting("rinse") };
  if (!(means.people >= 1)) throw new RangeError(`order of work, people: found ${means.people}, expected 1 or 2`);
  const { bars, end, least } = shortest(tubes, means, looks);
  const persons = shareOut(bars, tubes, means.people);
  const planning = hands.planning ?? lasting("plan") / QUARTERS;
  const clearingUp = lasting("clearUp") / QUARTERS;
  return {
    work: bars.map(({ tube, turn, start, work, rinsed }, index) => {
      const { sample, part, turns } = tubes[tube];
      const { cells, burner, wait, waitsTo } = turns[turn];
      return {
        person: persons[index],
        sample,
        part: letters[part],
        turn,
        cells,
        start: start / QUARTERS,
        minutes: work / QUARTERS,
        burner,
        rinsed,
        ...(wait > 0 && waitsTo && { wait: { minutes: wait / QUARTERS, to: waitsTo } }),
      };
    }),
    bench: end / QUARTERS,
    whole: planning + end / QUARTERS + clearingUp,
    planning,
    clearingUp,
    least: least / QUARTERS,
    tubesInUse: mostInUse(bars, tubes),
  };
}

/** Who does each turn: of those whose hands are free the one who had the tube before, then the one who had the part, then the first. */
function shareOut(bars: readonly Bar[], tubes: readonly TubeWork[], people: number): number[] {
  const free = Array.from({ length: people }, () => 0);
  const ofTube = new Map<number, number>();
  const ofPart = new Map<number, number>();
  return bars.map(({ tube, start, work }) => {
    const idle = (person: number | undefined) => person !== undefined && free[person] <= start;
    const person = [ofTube.get(tube), ofPart.get(tubes[tube].part)].find(idle) ?? free.findIndex((_, one) => idle(one));
    free[person as number] = start + work;
    ofTube.set(tube, person as number);
    ofPart.set(tubes[tube].part, person as number);
    return person as number;
  });
}

function mostInUse(bars: readonly Bar[], tubes: readonly TubeWork[]): number {
  const changes = bars.flatMap(({ tube, turn, start, work }) => {
    const { turns, tubes: glass } = tubes[tube];
    const count = glass?.count ?? 1;
    return [
      ...(turn === 0 ? [{ at: start, by: count }] : []),
      ...(turn === turns.length - 1 ? [{ at: start + work, by: -count }] : []),
    ];
  });
  changes.sort((a, b) => a.at - b.at || a.by - b.by);
  let now = 0;
  return changes.reduce((most, { by }) => {
    now += by;
    return Math.max(most, now);
  }, 0);
}
