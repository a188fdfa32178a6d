/** How people write the signs of gases. Common practice, no source; what each sign shows is `gas-signs.ts` of the bench. */
import { GASES_READ } from "#words/reading.ts";
import { GAS_EVIDENCE, type Gas } from "../practical/gases.ts";
import type { GasTest } from "../practical.ts";

export interface SignWords {
  test: GasTest;
  /** As records keep it. */
  evidence: string;
  /** Gases with this sign, the usual one first. */
  shows: readonly Gas[];
  /** Words that say it all. */
  whole: string;
  /** Words that say enough where it is known how the gas is tested for. */
  short: string;
}

const BECOMES =
  "(?: (?:turns?|turned|turning|goes|going|went|becomes?|became|changes?|changed|to|from|is|was|paper|,)(?![a-z]))*";
const TURNS = "(?:turns?|turned|turning|changes?|changed)";
const DAMP = "(?:damp |moist |wet )?";
const LITMUS = "litmus(?: paper)?";
const TO = "(?: (?:turns?|turned|goes|went|becomes?|became|to|from|is|was|,))*";

/** Some words between what is tested and its sign, none of which denies it. */
const BETWEEN = "(?:(?!(?: not| never|n't| no| fails?| without)(?![a-z]))[^~]){0,40}";

/** The longer before the shorter. */
export const SIGNS: readonly SignWords[] = [
  {
    test: "damp red litmus",
    evidence: GAS_EVIDENCE.NH3,
    shows: ["NH3"],
    whole: `${DAMP}(?:red )?${LITMUS}${BECOMES} (?:red to )?blue|${TURNS} (?:the )?${DAMP}(?:red )?${LITMUS}(?: from red)?(?: to)? blue`,
    short: "(?:it |paper )?(?:turns |goes |turned |went |becomes )?(?:from )?(?:red )?(?:to )?blue",
  },
  {
    test: "damp blue litmus",
    evidence: GAS_EVIDENCE.Cl2,
    shows: ["Cl2"],
    whole: `${DAMP}(?:blue |red )?${LITMUS}${BECOMES}(?: red)?(?: then| and)*(?: is| was)? (?:bleached|white)|bleach(?:es|ed) (?:the )?${DAMP}(?:blue |red )?${LITMUS}`,
    short: "(?:red )?(?:then )?(?:is |was )?(?:bleached|bleaches)",
  },
  {
    test: "damp blue litmus",
    evidence: GAS_EVIDENCE.HCl,
    shows: ["HCl", "SO2", "NO2", "CO2"],
    whole: `${DAMP}blue ${LITMUS}${BECOMES} red|${TURNS} (?:the )?${DAMP}blue ${LITMUS}(?: to)? red`,
    short: `(?:${LITMUS} )?(?:turns |goes |turned |went |becomes )?(?:from )?(?:blue )?(?:to )?red`,
  },
  {
    test: "limewater",
    evidence: GAS_EVIDENCE.CO2,
    shows: ["CO2", "SO2"],
    whole: `lime ?water${BECOMES}(?: a)? (?:milky|cloudy|chalky|white|turbid)(?: white)?(?: precipitate)?|(?:milky|cloudy|white precipitate) (?:in|with) (?:the )?lime ?water|${TURNS} (?:the )?lime ?water(?: to)? (?:milky|cloudy|chalky|white)|clouds (?:the )?lime ?water`,
    short: "(?:it )?(?:turns |goes |turned |went |becomes )?(?:milky|cloudy|chalky|turbid)",
  },
  {
    test: "glowing splint",
    evidence: GAS_EVIDENCE.O2,
    shows: ["O2"],
    whole:
      "(?:relights?|relit|re-lit|rekindles?|rekindled) (?:a |the )?glowing splint|glowing splint(?: is| was| it| ,)*(?: relights| relit| re-lit| rekindles| rekindled| bursts into flame| catches fire)",
    short: "(?:splint )?(?:is |was )?(?:relights?|relit|re-lit|rekindles?|rekindled|bursts into flame|catches fire)",
  },
  {
    test: "lighted splint",
    evidence: GAS_EVIDENCE.H2,
    shows: ["H2"],
    whole: `(?:lighted|lit|burning) splint${BETWEEN} pops?|(?:a )?(?:squeaky )?pops?(?: sound)?(?: with (?:a )?(?:lighted|lit|burning) splint)?`,
    short: "pops?(?: heard)?",
  },
  {
    test: "acidified dichromate(VI) paper",
    evidence: "acidified dichromate(VI) paper turns from orange to green",
    shows: ["SO2"],
    whole: `(?:acidified )?(?:potassium )?(?:dichromate|k2cr2o7)(?: paper)?${TO}(?: orange| yellow)?${TO} green`,
    short: "(?:turns |goes )?(?:from )?(?:orange |yellow )?(?:to )?green",
  },
  {
    test: "acidified manganate(VII) paper",
    evidence: GAS_EVIDENCE.SO2,
    shows: ["SO2"],
    whole: `(?:acidified )?(?:aqueous )?(?:potassium )?(?:manganate|kmno4)${BETWEEN}?(?:purple to colourless|colourless|decolouri[sz]ed)|(?:decolouri[sz]e[sd]|turns) (?:the )?(?:acidified )?(?:aqueous )?(?:potassium )?(?:manganate|kmno4)(?: paper| solution)?(?: (?:from )?(?:purple )?(?:to )?colourless)?`,
    short:
      "(?:turns |goes )?(?:from )?(?:purple )?(?:to )?colourless|(?:is |was )?decolouri[sz]e[sd]|(?:purple )?colour (?:goes|disappears)",
  },
  {
    test: "anhydrous copper(II) sulfate",
    evidence: GAS_EVIDENCE.H2O,
    shows: ["H2O"],
    whole: `(?:white )?(?:anhydrous )?copper sul(?:f|ph)ate(?: paper)?${TO}(?: white)?${TO} blue|${TURNS} (?:white )?(?:anhydrous )?copper sul(?:f|ph)ate(?: from white)?(?: to)? blue`,
    short: "(?:turns |goes )?(?:from )?(?:white )?(?:to )?blue",
  },
  {
    test: "cobalt(II) chloride paper",
    evidence: "cobalt(II) chloride paper turns from blue to pink",
    shows: ["H2O"],
    whole: `(?:blue )?cobalt chloride(?: paper)?${TO}(?: blue)?${TO} pink|${TURNS} (?:blue )?cobalt chloride(?: paper)?(?: from blue)?(?: to)? pink`,
    short: "(?:turns |goes )?(?:from )?(?:blue )?(?:to )?pink",
  },
];

/** A rod wetted with one concentrated solution near the gas of the other. */
export const SMOKE = {
  evidence: "white smoke on the rod",
  words: "(?:dense |thick )?white (?:smoke|fumes)(?: on (?:the |a )?(?:glass )?rod)?",
  withAcid:
    "(?:with|near|from|of) (?:a |the )?(?:glass )?(?:rod )?(?:with |in |of )?(?:conc |concentrated )?(?:hydrogen chloride|hcl)|(?:with |near |from |of )?(?:conc |concentrated )?hydrochloric acid",
  withAmmonia:
    "(?:with |near |from )?(?:a |the )?(?:glass )?(?:rod )?(?:with |in |of )?(?:conc |concentrated )?(?:ammonia|nh3)",
} as const;

/** A gas was tried for and not found. */
export const NO_SIGN =
  "no change (?:to|in|on|with|of) (?:the )?(?:damp |moist )?(?:red |blue )?(?:litmus|lime ?water|splint|manganate|dichromate)(?: paper)?|" +
  "(?:damp |moist )?(?:red |blue )?litmus(?: paper)? (?:stays|stayed|remains|remained|still) (?:red|blue)|lime ?water (?:stays|stayed|remains|remained|still) (?:clear|colourless)|" +
  "(?:damp |moist )?(?:(?:red |blue )?litmus|lime ?water|manganate|dichromate)(?: paper)? (?:does not|doesn't|did not|didn't|not) (?:change|turn|go)[^~,]{0,20}|(?:(?:red |blue )?litmus|lime ?water)(?: paper)? unchanged|" +
  "gas test shows nothing|(?:gas )?test(?: is| was)? negative|negative(?: gas)? test|splint (?:does not|doesn't|did not|didn't|not) (?:relight|pop|change)|no (?:squeaky )?pop|no white smoke|(?:does not|did not|doesn't) relight|splint goes out|" +
  "no gas(?: that[^~,]{0,30}|(?: is| was)?(?: given off| evolved| seen| produced)?)";

/** Gases by name and by formula, the longer first: hydrogen chloride is no hydrogen. */
const ALL: readonly (readonly [words: string, gas: Gas])[] = [
  ...(Object.entries(GASES_READ) as [Gas, string][]).map(([gas, name]) => [name, gas] as const),
  ["sulphur dioxide", "SO2"],
  ["(?:steam|water vapor)", "H2O"],
  ...(Object.keys(GASES_READ) as Gas[]).filter((gas) => gas !== "H2O").map((gas) => [gas.toLowerCase(), gas] as const),
];
export const NAMED = ALL.toSorted(([a], [b]) => b.length - a.length);
