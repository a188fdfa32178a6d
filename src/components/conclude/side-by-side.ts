/** How each ion stands in each sample, for a table of samples side by side. */
import type { IonStanding, SampleConclusion } from "../../engine/deduction/conclusion.ts";

type Standing = "certain" | "possible" | "out";

export interface SideBySide {
  /** Cations, then anions: the ions that some sample holds or may hold, in the order of the paper, with one standing for each sample. */
  rows: Record<IonStanding["kind"], { ion: string; standings: Standing[] }[]>;
  /** The ions that no sample can hold. */
  outOfAll: string[];
}

/** @returns undefined where there is nothing to compare: one sample, a record that fits nothing, or one that says nothing of any ion yet */
export function sideBySide(samples: readonly SampleConclusion[], assignments: number): SideBySide | undefined {
  const all = samples.flatMap(({ ions }) => ions);
  if (samples.length < 2 || assignments === 0 || all.every(({ standing }) => standing === "possible")) return undefined;
  const rowsOf = (kind: IonStanding["kind"]) => {
    const ions = new Set(all.flatMap((one) => (one.kind === kind ? [one.ion] : [])));
    return [...ions].map((ion) => ({ ion, standings: samples.map((of) => standingIn(of, ion)) }));
  };
  const isIn = ({ standings }: { standings: Standing[] }) => standings.some((standing) => standing !== "out");
  const [cation, anion] = [rowsOf("cation"), rowsOf("anion")];
  return {
    rows: { cation: cation.filter(isIn), anion: anion.filter(isIn) },
    outOfAll: [...cation, ...anion].filter((row) => !isIn(row)).map(({ ion }) => ion),
  };
}

/** Samples given in different ways may hold different ions; one that is not heard of cannot be in the sample. */
function standingIn({ ions }: SampleConclusion, ion: string): Standing {
  const standing = ions.find((one) => one.ion === ion)?.standing ?? "impossible";
  return standing === "impossible" ? "out" : standing;
}
