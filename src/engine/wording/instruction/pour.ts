/** The reagents of a clause, each poured as much as is said, or asked about. */
import { strangeName, strangersIn } from "./beside.ts";
import { type Amount, amountOfLiquid, amountOfPieces, furtherAmounts, saysExcess, strengthIn } from "./how-much.ts";
import { KINDS, nameOfReagent, reagentsIn } from "./reagent-names.ts";
import { nothing, type ReadStretch, type SoFar } from "./stretch.ts";

/** Every reagent of a clause, in its order, and a question for every thing beside them that is none of the bench. */
export function pourAll(
  read: ReadStretch,
  text: string,
  { sampleCm3 }: Pick<SoFar, "sampleCm3">,
  acidify = false,
): void {
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
  const [, other] = /\band (?:[\d.]+ (?:cm3|ml|g|drops?)|a spatula \w+) of ([a-z]\d?)(?=$|[ ,])/.exec(text) ?? [];
  if (other) read.questions.push(`Is ${other.toUpperCase()} added here as well? A tube begins with one sample.`);
  for (const stranger of strangersIn(text.replace(/\buntil\b.*/, ""), found)) {
    read.steps.push({ step: { add: "" } });
    read.questions.push(noBottle(stranger));
  }
}

/** One reagent into the tube; what is added further, and an excess, are lines of the record of their own. */
export function pour(read: ReadStretch, id: string, amount: Amount | undefined, stretch: string): void {
  const at = strengthIn(stretch);
  const add = (entry: Amount["entry"], newLine?: true) =>
    read.steps.push({ step: { add: id, ...entry, ...(at && { at }) }, ...(newLine && { newLine }) });
  if (amount?.assumed) read.assumed.push(amount.assumed);
  add(amount?.entry ?? {});
  if (!amount) read.questions.push(`How much ${nameOfReagent(id)}: some drops, a volume, or in excess?`);
  if (id.endsWith("(s)")) return;
  for (const further of furtherAmounts(stretch)) {
    add(further.entry, true);
    if (further.assumed) read.assumed.push(further.assumed);
  }
  if (amount && !("until" in amount.entry) && saysExcess(stretch)) add({ until: "in excess" }, true);
}

/** "Acidify with dilute nitric acid" asks for enough; this much is enough for the samples of a school bench. Common practice, no source. */
const toAcidify = (id: string): Amount | undefined =>
  /^(?:HNO3|HCl|H2SO4|CH3COOH)\(/.test(id)
    ? { entry: { volume: "1 cm3" }, assumed: "to acidify: 1 cm3 of the acid" }
    : undefined;

/** What is added has no name that the bench knows: an open step, and the question which reagent it is. */
export function unknownReagent(text: string, words: string, read: ReadStretch = nothing()): Partial<ReadStretch> {
  return {
    steps: [...read.steps, { step: { add: "" } }],
    questions: [...read.questions, whichReagent(text, words)],
  };
}

function whichReagent(text: string, words: string): string {
  const kind = KINDS.find(([word]) => new RegExp(`\\b${word}\\b`).test(text));
  if (kind) return kind[1];
  return noBottle(words.replace(/^\s*(?:\w+ly )?add\s+/i, ""));
}
const noBottle = (name: string) => `Which reagent is meant by "${name}"? There is none of that name on this bench.`;
