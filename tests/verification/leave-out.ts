/**
 * How much of the agreement rests on constants chosen for their chemistry: the cation and alkali section once with the constants as
 * shipped, and once with those that were first published, wherever a row of the constants departed from its first source.
 *
 * First published means: what the thermodynamic databases print for the species or the fresh solid, before any look at the table of
 * observations: minteq.v4, where it has none or its figure is the shipped one sit, then llnl. (Lead(II) hydroxide is shipped as the
 * hydrous oxide of minteq.v4.) Remembered alternatives and those of sections other than cations with alkali are left alone.
 */
import { reactions } from "../../src/engine/constants/log-k/index.ts";
import type { Reaction } from "../../src/engine/constants/log-k/reaction.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";
import { compileDatabase } from "../../src/engine/equilibrium/species.ts";
import type { Comparison } from "./comparison.ts";
import { compareSection } from "./qualitative.ts";

/** Reaction of a row of the constants, and how the source of the alternative begins that stood there first. */
export const FIRST_PUBLISHED: Readonly<Record<string, string>> = {
  "Al(OH)3(s, microcrystalline) + 3 H+ = Al^3+ + 3 H2O": "minteq.v4.dat Al(OH)3(am)",
  "Ba^2+ + NO3- = BaNO3+": "minteq.v4.dat",
  "Ba(OH)2*8H2O(s) + 2 H+ = Ba^2+ + 10 H2O": "minteq.v4.dat",
  "Cr^3+ + 4 H2O = [Cr(OH)4]- + 4 H+": "minteq.v4.dat",
  "Cr(OH)3(s, active) + 3 H+ = Cr^3+ + 3 H2O": "minteq.v4.dat Cr(OH)3(am)",
  "Fe^2+ + 3 H2O = [Fe(OH)3]- + 3 H+": "minteq.v4.dat",
  "Fe(OH)3(s, amorphous) + 3 H+ = Fe^3+ + 3 H2O": "minteq.v4.dat Ferrihydrite",
  "Pb(OH)2(s) + 2 H+ = Pb^2+ + 2 H2O": "sit.dat Pb(OH)2(s)",
  "Mg(OH)2(s, active) + 2 H+ = Mg^2+ + 2 H2O": "minteq.v4.dat Mg(OH)2(active)",
  "Ag+ + 3 I- = [AgI3]^2-": "minteq.v4.dat",
  "Zn^2+ + NH3 = [Zn(NH3)]^2+": "llnl.dat",
  "Zn^2+ + 2 NH3 = [Zn(NH3)2]^2+": "llnl.dat",
  "Zn^2+ + 3 NH3 = [Zn(NH3)3]^2+": "llnl.dat",
  "Zn^2+ + 4 NH3 = [Zn(NH3)4]^2+": "llnl.dat",
  "Co^2+ + NH3 = [Co(NH3)]^2+": "minteq.v4.dat",
  "Co^2+ + 2 NH3 = [Co(NH3)2]^2+": "minteq.v4.dat",
  "Co^2+ + 3 NH3 = [Co(NH3)3]^2+": "minteq.v4.dat",
  "Co^2+ + 4 NH3 = [Co(NH3)4]^2+": "minteq.v4.dat",
  "Co^2+ + 5 NH3 = [Co(NH3)5]^2+": "minteq.v4.dat",
};

/** The constants with every row of the list at its first published log K. Throws a RangeError where a row or its alternative is gone. */
export function asFirstPublished(rows: readonly Reaction[] = reactions): Reaction[] {
  const gone = Object.keys(FIRST_PUBLISHED).filter((reaction) => rows.every((row) => row.reaction !== reaction));
  if (gone.length > 0) throw new RangeError(`no row ${gone.join("; ")}: mend FIRST_PUBLISHED`);
  return rows.map((row) => {
    const first = FIRST_PUBLISHED[row.reaction];
    if (first === undefined) return row;
    const found = row.alternatives?.find(({ source }) => source.startsWith(first));
    if (!found) throw new RangeError(`${row.reaction}: no alternative from ${first}, expected one beside log K`);
    return { ...row, logK: found.logK };
  });
}

export interface Honesty {
  first: Comparison;
  shipped: Comparison;
}

/** The cation and alkali section with both sets. */
export const compareHonesty = (): Honesty => ({
  first: compareSection("cation-alkali", createSolver(compileDatabase(asFirstPublished()))),
  shipped: compareSection("cation-alkali"),
});

/** Both agreements in a line, then the rows that only the shipped constants meet. */
export function honestyReport({ first, shipped }: Honesty = compareHonesty()): string {
  const met = ({ agreed, compared }: Comparison) => `${agreed}/${compared}`;
  const missed = new Set(shipped.misses.map(({ id }) => id));
  const lost = first.misses.filter(({ id }) => !missed.has(id)).map(({ difference }) => `    lost: ${difference}`);
  return [`honesty: as first published ${met(first)}, as shipped ${met(shipped)}`, ...lost].join("\n");
}
