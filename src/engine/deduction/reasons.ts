/** How each ion the paper allows stands for one sample, and why an impossible one is impossible. */
import type { PredictionTable } from "../bench/prediction-table.ts";
import type { Candidate } from "./candidates.ts";
import type { IonStanding, Reason } from "./conclusion.ts";

/**
 * Reasons are looked for when they are first asked for: one by the paper takes as long as the whole conclusion.
 * @param left salts still possible for the sample.
 * @param together the reason against a salt that its own observations allow.
 */
export function standings(
  table: PredictionTable,
  sample: number,
  candidates: Candidate[],
  left: number[],
  together: (salt: number) => Reason,
): IonStanding[] {
  const set = table.sets[table.samples[sample].set];
  const against = ({ salt, row, clashes: [cell] }: Candidate): Reason => {
    if (cell === undefined) return together(salt);
    const wouldShow = set.main[row][cell];
    return { by: "observation", cell: table.cells[cell].id, salt, wouldShow, fact: set.facts[row][cell] };
  };
  return (["cation", "anion"] as const).flatMap((kind) => {
    const kinds = `${kind}s` as const;
    const holds = (ion: string) => (salt: number) => table.salts[salt][kinds].includes(ion);
    const ions = new Set([...table.paper[kinds], ...set.salts.flatMap((salt) => table.salts[salt][kinds])]);
    return [...ions].map((ion): IonStanding => {
      const holding = left.filter(holds(ion)).length;
      if (holding > 0) {
        return { ion, kind, standing: holding === left.length ? "certain" : "possible", reasons: [] };
      }
      return excluded(ion, kind, () => {
        const own = candidates.filter(({ salt }) => holds(ion)(salt));
        const clashing = own.filter(({ clashes }) => clashes.length > 0).sort((a, b) => a.clashes[0] - b.clashes[0]);
        const reasons: Reason[] = [
          ...clashing.map(against),
          ...set.cannotBe
            .filter(({ salt }) => holds(ion)(salt))
            .map(({ salt, reason }): Reason => ({ by: "cannot be", salt, reason })),
          ...own.filter(({ clashes }) => clashes.length === 0).map(against),
        ];
        const none = `no salt of this ${kind} is among those the paper allows`;
        return reasons.length > 0 ? reasons : [{ by: "cannot be", salt: -1, reason: none }];
      });
    });
  });
}

function excluded(ion: string, kind: IonStanding["kind"], find: () => Reason[]): IonStanding {
  let found: Reason[] | undefined;
  return {
    ion,
    kind,
    standing: "impossible",
    get reasons() {
      found ??= find();
      return found;
    },
  };
}
