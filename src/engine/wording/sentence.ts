/**
 * A sentence of a record from which readings take their words, until what is left over was not understood. Its colours are found first and
 * stand in brackets of their own, "‹pale blue› precipitate", so that patterns stay short.
 */

import * as say from "#words/reading.ts";
import type { Colour } from "../practical/same-colour.ts";
import { colourNamed, inBrackets } from "./colour-names.ts";
import { SHORT } from "./spellings.ts";

export class Sentence {
  #text: string;
  #doubts: string[] = [];
  /** Words written short, by the long ones that stand for them here. */
  readonly #short = new Map<string, string>();

  constructor(text: string) {
    const plain = say
      .inReaderWords(text.toLowerCase())
      .replace(/[’‘`]/g, "'")
      .replace(/→|-+>|=+>/g, " to ")
      // Oxidation numbers and states: manganate(VII), NH3(aq).
      .replace(/\((?:[iv]+|aq|s|l|g)\)/g, " ")
      // An element in brackets tells what the solid is: "grey (silver)".
      .replace(/\((?:metallic )?(?:silver|copper|lead|iodine|sulfur|sulphur)\)/g, " ")
      .replace(/\b([a-z]+)\./g, (abbreviated, word) => (SHORT[word] ? `${word} ` : abbreviated))
      .replace(/\b(n)\W?(v)\W?(c)\b|\bn\W?c\b\.?/g, " nvc ")
      .replace(/\s[-–—]+\s|[.,;:()"“”/&+!?]+/g, " , ");
    const long = plain
      .replace(/[a-z']+/g, (word) => {
        const meant = SHORT[word] ?? word;
        if (meant !== word && !this.#short.has(meant) && !new RegExp(`(?<![a-z])${meant}(?![a-z])`).test(plain))
          this.#short.set(meant, word);
        return meant;
      })
      .replace(/\s+/g, " ");
    this.#text = ` ${inBrackets(long)} `;
  }

  /** The first place that fits, with its words, which are then gone. `C` in a pattern stands for any colour. */
  take(pattern: string): string | undefined {
    const found = compiled(pattern).exec(this.#text);
    if (!found) return undefined;
    this.#text = `${this.#text.slice(0, found.index)} ~ ${this.#text.slice(found.index + found[0].length)}`;
    return found[0];
  }

  /** True when the pattern is there; nothing is taken. */
  has(pattern: string): boolean {
    return compiled(pattern).test(this.#text);
  }

  /** The last colour that a stretch of words names. What had to be read as another one is kept as a doubt. */
  colourIn(words: string): Colour | undefined {
    const written = words
      .match(/‹[^›]+›/g)
      ?.at(-1)
      ?.slice(1, -1);
    const named = written === undefined ? undefined : colourNamed(written);
    if (named && !named.exact) this.#doubts.push(say.readAs(this.asTyped(written as string), named.colour));
    return named?.colour;
  }

  /** Words of this sentence as they were written: "ppt", not the "precipitate" it is read as. */
  asTyped(words: string): string {
    return words.replace(/[a-z']+/g, (word) => this.#short.get(word) ?? word);
  }

  get doubts(): readonly string[] {
    return this.#doubts;
  }

  isEmpty(): boolean {
    return !/[a-z0-9]/.test(this.#text);
  }

  /** What no reading took, without the small words that say nothing. */
  left(): string {
    return this.#text
      .replace(FILLING, " ")
      .replace(/[^a-z0-9'-]+/g, " ")
      .replace(/(?<![a-z0-9])[-']+|[-']+(?![a-z0-9])/g, " ")
      .replace(/\s+/g, " ")
      .trim();
  }
}

/** Colours that patterns name, each in one word. */
const PLAIN = /(?<![a-z])(?:red|blue|green|pink|white|purple|orange|yellow|colourless)(?![a-z])/g;
const known = new Map<string, RegExp>();

function compiled(pattern: string): RegExp {
  let regexp = known.get(pattern);
  if (!regexp) {
    regexp = new RegExp(
      `(?<![a-z0-9-])(?:${pattern.replace(PLAIN, "‹$&›").replaceAll("C", "‹[^›]+›")})(?![a-z0-9]|-[a-z])`,
    );
    known.set(pattern, regexp);
  }
  return regexp;
}

/** A word that says of another that it is not so. */
export const DENIAL =
  /(?<![a-z])(?:no|not|never|none|nor|neither|without|hardly|barely|scarcely|little|cannot|fail(?:s|ed|ing|ure)?|lacks?|absent|absence|(?:is|was|are|were|do|does|did|wo|ca|has|had|have|could|would)n'?t)(?![a-z])/;

/** Small words, and words of the instruction that a record repeats: they name no sight. */
const FILLING =
  /(?<![a-z0-9'-])(?:at once|just about|a|an|the|is|are|was|were|it|its|and|then|which|that|this|there|with|of|in|on|to|at|by|but|from|into|for|some|so|has|had|have|been|i|we|seen|saw|see|observed|formed|forms|form|forming|produced|produces|given|off|evolved|gives|give|giving|gave|leaving|leaves|obtained|appears|appeared|present|excess|reagent|more|when|after|before|until|first|initially|finally|again|paper|gas|turns|turned|turning|goes|went|becomes|became|changes|changed|test|tested|tests|positive|colour|coloured|solution|also|still|acidified|aqueous|dilute|potassium|sodium|adding|added|add|warming|warmed|warm|heating|heated|heat|drops|drop|few|cold|cool|cooling|hot|shaking|shaken|now|as|very|liquid|damp|moist|wet|rapid|rapidly|vigorous|vigorously|steady|slow|slowly|quickly|gradually|immediately|boiled|boiling|left|tube|mixture|sample|completely|readily|easily|all|only|just|because|shows|showing|held|near|mouth|dry|faster|filter|made|makes)(?![a-z0-9'-])/g;
