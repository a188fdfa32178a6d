/** What the paper says of its samples, one rule for each statement, so that a rule can be tried without the others. */
import type { PredictionTable } from "../bench/prediction-table.ts";

export interface Rule {
  ion: "cation" | "anion";
  says: "in all" | "share" | "differ";
  /** For "in all": how many different ions. */
  count: number;
  /** For "share" and "differ": indices of the samples concerned. */
  samples: number[];
  words: string;
}

const NUMBERS = "no one two three four five six seven eight nine ten".split(" ");

const listed = (names: string[]) => names.join(", ").replace(/, ([^,]*)$/, " and $1");

/** The statements of the paper in its order: in all, share, differ. */
export function rulesOf({ paper, samples }: PredictionTable): Rule[] {
  const inAll = (["cation", "anion"] as const).flatMap((ion): Rule[] => {
    const count = paper.inAll?.[`${ion}s`];
    if (count === undefined) return [];
    const words = count === 1 ? `one ${ion} in all` : `${NUMBERS[count] ?? count} different ${ion}s in all`;
    return [{ ion, says: "in all", count, samples: [], words }];
  });
  const groups = (["share", "differ"] as const).flatMap((says) =>
    paper[says].map((group): Rule => {
      const names = [...new Set(group.samples)];
      const who = says === "differ" && names.length > 2 ? `no two of ${listed(names)}` : listed(names);
      const what = says === "share" || names.length > 2 ? `the same ${group.ion}` : `different ${group.ion}s`;
      const members = names.map((name) => samples.findIndex(({ label }) => label === name));
      return { ion: group.ion, says, count: 0, samples: members, words: `${who} hold ${what}` };
    }),
  );
  return [...inAll, ...groups];
}

/**
 * Words for as few rules as it takes: drops every rule without which `excluded` still holds. None of those left can be spared.
 * @param excluded whether what is asked about stays impossible under only these rules.
 */
export function inWords(rules: Rule[], excluded: (kept: Rule[]) => boolean): string {
  let kept = rules;
  for (const rule of rules) {
    const fewer = kept.filter((one) => one !== rule);
    if (excluded(fewer)) kept = fewer;
  }
  return kept.map((rule) => rule.words).join(", and ");
}
