/** What a cartridge holds, as plain lines of text. */
import type { ReadCartridge } from "../../src/build/cartridge/read-cartridge.ts";

/** @param notes lines for the end */
export function reportCartridge({ cartridge, besides }: ReadCartridge, notes: readonly string[] = []): string {
  const links = cartridge.units.flatMap((unit) => unit.links);
  const questions = cartridge.units.flatMap((unit) => unit.assessment?.questions ?? []);
  return [
    `${cartridge.title}: ${cartridge.units.length} folders, ${links.length} links, ${questions.length} questions.`,
    ...cartridge.units.flatMap((unit) => [
      "",
      unit.title,
      ...unit.links.map(({ title, url }) => `    ${title}: ${url}`),
      ...(unit.assessment
        ? [`    ${unit.assessment.title}: ${unit.assessment.questions.map(({ title }) => title).join("; ")}`]
        : []),
    ]),
    ...(besides.length > 0 ? ["", "Besides, not read here:", ...besides.map((line) => `    ${line}`)] : []),
    ...(notes.length > 0 ? ["", ...notes] : []),
  ].join("\n");
}
