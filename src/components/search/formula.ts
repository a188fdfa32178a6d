/** A formula as a reader types it, and what pages call the same: a name, and the formula as it is printed. */
import { ionNames } from "#words/ion-names.ts";
import { salt as saltName } from "#words/salt-name.ts";
import { SUBSTANCES } from "#words/search.ts";
import { toUnicode } from "../../engine/formula/typeset.ts";

/** What a typed formula is found by. */
export interface Meaning {
  /** "sulfate". */
  name: string;
  /** "SO₄", which SO₄²⁻ begins with; "Cu²⁺"; absent for an element's bare symbol, which begins too many words. */
  printed?: string;
  /** A molecule: nothing may follow it, for NO₂ is not NO₂⁻. */
  whole?: true;
}

/** Formula and what it means, by the formula as written and in small letters; what stands first goes before what comes later. */
const MEANINGS = new Map<string, Meaning>();

function learn(formula: string, meaning: Meaning): void {
  for (const key of [formula, /[\d+-]/.test(formula) ? formula.toLowerCase() : formula]) {
    if (!MEANINGS.has(key)) MEANINGS.set(key, meaning);
  }
}

for (const [formula, name] of Object.entries(SUBSTANCES))
  learn(formula, { name, printed: toUnicode(formula), whole: true });
/** "SO₄" is found wherever SO₄²⁻ or a sulfate is printed; the charge stays where it tells copper(II) from copper, nitrite from nitrogen dioxide. */
const printedIon = (ion: string) => {
  const body = uncharged(ion);
  return toUnicode(/\d/.test(body) && !(body in SUBSTANCES) ? body : ion);
};
for (const [ion, name] of Object.entries(ionNames)) learn(ion, { name, printed: printedIon(ion) });
for (const [ion, name] of Object.entries(ionNames)) {
  const body = uncharged(ion);
  // "Fe" alone is both irons: the element's name without its number.
  learn(body, { name: name.replace(/\(\w+\)$/, ""), ...(/\d/.test(body) ? { printed: toUnicode(body) } : {}) });
}

function uncharged(ion: string): string {
  return ion.replace(/(?:\^\d+)?[+-]$/, "");
}

const known = (formula: string): Meaning | undefined => MEANINGS.get(formula) ?? MEANINGS.get(formula.toLowerCase());

/** "SO42-" may be SO4^2- or SO42^-, "NO3-" NO^3- or NO3-: the table knows which there is. */
function ion(typed: string): Meaning | undefined {
  const [, body, digit, sign] = /^(.+?)\^?(\d?)([+-])$/.exec(typed) ?? [];
  if (!sign) return undefined;
  return (digit ? known(`${body}^${digit}${sign}`) : undefined) ?? known(`${body}${digit}${sign}`);
}

const IONS = Object.entries(ionNames).map(([ion, name]) => ({ body: uncharged(ion), name, cation: ion.endsWith("+") }));
const escaped = (text: string) => text.replace(/[()[\]]/g, "\\$&");

/** An ion at the beginning of a formula, "NH4" or "(NH4)2" or "Na2", written as it should be; of two irons the name without its number. */
function leading(formula: string, cation: boolean, flags: string): { written: string; name: string }[] {
  const found = IONS.flatMap(({ body, name, cation: positive }) => {
    const own = escaped(body);
    const [, many, few] =
      new RegExp(`^(?:\\(${own}\\)(\\d)|${own}(${/\d|\]$/.test(body) ? "" : "\\d?"}))`, flags).exec(formula) ?? [];
    if (positive !== cation || (many === undefined && few === undefined)) return [];
    return [{ written: many ? `(${body})${many}` : body + few, name }];
  });
  return found.map(({ written, name }) => {
    const several = found.filter((one) => one.written === written).length > 1;
    return { written, name: several ? name.replace(/\(\w+\)$/, "") : name };
  });
}

/** "copper(II) sulfate" of "CuSO4", "ammonium sulfate" of "(nh4)2so4": one ion's formula, then another's; water of crystallisation goes. */
function salt(typed: string): Meaning | undefined {
  const [formula] = typed.split(/[.·*]/);
  for (const flags of ["", "i"]) {
    for (const first of leading(formula, true, flags)) {
      const rest = formula.slice(first.written.length);
      const second = leading(rest, false, flags).find(({ written }) => written.length === rest.length);
      if (second)
        return { name: saltName([first.name], [second.name]), printed: toUnicode(first.written + second.written) };
    }
  }
  return undefined;
}

/** The same by name, "sulfate" or "iron(ii)": a name alone is looked for as its formula as well. */
const BY_NAME = new Map([...MEANINGS.values()].toReversed().map((meaning) => [meaning.name.toLowerCase(), meaning]));

/** @example meaningOfName("sulfate") // { name: "sulfate", printed: "SO₄" } */
export function meaningOfName(name: string): Meaning | undefined {
  const meaning = BY_NAME.get(name.toLowerCase());
  return meaning?.printed ? meaning : undefined;
}

/**
 * What a word means if it is a formula: an ion, with its charge or without, a molecule or a salt. Small letters will do where figures show
 * that it is one.
 *
 * @example meaningOf("SO42-") // { name: "sulfate", printed: "SO₄" }
 */
export function meaningOf(word: string): Meaning | undefined {
  if (!/^[[(]?[A-Z]/.test(word) && !/\d/.test(word)) return undefined;
  // A state says nothing about which substance it is.
  const formula = word.replace(/\((?:aq|s|l|g)\)$/, "");
  return ion(formula) ?? known(formula) ?? salt(formula);
}
