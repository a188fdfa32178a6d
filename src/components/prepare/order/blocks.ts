/** The order of work as it is read: what one person does to several tubes in one go stands as one block. */
import type { OrderOfWork, Work } from "../../../engine/planning/order-of-work/order-of-work.ts";

export interface Block {
  person: number;
  part: string;
  cells: string[];
  /** Which stretch of work of its tubes it is, from 0. */
  turn: number;
  samples: string[];
  /** Minutes from the first test. */
  start: number;
  end: number;
  burner: boolean;
  /** Samples whose tube is a rinsed one. */
  rinsed: string[];
  /** What the tubes are then left alone for, and how long, minutes. */
  wait?: Work["wait"];
  /** When each of those tubes is left alone, from the end of its own work, minutes from the first test. */
  waits: { from: number; to: number }[];
}

/** The work in blocks, in the order of their beginning. */
export function blocksOf({ work }: Pick<OrderOfWork, "work">): Block[] {
  const blocks: Block[] = [];
  for (const one of work) {
    const last = blocks.findLast(({ person }) => person === one.person);
    const joins = last && last.end === one.start && last.part === one.part && last.turn === one.turn;
    if (joins) {
      last.samples.push(one.sample);
      last.end = one.start + one.minutes;
      if (one.rinsed) last.rinsed.push(one.sample);
      last.waits.push(...waitOf(one));
      continue;
    }
    const { person, part, cells, turn, sample, start, minutes, burner, rinsed, wait } = one;
    blocks.push({
      person,
      part,
      cells,
      turn,
      samples: [sample],
      start,
      end: start + minutes,
      burner,
      rinsed: rinsed ? [sample] : [],
      ...(wait && { wait }),
      waits: waitOf(one),
    });
  }
  return blocks;
}

function waitOf({ start, minutes, wait }: Work): Block["waits"] {
  const from = start + minutes;
  return wait ? [{ from, to: from + wait.minutes }] : [];
}
