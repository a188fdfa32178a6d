/** Deduction, on the walkthroughs' own tables. */
import type { Walkthrough } from "../../src/build/walkthrough.types.ts";
import type { TableRecord } from "../../src/engine/bench/prediction-table.ts";
import { deduce } from "../../src/engine/index.ts";
import { median, quantile, rounded, say, times } from "./timing.ts";

const ROUNDS = { deduce: 5 };

/** All other records that one change makes; none where the observation is already changed. */
function changes({ table, record }: Walkthrough): { place: string; change: (to: TableRecord) => TableRecord }[] {
  return table.cells.flatMap((cell) =>
    cell.samples.flatMap((sample) => {
      const readings: (number | undefined)[] = [...cell.readings.keys(), undefined];
      return readings
        .filter((reading) => reading !== record[sample]?.[cell.id])
        .map((reading) => ({
          place: `${sample} ${cell.id}`,
          change: (to: TableRecord) => {
            const { [cell.id]: _, ...rest } = to[sample] ?? {};
            return { ...to, [sample]: reading === undefined ? rest : { ...rest, [cell.id]: reading } };
          },
        }));
    }),
  );
}

function nearRecords(of: Walkthrough): TableRecord[] {
  const single = changes(of);
  return single.flatMap(({ place, change }, index) => {
    const once = change(of.record);
    const second = single.slice(index + 1).filter((other) => other.place !== place);
    return [once, ...second.map((other) => other.change(once))];
  });
}

export function benchDeduce(walkthroughs: readonly Walkthrough[]) {
  const each = walkthroughs.flatMap((of) => {
    const calls = nearRecords(of).map((record) => () => deduce(of.table, record));
    say(`deduce: ${calls.length} records`);
    return times(ROUNDS.deduce, calls);
  });
  return { medianMs: rounded(median(each)), p99Ms: rounded(quantile(each, 0.99)) };
}
