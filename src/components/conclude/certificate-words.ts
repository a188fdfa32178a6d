/** What decided a practical, in sentences. */
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Certificate } from "../../engine/deduction/certificate.ts";
import type { Place } from "../../engine/deduction/conclusion.ts";
import type { NearestOther } from "../../engine/deduction/nearest-other.ts";
import { capital } from "../capital.ts";
import { list } from "../sentence.ts";

const NUMBERS = "no one two three four five six seven eight nine ten".split(" ");
const number = (count: number) => NUMBERS[count] ?? String(count);

/** "Of the 22 observations in this record five are enough: b(ii) and c(ii) for R, a(iii) for T." */
export function wordProved({ proof, observations }: Certificate): string {
  if (!proof) return "These tests do not decide everything: what stays open is named above.";
  const samples = [...new Set(proof.places.map(({ sample }) => sample))];
  const cells = (label: string) => proof.places.filter(({ sample }) => sample === label).map(({ cell }) => cell);
  const places = samples.map((sample) => `${list(cells(sample))} for ${sample}`);
  const enough = proof.places.length === 1 ? "one is enough" : `${number(proof.places.length)} are enough`;
  const others = proof.several ? " Others would do as well; no fewer would." : " No fewer would do.";
  const paper = proof.statement ? ` The rest is in what the paper says: ${proof.statement}.` : "";
  return `Of the ${observations} observations in this record ${enough}: ${places.join("; ")}.${paper}${others}`;
}

/** How near another answer comes: "4 other answers are one misread observation away." */
export function wordNearest({ observations, assignments }: NearestOther): string {
  if (observations === Number.POSITIVE_INFINITY) return "The paper allows no other answer.";
  const other = assignments === 1 ? "One other answer" : `${capital(number(assignments))} other answers`;
  if (observations === 0) return `${other} would give the same record.`;
  if (observations === 1) return `${other} ${assignments === 1 ? "is" : "are"} one misread observation away.`;
  return `It takes ${number(observations)} misread observations to reach another answer.`;
}

/** "With another sight that a(iii) for M may show, as where a bottle is weaker or stronger than usual, something stays open." */
export function wordBorders(borders: readonly Place[]): string {
  if (borders.length === 0) return "";
  const places = list(
    borders.map(({ cell, sample }) => `${cell} for ${sample}`),
    "or",
  );
  return `With another sight that ${places} may show, as where a bottle is weaker or stronger than usual, something stays open.`;
}

/** Salts named before they are only counted. */
const NAMED = 4;

/** "Leave out c(ii), and R may also be ZnCl2 or Zn(NO3)2." */
export function wordNeeded({ cell, left }: Certificate["needed"][number], table: PredictionTable): string {
  const open = Object.entries(left).map(([sample, salts]) =>
    salts.length > NAMED
      ? `${sample} may be one of ${salts.length} salts`
      : `${sample} may be ${list(
          salts.map((salt) => table.salts[salt].formula),
          "or",
        )}`,
  );
  return `Leave out ${cell}, and ${list(open)}.`;
}
