/** Bubbles, fumes and gases with their tests. */
import { GASES } from "#words/observation.ts";
import * as say from "#words/reading.ts";
import { CLEARS_AGAIN, GAS_EVIDENCE, type Gas } from "../../practical/gases.ts";
import { NAMED, NO_SIGN, SIGNS, type SignWords, SMOKE } from "../gas-words.ts";
import { ask, type Reading } from "./reading.ts";
import { speaksOfGas, takeReagents } from "./reagents.ts";

export function readGas(reading: Reading): void {
  const { words, asked, seen } = reading;
  const ofGas = asked.gas || speaksOfGas(words);
  const denial = words.take(NO_SIGN);
  if (denial) seen.gas = false;
  if (words.take("no effervescence")) seen.effervescence = false;
  else if (words.take("effervescence")) seen.effervescence = true;
  // White fumes with nothing held in them are no smoke on a rod.
  const isFumes = words.has("white fumes") && !asked.gasTest?.startsWith("rod") && !words.has("rod|near|with");
  const smoke = !isFumes && words.take(SMOKE.words) !== undefined;
  const told = smoke && readSmoke(reading);
  readFumes(reading);
  if (told) return;
  const sign = signIn(reading);
  takeReagents(words, ofGas || sign !== undefined);
  const named = gasNamed(reading);
  if (named) reading.named = named;
  if (sign) {
    const formula = named && sign.shows.includes(named) ? named : sign.shows[0];
    seen.gas = { formula, evidence: sign.evidence };
    if (!named && sign.shows.length > 2) ask(reading, say.WHICH_ACID_GAS);
    if (named && named !== formula) ask(reading, say.notItsSign(GASES[formula], GASES[named]), "gas");
    if (otherSigns(reading, sign) || (denial && denies(denial, sign))) ask(reading, say.ONE_SIGN, "one gas test");
  } else if (named && !isSeenByItsColour(reading, named)) {
    seen.gas = { formula: named, evidence: GAS_EVIDENCE[named] };
    ask(reading, say.howShown(GASES[named], GAS_EVIDENCE[named]), "gas test");
  } else if (asked.gasTest === undefined && words.take("lime ?water")) {
    ask(reading, say.LIMEWATER, "gas test");
  }
}

/** Right after the sign: what more gas does to clouded limewater. */
const CLEARS =
  "[ ,]*(?:(?:but|and|then) )*(?:it )?(?:goes |turns |becomes )?(?:clears?|clearing|cleared|colourless|dissolves)(?: again| up)?(?: (?:in|with) (?:excess|more gas))?";

/** Where it is known how the gas is tested for, and only there, its short sign. */
function signIn({ words, asked, seen }: Reading): SignWords | undefined {
  const found = (sign: SignWords, pattern: string) => {
    if (sign.test === "limewater" && words.take(`(?:${pattern})${CLEARS}`)) return { ...sign, evidence: CLEARS_AGAIN };
    return words.take(pattern) ? sign : undefined;
  };
  for (const sign of SIGNS) {
    const whole = isLiquid(sign, asked) ? undefined : found(sign, sign.whole);
    if (whole) return whole;
  }
  if (seen.gas === false) return undefined;
  for (const sign of SIGNS) {
    const short = sign.test === asked.gasTest ? found(sign, sign.short) : undefined;
    if (short) return short;
  }
  return undefined;
}

/** Where no gas is tested for, a sign of sulfur dioxide is what the liquid does. */
const isLiquid = ({ test }: SignWords, asked: Reading["asked"]) =>
  asked.gas === false && /manganate|dichromate/.test(test);

/** Takes the further signs out of the sentence. True when one is of another gas; water vapour comes beside any. */
function otherSigns({ words, asked }: Reading, first: SignWords): boolean {
  const more = SIGNS.filter((sign) => !isLiquid(sign, asked) && words.take(sign.whole));
  const mayBeOne = ({ shows }: SignWords) =>
    shows.includes("H2O") || first.shows.includes("H2O") || shows.some((gas) => first.shows.includes(gas));
  return !more.every(mayBeOne);
}

/** Words of a denial, and the test they are about. */
const DENIED: readonly (readonly [words: RegExp, test: RegExp])[] = [
  [/red litmus/, /red litmus/],
  [/blue litmus/, /blue litmus/],
  [/litmus/, /litmus/],
  [/lime ?water/, /limewater/],
  [/relight|goes out/, /glowing/],
  [/pop/, /lighted/],
  [/splint/, /splint/],
  [/manganate/, /manganate/],
  [/dichromate/, /dichromate/],
  [/smoke/, /rod/],
];

/** True when the denial is of this very test: "limewater stays clear" of clouded limewater, and "no gas" of any sign. */
function denies(denial: string, { test }: SignWords): boolean {
  const of = DENIED.find(([words]) => words.test(denial.replace(/[‹›]/g, "")));
  return of === undefined || of[1].test(test);
}

/** White smoke shows ammonia on a rod with acid, hydrogen chloride on one with ammonia. True when that was told. */
function readSmoke(reading: Reading): boolean {
  const { words, asked, seen } = reading;
  const formula: Gas | undefined =
    asked.gasTest === "rod with hydrochloric acid"
      ? "NH3"
      : asked.gasTest === "rod with ammonia"
        ? "HCl"
        : words.take(SMOKE.withAcid)
          ? "NH3"
          : words.has("(?:with|near|rod)[^~]{0,20}(?:ammonia|nh3)") && words.take(SMOKE.withAmmonia)
            ? "HCl"
            : namedBeside(words);
  if (formula) {
    seen.gas = { formula, evidence: SMOKE.evidence };
    words.take("(?:glass )?rod");
    const named = gasNamed(reading);
    if (named) reading.named = named;
    return true;
  }
  ask(reading, say.SMOKE, "gas test");
  return false;
}

/** Named beside the smoke, and not said of the rod. */
const namedBeside = (words: Reading["words"]): Gas | undefined =>
  words.has("ammonia|nh3") ? "NH3" : words.has("hydrogen chloride|hcl") ? "HCl" : undefined;

function readFumes(reading: Reading): void {
  const { words, seen } = reading;
  const fumes =
    words.take("C (?:gas|fumes|vapours?|vapors?)") ?? words.take("(?:gas|fumes|vapours?) (?:is |are |was |were )?C");
  const colour = fumes && words.colourIn(fumes);
  if (colour && colour !== "colourless") seen.fumes = colour;
  if (
    words.take(
      "(?:a )?(?:pungent|choking|sharp|bad|strong|acrid)(?:,? (?:gas|smell|smelling|odour|gas smell))*|smell of(?: a)?|smells of",
    )
  )
    if (!words.has("litmus|splint|lime ?water|manganate|dichromate")) ask(reading, say.SMELL);
}

function gasNamed(reading: Reading): Gas | undefined {
  const named = NAMED.filter(([name]) => reading.words.take(name));
  const gases = new Set(named.flatMap(([, gas]) => (gas === "H2O" ? [] : [gas])));
  if (gases.size > 1 && !reading.seen.fumes) ask(reading, say.ONE_GAS, "one gas name");
  // Water vapour beside another gas is named last.
  return (named.find(([, gas]) => gas !== "H2O") ?? named[0])?.[1];
}

/** Brown fumes are nitrogen dioxide's own sign, as yellow-green gas is chlorine's to look at. */
const isSeenByItsColour = ({ seen: { fumes } }: Reading, gas: Gas): boolean =>
  gas === "NO2" && (fumes === "brown" || fumes === "red-brown");
