/** What the paper says of its samples, in sentences. */
import { ionName } from "../../engine/formula/ion-name.ts";
import type { Sample, Statement } from "../../engine/practical.ts";
import { list } from "../sentence.ts";

const FORM = { solid: "a solid", solution: "a solution", both: "a solid and a solution" };
const NUMBERS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** "Cu^2+ copper(II)": no comma between the two, for they stand in a list. */
const named = (ion: string) => `${ion} ${ionName(ion)}`;

/** "K: a solution, 0.1 mol/dm3" */
export function wordGiven({ label, given, concentration }: Sample): string {
  return `${label}: ${FORM[given]}${concentration ? `, ${concentration.molPerDm3} mol/dm3` : ""}`;
}

/** Each statement as a sentence; formulas in mhchem notation. */
export function wordPaper(paper: Statement, samples: readonly Sample[]): string[] {
  const each = samples.length === 1 ? `${samples[0].label} holds` : "Each sample holds";
  const inAll = (["cations", "anions"] as const).flatMap((kind) => {
    const count = paper.inAll?.[kind];
    const word = count === 1 ? kind.slice(0, -1) : kind;
    return count === undefined ? [] : [`All samples together hold ${NUMBERS[count] ?? count} different ${word}.`];
  });
  const share = paper.share.map((group) => `${list(group.samples)} hold the same ${group.ion}.`);
  const differ = paper.differ.map((group) =>
    group.samples.length > 2
      ? `No two of ${list(group.samples)} hold the same ${group.ion}.`
      : `${list(group.samples)} hold different ${group.ion}s.`,
  );
  return [
    `${each} one cation and one anion.`,
    `The cation is one of ${list(paper.cations.map(named), "or")}.`,
    `The anion is one of ${list(paper.anions.map(named), "or")}.`,
    ...inAll.map((text) => text.replace("one different", "one")),
    ...share,
    ...differ,
  ];
}
