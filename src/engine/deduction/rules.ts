/** What the paper says of its samples, one rule for each statement, so that a rule can be tried without the others. */
import * as say from "#words/paper-says.ts";
import type { PredictionTable } from "../bench/prediction-table.ts";

export type Kind = "cations" | "anions";

/** What a rule asks of one kind of ion; samples by index. */
export type Constraint = { ion: Kind } & (
  | { says: "in all"; count: number }
  /** All of them hold one and the same ion, if not only that; no two of them hold an ion in common; all hold exactly the same ions. */
  | { says: "share" | "differ" | "same"; samples: number[] }
  /** So many of them hold the ion. */
  | { says: "contains"; which: string; samples: number[]; least: number; most: number }
);

export interface Rule {
  words: string;
  about: Constraint[];
}

const ONE = { cations: "cation", anions: "anion" } as const;
const different = (names: readonly string[]) => [...new Set(names)];

/** The statements of the paper in its order: in all, share, differ, same salt, contains. */
export function rulesOf({ paper, samples }: PredictionTable): Rule[] {
  const place = (label: string) => samples.findIndex((one) => one.label === label);
  const inAll = (["cations", "anions"] as const).flatMap((ion): Rule[] => {
    const count = paper.inAll?.[ion];
    if (count === undefined) return [];
    return [{ words: say.inAll(count, ONE[ion]), about: [{ ion, says: "in all", count }] }];
  });
  const groups = (["share", "differ"] as const).flatMap((says) =>
    paper[says].map((group): Rule => {
      const who = different(group.samples);
      return {
        words: says === "share" ? say.share(who, group.ion) : say.differ(who, group.ion),
        about: [{ ion: `${group.ion}s`, says, samples: who.map(place) }],
      };
    }),
  );
  const same = paper.same.map((group): Rule => {
    const who = different(group);
    const about = { says: "same" as const, samples: who.map(place) };
    return {
      words: say.sameSalt(who),
      about: [
        { ion: "cations", ...about },
        { ion: "anions", ...about },
      ],
    };
  });
  const contains = paper.contains.map((said): Rule => {
    const who = different(said.samples ?? samples.map(({ label }) => label));
    const least = said.count ?? 1;
    const most = said.count ?? who.length;
    const ion: Kind = said.ion.endsWith("+") ? "cations" : "anions";
    return {
      words: say.contains(who, said.count, said.ion),
      about: [{ ion, says: "contains", which: said.ion, samples: who.map(place), least, most }],
    };
  });
  return [...inAll, ...groups, ...same, ...contains];
}

/**
 * Words for as few rules as it takes: drops every rule without which `excluded` still holds. None of those left can be spared.
 * @param excluded whether what is asked about stays impossible under only these rules.
 */
export function inWords(rules: readonly Rule[], excluded: (kept: Rule[]) => boolean): string {
  let kept = [...rules];
  for (const rule of rules) {
    const fewer = kept.filter((one) => one !== rule);
    if (excluded(fewer)) kept = fewer;
  }
  return kept.map((rule) => rule.words).join(say.AND_ALSO);
}
