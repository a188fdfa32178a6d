/** What a paper says of its samples, as half sentences. */
import { list } from "./language.ts";

const NUMBERS = "kein ein zwei drei vier fünf sechs sieben acht neun zehn".split(" ");
const number = (count: number) => NUMBERS[count] ?? String(count);
type Kind = "cation" | "anion";
const ONE = { cation: "Kation", anion: "Anion" };
const MANY = { cation: "Kationen", anion: "Anionen" };

/** Between statements that act together. */
export const AND_ALSO = ", und ";

export const inAll = (count: number, kind: Kind) => `insgesamt ${different(count, kind)}`;
/** "ein Kation", "vier verschiedene Kationen" */
export const different = (count: number, kind: Kind) =>
  count === 1 ? `ein ${ONE[kind]}` : `${number(count)} verschiedene ${MANY[kind]}`;
export const share = (who: readonly string[], kind: Kind) => `${list(who)} enthalten dasselbe ${ONE[kind]}`;
export const differ = (who: readonly string[], kind: Kind) =>
  who.length > 2
    ? `keine zwei von ${list(who)} enthalten dasselbe ${ONE[kind]}`
    : `${list(who)} enthalten verschiedene ${MANY[kind]}`;
export const sameSalt = (who: readonly string[]) => `${list(who)} sind dasselbe Salz`;
/** @param count how many of them hold the ion; at least one when absent */
export function contains(who: readonly string[], count: number | undefined, ion: string): string {
  if (count === undefined) return `${who.length > 1 ? `mindestens eine von ${list(who)}` : who[0]} enthält ${ion}`;
  if (count === who.length) return `${list(who)} ${count > 1 ? "enthalten" : "enthält"} ${ion}`;
  if (count === 0) return who.length > 1 ? `keine von ${list(who)} enthält ${ion}` : `${who[0]} enthält kein ${ion}`;
  return `${count === 1 ? "eine" : number(count)} von ${list(who)} ${count > 1 ? "enthalten" : "enthält"} ${ion}`;
}
