/** What a paper says of its samples, as half sentences. */
import { AND } from "./language.ts";

const NUMBERS = "no one two three four five six seven eight nine ten".split(" ");
const number = (count: number) => NUMBERS[count] ?? String(count);
const listed = (names: readonly string[]) =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} ${AND} ${names[names.length - 1]}`;
type Kind = "cation" | "anion";

/** Between statements that act together. */
export const AND_ALSO = ", and ";

export const inAll = (count: number, kind: Kind) => `${different(count, kind)} in all`;
/** "one cation", "four different cations" */
export const different = (count: number, kind: Kind) =>
  count === 1 ? `one ${kind}` : `${number(count)} different ${kind}s`;
export const share = (who: readonly string[], kind: Kind) => `${listed(who)} hold the same ${kind}`;
export const differ = (who: readonly string[], kind: Kind) =>
  who.length > 2 ? `no two of ${listed(who)} hold the same ${kind}` : `${listed(who)} hold different ${kind}s`;
export const sameSalt = (who: readonly string[]) => `${listed(who)} are the same salt`;
/** @param count how many of them hold the ion; at least one when absent */
export function contains(who: readonly string[], count: number | undefined, ion: string): string {
  if (count === undefined) return `${who.length > 1 ? `at least one of ${listed(who)}` : who[0]} contains ${ion}`;
  if (count === who.length) return `${listed(who)} ${count > 1 ? "contain" : "contains"} ${ion}`;
  if (count === 0)
    return who.length > 1 ? `none of ${listed(who)} contains ${ion}` : `${who[0]} does not contain ${ion}`;
  return `${number(count)} of ${listed(who)} ${count > 1 ? "contain" : "contains"} ${ion}`;
}
