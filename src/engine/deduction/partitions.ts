/**
 * Statements about groups of samples as partitions of the samples: those of one block hold one and the same ion of a kind, those of
 * different blocks different ones. What a paper says of a kind, particular ions apart, picks some of all partitions.
 *
 * That blocks differ is awkward to count; that samples of a block agree, and nothing more, is easy. By Moebius inversion over the
 * partitions (Rota, On the foundations of combinatorial theory I, 1964, from memory) the first is a signed sum of the second: where p
 * merges the blocks of a finer partition, k of them into one, that block counts (-1)^(k-1) (k-1)! times.
 */
import type { Constraint } from "./rules.ts";
import { spend, type Work } from "./work.ts";

export interface Partition {
  /** Each block as bits, one for each sample; ordered by their first samples. */
  blocks: readonly number[];
  /** How often to count the ways in which the samples of each block agree, whatever other blocks hold; never 0. */
  times: number;
}

/** Looking at one merging, in steps of the other ways of counting. */
const LOOKED_AT = 4;

/** The partitions whose signed sum counts what obeys all these statements about one kind; of those that name an ion it takes no account. */
export function partitionsFor(samples: number, about: readonly Constraint[], work: Work): Partition[] {
  const groups = about.flatMap((one) => ("samples" in one ? [{ says: one.says, bits: bitsOf(one.samples) }] : []));
  const apart = groups.filter(({ says }) => says === "differ").map(({ bits }) => bits);
  const counts = about.flatMap((one) => (one.says === "in all" ? [one.count] : []));
  let tied = Array.from({ length: samples }, (_, s) => 1 << s);
  for (const { says, bits } of groups) {
    if (says !== "share" && says !== "same") continue;
    const merged = tied.reduce((all, block) => (block & bits ? all | block : all), 0);
    tied = [...tied.filter((block) => !(block & bits)), merged];
  }
  tied.sort((a, b) => (a & -a) - (b & -b));
  // Where nothing says whether a block agrees with others, its terms cancel unless it stands alone.
  const free = counts.length > 0 ? [] : tied.filter((block) => apart.every((group) => !(block & group)));
  const bound = tied.filter((block) => !free.includes(block));
  const sums = new Map<string, { blocks: number[]; times: number }>();
  eachMerging(bound, (fine) => {
    spend(work, LOOKED_AT);
    if (counts.some((count) => count !== fine.length)) return;
    if (fine.some((block) => apart.some((group) => several(block & group)))) return;
    eachMerging([...fine], (merged, times) => {
      spend(work, LOOKED_AT);
      const key = merged.join();
      const known = sums.get(key);
      if (known) known.times += times;
      else sums.set(key, { blocks: [...merged, ...free], times });
    });
  });
  return [...sums.values()].filter(({ times }) => times !== 0);
}

const bitsOf = (samples: readonly number[]): number => samples.reduce((bits, s) => bits | (1 << s), 0);
const several = (bits: number): boolean => (bits & (bits - 1)) !== 0;

/** Every way of merging some of these blocks, with the number of times it counts in the inversion. What is visited is used again. */
function eachMerging(blocks: readonly number[], visit: (merged: readonly number[], times: number) => void): void {
  const merged: number[] = [];
  const parts: number[] = [];
  const place = (at: number, times: number) => {
    if (at === blocks.length) {
      visit(merged, times);
      return;
    }
    for (let b = 0; b < merged.length; b++) {
      merged[b] |= blocks[at];
      place(at + 1, times * -parts[b]++);
      parts[b]--;
      merged[b] &= ~blocks[at];
    }
    merged.push(blocks[at]);
    parts.push(1);
    place(at + 1, times);
    merged.pop();
    parts.pop();
  };
  place(0, 1);
}
