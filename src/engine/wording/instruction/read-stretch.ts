/** One stretch of an instruction, such as "add aqueous ammonia until in excess", as the steps it asks for. */
import type { WrittenStep } from "../../constants/standard-tests.ts";
import { strangeName, strangersIn } from "./beside.ts";
import { gasTestIn, indicatorIn, isGasTest, isLedThrough } from "./gas-words.ts";
import {
  type Amount,
  amountOfLiquid,
  amountOfPieces,
  amountOfSample,
  saysExcess,
  strengthIn,
  timeIn,
} from "./how-much.ts";
import { KINDS, nameOfReagent, reagentsIn } from "./reagent-names.ts";

/** What has been read before in the same tube. */
export interface SoFar {
  /** The sample taken, cm3, where a volume was. */
  sampleCm3?: number;
  /** Something is in the tube. */
  taken: boolean;
  /** There is a liquid in it. */
  wet: boolean;
  /** The reagent added last. */
  reagent?: string;
}

export interface ReadStretch {
  /** In the order in which they are done; `newLine`: the step begins a line of the record of its own. */
  steps: { step: WrittenStep; newLine?: true }[];
  /** The sample of which it takes a fresh portion: letters, none for "each sample". */
  takes?: { samples: string[]; solid: boolean };
  /** Which of the two a filtration before it keeps, where that is said only here. */
  keeps?: "filtrate" | "residue";
  /** What was taken for granted, in half-sentences. */
  assumed: string[];
  /** What must be asked. */
  questions: string[];
}

type Reader = (text: string, words: string, before: SoFar) => ReadStretch | undefined;

const nothing = (): ReadStretch => ({ steps: [], assumed: [], questions: [] });
const only = (step: WrittenStep, more: Partial<ReadStretch> = {}): ReadStretch => ({
  ...nothing(),
  steps: [{ step }],
  ...more,
});

/**
 * @param text the stretch made readable; `words`: as the paper has it, for the letters of samples
 */
export function readStretch(text: string, words: string, before: SoFar): ReadStretch {
  if (FORBIDS.test(text)) return { ...nothing(), assumed: ["this says what not to do"] };
  for (const reader of READERS) {
    const read = reader(text, words, before);
    if (read) return read;
  }
  return { ...nothing(), questions: [`Not understood: "${words}". What is done here?`] };
}

const FORBIDS = /^(?:please )?(?:do not|don't|never|avoid)\b/;

const SAMPLE =
  /\b(?:solutions?|solids?|samples?|salts?|substances?|compounds?|unknowns?|portions?|crystals|powders?)\b(?! of (?:the )?(?:filtrate|residue))/;
/** Letters of samples: "K", "F, G and H", "X1"; a letter that is a word or an element in a formula stands alone only after such a word. */
const LETTERS = /(?<![\w(])([A-Z][0-9]?)(?![\w)'^+\-(])/g;

function lettersIn(words: string): string[] {
  // An article begins a sentence; after "solid" or "and" the same letter is a sample.
  const plain = words.replace(/^\W*A(?= [a-z])/, "");
  return [...new Set([...plain.matchAll(LETTERS)].map(([, letter]) => letter))];
}

const keptIn = (text: string): "filtrate" | "residue" | undefined =>
  /\bfiltrate\b/.test(text) ? "filtrate" : /\bresidue\b/.test(text) ? "residue" : undefined;

/** "To 1 cm3 of solution K", "Place a spatula measure of solid P in a tube", "Dissolve the solid in 5 cm3 of water". */
const readTake: Reader = (text, words) => {
  const dissolve = /^dissolve\b/.test(text);
  const begins = /^(?:to\b|take\b|place\b|put\b|pour\b|transfer\b|measure\b|use\b)/.test(text) || dissolve;
  const letters = lettersIn(words);
  const kept = keptIn(text);
  if (/^to\b/.test(text) && kept && (letters.length === 0 || /^to the\b/.test(text))) {
    const part = PORTIONED.test(text) ? [`the ${kept} is used whole`] : [];
    return { ...nothing(), keeps: kept, assumed: part };
  }
  if (
    /^to (?:[^,]{0,30} of )?(?:the|this|that|each) (?:same |resulting )?(?:mixture|tube|product|precipitate)s?\b/.test(
      text,
    )
  )
    return nothing();
  // Of a mixture already in the tube nothing is taken anew.
  if (!begins || !(SAMPLE.test(text) || letters.length > 0)) return undefined;
  if (/\b(?:mixture|filtrate|residue|resulting|product from)\b/.test(text)) return nothing();
  const liquid = text.match(/\b(?:in|into|with)\b.*\bwater\b/)?.[0];
  const solid = dissolve || /\bsolid|\bcrystals|\bpowder|\bspatula/.test(text);
  if (/^to (?:the|this|these|that) (?:same |resulting )?(?:solution|tube)/.test(text) && letters.length === 0)
    return nothing();
  const taken = amountOfSample(liquid ? text.slice(0, text.indexOf(liquid)) : text, solid);
  const read: ReadStretch = {
    steps: [{ step: taken.entry }],
    takes: { samples: letters, solid },
    assumed: taken.assumed ? [taken.assumed] : [],
    questions: [],
  };
  if (liquid) pour(read, "H2O(l)", amountOfLiquid(liquid), liquid);
  return read;
};

/** "add dilute nitric acid followed by aqueous silver nitrate", "acidify with dilute nitric acid", "then in excess". */
const readAdd: Reader = (text, words, before) => {
  const again =
    /^(?:in excess|until)\b/.test(text) ||
    (/^add\b/.test(text) && /^add (?:it |them )?(?:in |an |to )?excess$|^add (?:more|further)\b/.test(text));
  const found = reagentsIn(text);
  if (again && found.length === 0) return readAgain(text, before);
  if (/^(?:\w+ly )?(?:acidify|neutralise|treat)\b/.test(text)) {
    const read = readMixed(text, words, before);
    return read.steps.length > 0 ? read : { ...read, ...unknownReagent(text, words) };
  }
  if (!/^(?:\w+ly )?(?:add|followed by|pour)\b/.test(text)) return undefined;
  const read = nothing();
  const portion = before.taken ? undefined : sampleOf(text, words);
  if (portion) takeFirst(read, portion);
  pourAll(read, text.replace(OF_SAMPLE, " "), before);
  return read.steps.some(({ step }) => "add" in step) ? read : { ...read, ...unknownReagent(text, words, read) };
};

/** "to 1 cm3 of solution K", up to what is said of the reagent again; in "1 to 2 cm3" nothing is taken of. */
const OF_SAMPLE =
  /(?<!\b(?:\d|one|two|three|four|five|six) )\bto (?!excess\b|in excess\b)(?:(?!\b(?:to|until|in excess)\b)[^,])*?(?:\b(?:solutions?|solids?|samples?|salts?|substances?|compounds?|unknowns?|portions?|crystals|powders?|filtrate|residue|mixture|tubes?)\b(?: of)?(?: (?:the )?(?:solution|solid|filtrate|mixture))?(?: [a-z]\d?(?:(?:,| and) [a-z]\d?)*\b)?|(?:cm3|ml|drops?) of [a-z]\d?\b)/;

function unknownReagent(text: string, words: string, read: ReadStretch = nothing()): Partial<ReadStretch> {
  return {
    steps: [...read.steps, { step: { add: "" } }],
    questions: [...read.questions, whichReagent(text, words)],
  };
}

function takeFirst(read: ReadStretch, { takes, amount }: NonNullable<ReturnType<typeof sampleOf>>): void {
  read.takes = takes;
  read.steps.push({ step: amount.entry });
  if (amount.assumed) read.assumed.push(amount.assumed);
}

/** Every reagent of a clause, in its order, and a question for every thing beside them that is none of the bench. */
function pourAll(read: ReadStretch, text: string, { sampleCm3 }: Pick<SoFar, "sampleCm3">, acidify = false): void {
  const found = reagentsIn(text);
  if (/\bconcentrated\b/.test(text) && found.length > 0)
    read.questions.push("Only dilute acids are on this bench. Is the dilute one meant?");
  found.forEach((one, index) => {
    const from = index === 0 ? 0 : found[index - 1].to;
    const to = index === found.length - 1 ? text.length : one.to;
    const stretch = text.slice(from, to);
    const amount = one.id.endsWith("(s)")
      ? amountOfPieces(stretch)
      : (amountOfLiquid(stretch, sampleCm3) ?? (acidify ? toAcidify(one.id) : undefined));
    const strange = strangeName(text, one, from);
    if (strange === undefined) pour(read, one.id, amount, stretch);
    else {
      read.steps.push({ step: { add: "", ...amount?.entry } });
      read.questions.push(noBottle(strange));
    }
  });
  if (found.length === 0) return;
  for (const stranger of strangersIn(text.replace(/\buntil\b.*/, ""), found)) {
    read.steps.push({ step: { add: "" } });
    read.questions.push(noBottle(stranger));
  }
}

const PORTIONED =
  /\bcm3\b|\bml\b|\b\d+(?:\.\d+)? ?m?g\b|\bspatula|\bportion|\bdrops? of\b|\bdepth\b|\ba little\b|\bcrystals/;
const IN_TUBE = /\b(?:mixture|filtrate|residue|resulting|precipitate|product)\b/;

/**
 * "Warm 2 cm3 of solution B with aqueous sodium hydroxide", "shake solid C with 5 cm3 of water": the sample is taken and the reagents are
 * added; what is then done is the reader's own. A reagent that is named before the "with", or without one, is asked about.
 */
function readMixed(text: string, words: string, before: SoFar): ReadStretch {
  const read = nothing();
  const clause = text.replace(/\b(?:until|to (?:drive|expel|remove))\b.*/, "");
  const [, what = clause, and = ""] = /^(.*?)(\b(?:with|in|using|and)\b.*)$/.exec(clause) ?? [];
  const letters = lettersIn(words.slice(0, what.length + 2).replace(/^\w+/, ""));
  const solid = /\bsolid|\bcrystals|\bpowder/.test(what);
  const named = letters.length > 0 || (SAMPLE.test(what) && PORTIONED.test(what));
  const fresh = !before.taken || PORTIONED.test(what) || (letters.length > 0 && solid && before.wet);
  if (named && fresh && !IN_TUBE.test(what))
    takeFirst(read, { amount: amountOfSample(what, solid), takes: { samples: letters, solid } });
  const cm3 = /^([\d.]+) cm3$/.exec(String(read.steps[0]?.step.take ?? ""));
  pourAll(read, and, cm3 ? { sampleCm3: Number(cm3[1]) } : before, /^(?:\w+ly )?acidify\b/.test(text));
  for (const { id } of reagentsIn(what)) read.questions.push(`Is ${nameOfReagent(id)} added here, and how much?`);
  return read;
}

/** A reader of one thing done, after the sample and the reagents of its clause. */
function after(mixed: ReadStretch, done: ReadStretch): ReadStretch {
  return {
    ...done,
    ...(mixed.takes && { takes: mixed.takes }),
    steps: [...mixed.steps, ...done.steps],
    assumed: [...mixed.assumed, ...done.assumed],
    questions: [...mixed.questions, ...done.questions],
  };
}

/** "Acidify with dilute nitric acid" asks for enough; this much is enough for the samples of a school bench. Common practice, no source. */
const toAcidify = (id: string): Amount | undefined =>
  /^(?:HNO3|HCl|H2SO4|CH3COOH)\(/.test(id)
    ? { entry: { volume: "1 cm3" }, assumed: "to acidify: 1 cm3 of the acid" }
    : undefined;

/** "then in excess", "until in excess", "add more": of the reagent added last. */
function readAgain(text: string, { reagent }: SoFar): ReadStretch | undefined {
  if (/^until\b/.test(text) && !saysExcess(text)) return nothing();
  if (reagent === undefined) return { ...nothing(), questions: ["In excess of what? No reagent stands before it."] };
  const amount = amountOfLiquid(text) ?? { entry: { until: "in excess" } };
  return { ...nothing(), steps: [{ step: { add: reagent, ...amount.entry }, newLine: true }] };
}

/** One reagent into the tube; drops and then an excess are two lines of the record. */
function pour(read: ReadStretch, id: string, amount: Amount | undefined, stretch: string): void {
  const at = strengthIn(stretch);
  const add = (entry: Amount["entry"], newLine?: true) =>
    read.steps.push({ step: { add: id, ...entry, ...(at && { at }) }, ...(newLine && { newLine }) });
  if (amount?.assumed) read.assumed.push(amount.assumed);
  add(amount?.entry ?? {});
  if (!amount) read.questions.push(`How much ${nameOfReagent(id)}: some drops, a volume, or in excess?`);
  else if (!("until" in amount.entry) && saysExcess(stretch)) add({ until: "in excess" }, true);
}

/** The sample in "add sodium hydroxide to 1 cm3 of solution K". */
function sampleOf(text: string, words: string) {
  const at = text.search(/(?<!\b(?:\d|one|two|three|four|five|six) )\bto\b (?!excess)/);
  const rest = at < 0 ? "" : text.slice(at);
  if (
    !SAMPLE.test(rest) ||
    /\b(?:mixture|filtrate|residue|resulting|the (?:same )?(?:solution|tube))\b(?! [a-z]\b)/.test(rest)
  )
    return undefined;
  const solid = /\bsolid|\bcrystals|\bpowder/.test(rest);
  const samples = lettersIn(words.slice(Math.max(0, words.search(/\bto\b /i))));
  return { amount: amountOfSample(rest, solid), takes: { samples, solid } };
}

function whichReagent(text: string, words: string): string {
  const kind = KINDS.find(([word]) => new RegExp(`\\b${word}\\b`).test(text));
  if (kind) return kind[1];
  return noBottle(words.replace(/^\s*(?:\w+ly )?add\s+/i, ""));
}
const noBottle = (name: string) => `Which reagent is meant by "${name}"? There is none of that name on this bench.`;

/** Hot water that stands outside the tube. */
const BATH =
  /\b(?:in|on|over|using|with)? ?(?:a |the )?(?:hot |boiling |warm )?water[- ]?bath\b|\b(?:in|on) (?:a )?(?:beaker of |bath of )?(?:hot|warm|boiling) water\b/;

const readHeat: Reader = (text, words, before) => {
  if (/\bflame test\b/.test(text)) return undefined;
  const verb = /^(?:\w+ly )?(boil|warm|heat)\b/.exec(text)?.[1];
  const boils =
    verb === "boil" || /\b(?:to|bring to) (?:the )?boil|to boiling|until it boils/.test(text.replace(DENIED, ""));
  if (!verb && !boils) return undefined;
  const inBath = BATH.test(text);
  const clause = text.replace(BATH, " ");
  const mixed = readMixed(clause, words, before);
  if (boils && !inBath) {
    const time = timeIn(text);
    return after(
      mixed,
      only({ boil: time ?? "1 min" }, time ? {} : { assumed: ["no time is given: boiled for 1 min"] }),
    );
  }
  const poured = mixed.steps.some(({ step }) => "add" in step);
  const dry = /\bsolid|\bcrystals|\bpowder|\bdry\b/.test(clause);
  const wet = mixed.takes ? !mixed.takes.solid : before.wet;
  if (verb !== "heat" || inBath || poured || (wet && !dry)) return after(mixed, only({ warm: true }));
  const how = /\bgently\b/.test(text) && !/\bstrongly\b/.test(text) ? "gently" : "strongly";
  const heated = only(
    { heat: how },
    { assumed: /\bgently|\bstrongly/.test(text) ? [] : ["heated strongly in the end"] },
  );
  if (before.taken || mixed.takes) return after(mixed, heated);
  const portion = { amount: amountOfSample(clause, true), takes: { samples: [], solid: true } };
  takeFirst(mixed, portion);
  return after(mixed, heated);
};
/** What must not happen. */
const DENIED = /\b(?:not|never|without|avoid\w*)\b.*/;

const readWait: Reader = (text) => {
  if (/^(?:cool|(?:allow|leave|let)\b.*\bcool)\b/.test(text)) return only({ cool: true });
  if (!/^(?:stand|(?:allow|leave|let)\b)/.test(text)) return undefined;
  const time = timeIn(text);
  return time ? only({ stand: time }) : only({ stand: "" }, { questions: ["How long does it stand?"] });
};

/** Asked of a filtration until a later stretch says it. */
export const WHICH_KEPT = "Which is kept: the filtrate or the residue?";

const readFilter: Reader = (text) => {
  const kept = keptIn(text);
  if (/^(?:wash|rinse)\b/.test(text)) return only({ wash: true }, { keeps: "residue" });
  if (/^(?:collect|keep|use)\b/.test(text) && kept) return { ...nothing(), keeps: kept };
  if (!/^(?:filter|centrifuge|decant)\b/.test(text)) return undefined;
  return kept ? only({ filter: kept }) : only({ filter: "" }, { questions: [WHICH_KEPT] });
};

const readGas: Reader = (text) => {
  if (!/^(?:test|identify|confirm|pass|bubble|lead|hold|insert|dip|place|put|use|touch|carry out|do)\b/.test(text))
    return undefined;
  if (isLedThrough(text)) return only({ leadThrough: "limewater", ...(saysExcess(text) && { until: "in excess" }) });
  if (/\bflame\b/.test(text)) return undefined;
  if (isGasTest(text) || (/^hold\b/.test(text) && /\bpaper|\brod\b/.test(text))) return readGasTests(text);
  const indicator = indicatorIn(text);
  return indicator && only({ indicator });
};

/** "with a glowing splint and then with damp litmus paper": each way of testing is a line of the record. */
function readGasTests(text: string): ReadStretch {
  const read = nothing();
  for (const piece of text.split(/\b(?:and|then)\b/)) {
    const test = gasTestIn(piece);
    const first = read.steps.length === 0;
    if (test) read.steps.push({ step: { testGas: test }, ...(!first && { newLine: true }) });
    else if (/\blitmus/.test(piece)) {
      read.steps.push({ step: { testGas: "" }, ...(!first && { newLine: true }) });
      read.questions.push("Which litmus: red or blue?");
    }
  }
  return read.steps.length > 0 ? read : only({ testGas: "" }, { questions: ["With what is the gas tested?"] });
}

const readFlame: Reader = (text, words) =>
  FLAME.test(text)
    ? only({ flame: true }, { takes: { samples: lettersIn(words), solid: /\bsolid|\bcrystals/.test(text) } })
    : undefined;
const FLAME = /\bflame tests?\b|\b(?:into|in) (?:a|the) (?:roaring |blue |non-luminous |bunsen )*flame|\bflame colour/;

/** What is done to mix, and what is only looked at or written down. */
const readRest: Reader = (text, words, before) => {
  if (/^(?:\w+ly )?(?:shake|stir|mix|swirl)\b/.test(text))
    return after(readMixed(text, words, before), only({ shake: true }));
  if (/^(?:observe|note|record|describe|state|write|compare|look|identify|confirm|discard|until)\b/.test(text))
    return nothing();
  if (/^(?:\w+ly )?repeat\b/.test(text)) {
    return {
      ...nothing(),
      questions: ["A repetition is not read: enter the steps of the test it repeats, with what is changed."],
    };
  }
  if (/^(?:keep|use) (?:the|this|it)\b/.test(text)) return nothing();
  return undefined;
};

const READERS: readonly Reader[] = [readFlame, readGas, readTake, readAdd, readHeat, readWait, readFilter, readRest];
