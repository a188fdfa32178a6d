/** What a paper says of its samples, as half sentences. */
import { list } from "./language.ts";

const NUMBERS = "no one two three four five six seven eight nine ten".split(" ");
const number = (count: number) => NUMBERS[count] ?? String(count);
type Kind = "cation" | "anion";

/** Between statements that act together. */
export const AND_ALSO = ", and ";

export const inAll = (count: number, kind: Kind) => `${different(count, kind)} in all`;
/** "one cation", "four different cations" */
export const different = (count: number, kind: Kind) =>
  count === 1 ? `one ${kind}` : `${number(count)} different ${kind}s`;
export const share = (who: readonly string[], kind: Kind) => `${list(who)} hold the same ${kind}`;
export const differ = (who: readonly string[], kind: Kind) =>
  who.length > 2 ? `no two of ${list(who)} hold the same ${kind}` : `${list(who)} hold different ${kind}s`;
export const sameSalt = (who: readonly string[]) => `${list(who)} are the same salt`;
/** @param count how many of them hold the ion; at least one when absent */
export function contains(who: readonly string[], count: number | undefined, ion: string): string {
  if (count === undefined) return `${who.length > 1 ? `at least one of ${list(who)}` : who[0]} contains ${ion}`;
  if (count === who.length) return `${list(who)} ${count > 1 ? "contain" : "contains"} ${ion}`;
  if (count === 0) return who.length > 1 ? `none of ${list(who)} contains ${ion}` : `${who[0]} does not contain ${ion}`;
  return `${number(count)} of ${list(who)} ${count > 1 ? "contain" : "contains"} ${ion}`;
}
