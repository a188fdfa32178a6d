/** What decided a practical, in sentences. */
import * as say from "#words/certificate.ts";
import type { PredictionTable } from "../../engine/bench/prediction-table.ts";
import type { Certificate } from "../../engine/deduction/certificate.ts";
import type { Place } from "../../engine/deduction/conclusion.ts";
import type { NearestOther } from "../../engine/deduction/nearest-other.ts";

/** "Of the 22 observations in this record five are enough: b(ii) and c(ii) for R, a(iii) for T." */
export function wordProved({ proof, observations }: Certificate): string {
  if (!proof) return say.NOT_EVERYTHING;
  const samples = [...new Set(proof.places.map(({ sample }) => sample))];
  const cells = (label: string) => proof.places.filter(({ sample }) => sample === label).map(({ cell }) => cell);
  const places = samples.map((sample) => say.testsFor(cells(sample), sample));
  return say.enough(observations, proof.places.length, places, proof.several, proof.statement);
}

/** How near another answer comes: "4 other answers are one misread observation away." */
export const wordNearest = ({ observations, assignments }: NearestOther): string =>
  observations === Number.POSITIVE_INFINITY ? say.NO_OTHER : say.nearest(assignments, observations);

/** "With another sight that a(iii) for M may show, as where a bottle is weaker or stronger than usual, something stays open." */
export const wordBorders = (borders: readonly Place[]): string => (borders.length > 0 ? say.borders(borders) : "");

/** Salts named before they are only counted. */
const NAMED = 4;

/** "Leave out c(ii), and R may also be ZnCl2 or Zn(NO3)2." */
export function wordNeeded({ cell, left }: Certificate["needed"][number], table: PredictionTable): string {
  const open = Object.entries(left).map(([sample, salts]) =>
    salts.length > NAMED
      ? say.mayBeOneOf(sample, salts.length)
      : say.mayBe(
          sample,
          salts.map((salt) => table.salts[salt].formula),
        ),
  );
  return say.leaveOut(cell, open);
}
