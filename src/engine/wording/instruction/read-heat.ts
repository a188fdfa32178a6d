/** What is warmed, boiled or heated dry. */
import { amountOfSample, timeIn } from "./how-much.ts";
import { readMixed } from "./read-mixed.ts";
import { after, only, type Reader } from "./stretch.ts";
import { takeFirst } from "./which-sample.ts";

/** Hot water that stands outside the tube. */
const BATH =
  /\b(?:in|on|over|using|with)? ?(?:a |the )?(?:hot |boiling |warm )?water[- ]?bath\b|\b(?:in|on) (?:a )?(?:beaker of |bath of )?(?:hot|warm|boiling) water\b/;

export const readHeat: Reader = (text, words, before) => {
  if (/\bflame test\b/.test(text)) return undefined;
  const verb = /^(?:\w+ly )?(boil|warm|heat)\b/.exec(text)?.[1];
  const boils =
    verb === "boil" || /\b(?:to|bring to) (?:the )?boil|to boiling|until it boils/.test(text.replace(DENIED, ""));
  if (!verb && !boils) return undefined;
  const inBath = BATH.test(text);
  const clause = text.replace(BATH, " ");
  const isDry = verb === "heat" && !inBath && !before.taken && /\bstrongly\b/.test(clause) && !WET.test(clause);
  const mixed = readMixed(clause, words, before, isDry);
  if (boils && !inBath) {
    const time = timeIn(text);
    return after(
      mixed,
      only({ boil: time ?? "1 min" }, time ? {} : { assumed: ["no time is given: boiled for 1 min"] }),
    );
  }
  const poured = mixed.steps.some(({ step }) => "add" in step);
  const dry = isDry || /\bsolid|\bcrystals|\bpowder|\bdry\b/.test(clause);
  const wet = mixed.takes ? !mixed.takes.solid : before.wet;
  if (verb !== "heat" || inBath || poured || (wet && !dry)) {
    const open = verb === "heat" && mixed.takes && !poured && !inBath && !WET.test(clause);
    return after(mixed, only({ warm: true }, open ? { questions: [SOLID_OR_SOLUTION] } : {}));
  }
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
/** A liquid is heated. */
const WET = /\bsolution|\bcm3\b|\bml\b|\bliquid|\bdrops\b/;
const SOLID_OR_SOLUTION = "What is heated here: the dry solid, or its solution?";
/** What must not happen. */
const DENIED = /\b(?:not|never|without|avoid\w*)\b.*/;
