/**
 * Words into an observation: what somebody wrote on a record sheet, read, completed or questioned. Every reading takes its words out of the
 * sentence; what is left over was not understood and is said back. Nothing is guessed: where words leave something open, a question stands
 * beside what was read.
 */
import { COLOURS } from "../constants/colours.ts";
import { CLEARS_AGAIN, GAS_EVIDENCE, type Gas } from "../practical/gases.ts";
import type { Colour } from "../practical/same-colour.ts";
import type { Observation } from "../practical.ts";
import { GAS_NAMES } from "./phrase.ts";
import { OTHER_COLOURS, SHORT } from "./spellings.ts";

/** What the test does, so that a record can be asked for what it leaves out. */
export interface AskedOf {
  /** A reagent is added in excess. */
  excess?: boolean;
  /** A solid is in the tube when the test begins. */
  solid?: boolean;
  /** A gas is tested for. */
  gas?: boolean;
}

export interface ReadWords {
  /** Absent when nothing was understood. */
  seen?: Observation;
  /** What is missing, doubtful or not understood: short sentences to the writer. */
  questions: string[];
}

/** Longest text that is read: a line of a record is far shorter, and nothing can make a page work for long. */
const LONGEST = 300;

/**
 * @example readWords("white ppt sol in xs giving colourless soln").seen
 * // { precipitate: { colour: "white", amount: "plain" }, fate: "dissolves", solution: "colourless" }
 * @example readWords("clear solution").questions // ["\"Clear\" is not a colour: ..."]
 */
export function readWords(text: string, asked: AskedOf = {}): ReadWords {
  if (text.length > LONGEST) {
    return { questions: [`This is ${text.length} letters long; write one observation in at most ${LONGEST}.`] };
  }
  const words = new Sentence(text);
  const seen: Observation = {};
  const questions: string[] = [];
  const ask = (question: string) => questions.push(question);
  if (words.isEmpty()) return { questions: ["Nothing is written yet."] };

  readGas(words, seen, ask);
  readDry(words, seen);
  readSolids(words, seen, ask, asked);
  readSolution(words, seen, ask);
  readNone(words, seen, ask, asked);
  complete(seen, ask, asked);

  const left = words.left();
  if (left) ask(`Not understood: "${left}".`);
  return { ...(Object.keys(seen).length > 0 && { seen }), questions };
}

type Ask = (question: string) => void;

const NAMES: readonly [string, Colour][] = [
  ...Object.entries(OTHER_COLOURS),
  ...(Object.keys(COLOURS) as Colour[]).map((name): [string, Colour] => [name, name]),
].sort((a, b) => b[0].length - a[0].length);
const COLOUR = `(?:${NAMES.map(([name]) => name.replace(/[- ]/g, "[- ]?")).join("|")})`;
const spelled = new Map(NAMES.map(([name, colour]) => [name.replace(/[- ]/g, ""), colour]));
const colourOf = (text: string): Colour => spelled.get(text.replace(/[- ]/g, "")) as Colour;

/** A sentence from which readings take their words. */
class Sentence {
  #text: string;
  constructor(text: string) {
    const plain = text
      .toLowerCase()
      .replace(/[’‘]/g, "'")
      .replace(/→|->|=>/g, " to ")
      // Oxidation numbers: manganate(VII).
      .replace(/\([iv]+\)/g, " ")
      .replace(/[.,;:()"“”/]+/g, " , ")
      .replace(/n , v , c|n , c\b/g, "nvc");
    this.#text = ` ${plain.replace(/[a-z]+/g, (word) => SHORT[word] ?? word).replace(/\s+/g, " ")} `;
  }
  /** The first place that fits, with its groups; its words are then gone. `C` in a pattern stands for any colour. */
  take(pattern: string): RegExpExecArray | undefined {
    const found = new RegExp(`\\b(?:${pattern.replaceAll("C", COLOUR)})\\b`).exec(this.#text);
    if (!found) return undefined;
    this.#text = `${this.#text.slice(0, found.index)} ~ ${this.#text.slice(found.index + found[0].length)}`;
    return found;
  }
  isEmpty(): boolean {
    return !/[a-z0-9]/.test(this.#text);
  }
  /** What no reading took, without the small words that say nothing. */
  left(): string {
    return this.#text
      .replace(FILLING, " ")
      .replace(/[^a-z0-9'-]+/g, " ")
      .trim();
  }
}

const FILLING =
  /\b(?:a|an|the|is|are|was|were|it|its|and|then|which|that|this|there|with|of|in|on|to|at|by|but|from|into|for|some|seen|observed|formed|forms|form|forming|produced|produces|given|off|evolved|gives|give|giving|gave|obtained|appears|appeared|excess|when|after|before|paper|gas|turns|turned|turning|goes|went|becomes|became|test|colour|coloured|solution|also|still|acidified|aqueous|dilute|potassium|adding|added|warming|warmed|heating|heated|drops|few|reagent|cold|shaking|now|as|very|liquid|damp|moist|rapid|vigorous|steady|slow|left)\b/g;

const BECOMES =
  "(?: (?:turns?|turned|turning|goes|going|went|becomes?|became|changes?|changed|to|from|is|was|paper)\\b)*";

/** Signs of gases and what names them, the longer before the shorter. */
const SIGNS: readonly (readonly [pattern: string, gas: Gas])[] = [
  [
    `(?:damp |moist )?litmus(?: paper)?${BECOMES} (?:red to )?blue|red litmus(?: paper)?${BECOMES} blue|(?:turns?|turned) (?:damp |moist )?red litmus(?: paper)? blue`,
    "NH3",
  ],
  [
    "(?:damp |moist )?(?:blue |red )?litmus(?: paper)?(?: is| was)? bleached|bleach(?:es|ed) (?:damp |moist )?(?:blue |red )?litmus(?: paper)?",
    "Cl2",
  ],
  [
    `(?:damp |moist )?blue litmus(?: paper)?${BECOMES} red|(?:turns?|turned) (?:damp |moist )?blue litmus(?: paper)? red`,
    "HCl",
  ],
  [
    `(?:lime ?water)${BECOMES} (?:milky|cloudy|chalky|white)|white precipitate (?:in|with) lime ?water|(?:turns?|turned) lime ?water (?:milky|cloudy|chalky)`,
    "CO2",
  ],
  [
    "(?:relights?|relit|rekindles?) (?:a |the )?glowing splint|glowing splint(?: is| was)? (?:relights|relit|rekindles|rekindled)",
    "O2",
  ],
  [
    "(?:lighted|lit|burning) splint[^~,]*? pop|(?:squeaky )?pop(?: with a lighted splint)?|pops(?: with a lighted splint)?",
    "H2",
  ],
  [
    `(?:acidified )?(?:potassium )?manganate[^~,]*?(?:purple to colourless|colourless|decolouri[sz]ed)|decolouri[sz]es (?:acidified )?(?:potassium )?manganate(?: paper)?`,
    "SO2",
  ],
  ["(?:anhydrous )?copper sulfate(?: paper)?[^~,]*? blue", "H2O"],
];

const GAS_WORDS: readonly (readonly [pattern: string, gas: Gas])[] = [
  ...(Object.entries(GAS_NAMES) as [Gas, string][]).map(([gas, name]) => [name, gas] as const),
  ...(Object.keys(GAS_NAMES) as Gas[]).map((gas) => [gas.toLowerCase(), gas] as const),
  ["sulphur dioxide", "SO2"],
];

function readGas(words: Sentence, seen: Observation, ask: Ask): void {
  const fumes = words.take("(C) (?:gas|fumes|vapour)");
  if (fumes) seen.fumes = colourOf(fumes[0].replace(/ (?:gas|fumes|vapour)$/, ""));
  if (words.take("no (?:effervescence|gas)(?: is)?(?: given off| evolved| seen)?")) seen.gas = false;
  if (
    words.take(
      `(?:no change (?:to|in|on|with) )(?:the )?(?:damp |moist )?(?:red |blue )?(?:litmus|lime ?water)(?: paper)?|(?:red |blue )?litmus(?: paper)? stays (?:red|blue)|lime ?water stays (?:clear|colourless)|gas test shows nothing`,
    )
  ) {
    seen.gas = false;
  }
  if (words.take("effervescence")) seen.effervescence = true;
  const sign = SIGNS.find(([pattern]) => words.take(pattern));
  const named = GAS_WORDS.find(([pattern]) => words.take(pattern));
  const gas = sign?.[1] ?? named?.[1];
  if (!gas) return;
  const clears = gas === "CO2" && words.take("(?:then )?(?:clear|clears|colourless)(?: again)?(?: in excess)?");
  seen.gas = { formula: gas, evidence: clears ? CLEARS_AGAIN : GAS_EVIDENCE[gas] };
  if (!sign) ask(`How was ${GAS_NAMES[gas]} shown? Credit is given for the test: "${GAS_EVIDENCE[gas]}".`);
  if (sign && named && named[1] !== gas && !(gas === "CO2" && named[1] === "SO2")) {
    ask(`That sign is the one of ${GAS_NAMES[gas]}, not of ${GAS_NAMES[named[1]]}: which was it?`);
  }
}

/** Flames, residues, sublimates, drops and indicators. */
function readDry(words: Sentence, seen: Observation): void {
  if (words.take("no (?:flame colour|colour in the flame|coloured flame)")) seen.flame = false;
  const flame = words.take("(C)(?: coloured)? flame") ?? words.take("flame(?: (?:is|was|turns|turned|goes))* (C)");
  if (flame) seen.flame = colourIn(flame[0]);
  const both = words.take(
    "(C)(?: residue)?(?: when)? hot[ ,and]*(?:becomes )?(C)(?: residue)?(?: when| on)? (?:cold|cool|cooling)",
  );
  if (both) {
    const [hot, cold] = both[0].split(/\bhot\b/);
    seen.residue = { hot: colourIn(hot), cold: colourIn(cold) };
  }
  const one = words.take("(C) residue") ?? words.take("residue(?: is| was)? (C)");
  if (one && !seen.residue) seen.residue = { cold: colourIn(one[0]) };
  if (words.take("(?:no residue|nothing left|no solid left)")) seen.residue = false;
  const sublimate = words.take("(C) (?:sublimate|solid on the (?:cool|cold|cooler) (?:wall|walls|part|parts)[^~,]*)");
  if (sublimate) seen.sublimate = colourIn(sublimate[0]);
  if (
    words.take(
      "(?:colourless )?(?:drops|droplets|condensation)(?: of (?:a )?(?:colourless )?(?:liquid|water))?(?: on the (?:cool|cold) (?:wall|walls))?",
    )
  ) {
    seen.droplets = true;
  }
  const indicator = words.take(`(?:universal )?indicator(?: paper)?${BECOMES} (C)|litmus(?: paper)?${BECOMES} (C)`);
  if (indicator) seen.indicator = colourIn(indicator[0].replace(/^.*(?:litmus|indicator)/, ""));
}

/** The last colour that a stretch of words names. */
const colourIn = (text: string): Colour => colourOf((text.match(new RegExp(COLOUR, "g")) ?? []).at(-1) as string);

function readSolids(words: Sentence, seen: Observation, ask: Ask, asked: AskedOf): void {
  if (words.take("no (?:visible )?(?:precipitate|solid)")) seen.precipitate = false;
  const turning = words.take(
    "(?:turning|turns|darkens?|goes)(?: slowly| quickly)?(?: to)? (C) (?:on standing|in air|on contact with air|at the surface)[^~]*",
  );
  if (turning) ask("A colour that comes on standing belongs to a later look: only the first is kept.");
  const faint = words.take("(?:very )?(?:faint|slight)(?: trace of)?(?: a)? (C) (?:precipitate|cloudiness)");
  const plain =
    words.take("(C)(?: gelatinous| curdy| crystalline| heavy| thick| dense| fine)? (?:precipitate|cloudiness)") ??
    words.take("precipitate(?: is| was| of a?)? (C)(?: colour)?");
  const solid = faint ?? plain;
  if (solid) seen.precipitate = { colour: colourIn(solid[0]), amount: faint ? "slight" : "plain" };
  else if (words.take("precipitate|(?:goes |turns |becomes )?(?:cloudy|milky|turbid)")) {
    if (!asked.solid) ask("What colour is the precipitate?");
  }
  if (
    words.take(
      "(?:partly|partially|slight) (?:dissolves?|dissolved|soluble|redissolves?)|some of (?:it|the (?:precipitate|solid)) dissolve[sd]?|some dissolve[sd]?",
    )
  ) {
    seen.fate = "partly dissolves";
  } else if (
    words.take(
      "insoluble|(?:does not|doesn't|did not|will not|not) (?:re)?(?:dissolve|soluble)|(?:it |precipitate |solid )?(?:remains|remained|stays|persists)|no (?:further )?change in excess",
    )
  ) {
    seen.fate = "remains";
  } else if (
    words.take("(?:re)?dissolve[sd]?|(?:readily |completely )?soluble|disappear(?:s|ed)|re-?dissolving|dissolving")
  ) {
    seen.fate = "dissolves";
  }
}

function readSolution(words: Sentence, seen: Observation, ask: Ask): void {
  const solution =
    words.take("(C) (?:solution|liquid|filtrate)") ??
    words.take(
      "(?:solution|liquid|filtrate)(?: (?:turns?|turned|is|was|goes|went|becomes?|became|changes?|changed))?(?: from (C))?(?: to)? (C)",
    ) ??
    (seen.fate === "dissolves" ? words.take("(?:giving|to give|to|forming|to form)(?: a| an)? (C)") : undefined) ??
    words.take("(?:turns|turned|goes|went|becomes|became) (C)");
  if (solution) seen.solution = colourIn(solution[0]);
  if (words.take("clear")) {
    ask('"Clear" is not a colour: it means see-through. Write colourless, or name the colour.');
  }
  if (Object.keys(seen).length > 0) return;
  const bare = words.take("(C)");
  if (bare) ask(`What is ${colourIn(bare[0])}: a precipitate, the solution, a flame, a residue?`);
}

function readNone(words: Sentence, seen: Observation, ask: Ask, { solid }: AskedOf): void {
  const reaction = words.take("no reaction");
  const none = words.take(
    "no (?:visible |observable |further )?change|nothing(?: happens| happened| seen)?|unchanged|stays the same",
  );
  if (reaction) ask('"No reaction" is a conclusion: write what is seen, "no visible change".');
  if (!reaction && !none) return;
  if (Object.keys(seen).every((key) => key === "gas" && seen.gas === false)) seen.none = true;
  else if (solid && seen.fate === undefined) seen.fate = "remains";
}

/** Asks for what the test shows and the words leave out. */
function complete(seen: Observation, ask: Ask, asked: AskedOf): void {
  if (Object.keys(seen).length === 0 || seen.none) return;
  const solid = seen.precipitate || asked.solid;
  if (asked.excess && solid && seen.fate === undefined) {
    ask("What happened in excess: did it dissolve, did some of it dissolve, or did it remain?");
  }
  if (seen.fate === "dissolves" && seen.solution === undefined) ask("What colour is the solution now?");
  if (asked.gas && seen.gas === undefined) {
    ask(seen.effervescence ? "Which gas was it: what did its test show?" : "What did the test of the gas show?");
  }
}
