/** How a gas, the liquid or a flame is tried. */
import { gasTestIn, indicatorIn, isGasTest, isLedThrough } from "./gas-words.ts";
import { amountOfSample, saysExcess } from "./how-much.ts";
import { nothing, only, type Reader, type ReadStretch, type SoFar } from "./stretch.ts";
import { lettersIn, SAMPLE, takeFirst } from "./which-sample.ts";

export const readGas: Reader = (text, words, before) => {
  if (
    !/^(?:test|testing|using|identify|confirm|pass|bubble|lead|hold|insert|dip|place|put|use|touch|carry out|do)\b/.test(
      text,
    )
  )
    return undefined;
  if (isLedThrough(text)) return only({ leadThrough: "limewater", ...(saysExcess(text) && { until: "in excess" }) });
  if (isLedIntoSample(text, words)) return ledIntoSample(words, before);
  if (/\bflame\b/.test(text)) return undefined;
  if (isGasTest(text) || (/^hold\b/.test(text) && /\bpaper|\brod\b/.test(text))) return readGasTests(text);
  const indicator = indicatorIn(text);
  return indicator && only({ indicator });
};

/** "Bubble chlorine through Q": a gas from outside, and no test of one. */
const isLedIntoSample = (text: string, words: string): boolean =>
  /^(?:pass|bubble|lead)\b.*\b(?:through|into)\b/.test(text) &&
  !/\blime ?water|calcium hydroxide/.test(text) &&
  (lettersIn(words).length > 0 || SAMPLE.test(text));

function ledIntoSample(words: string, before: SoFar): ReadStretch {
  const read = nothing();
  if (!before.taken)
    takeFirst(read, { amount: amountOfSample("", false), takes: { samples: lettersIn(words), solid: false } });
  read.steps.push({ step: { add: "" } });
  read.questions.push(
    "A gas is led into the sample here, which this bench cannot do: which reagent takes its place, such as chlorine water?",
  );
  return read;
}

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

export const readFlame: Reader = (text, words) =>
  FLAME.test(text)
    ? only({ flame: true }, { takes: { samples: lettersIn(words), solid: /\bsolid|\bcrystals/.test(text) } })
    : undefined;
const FLAME = /\bflame tests?\b|\b(?:into|in) (?:a|the) (?:roaring |blue |non-luminous |bunsen )*flame|\bflame colour/;
