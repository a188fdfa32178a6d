/** What earns credit in a practical: every line of the author's record, and the ions with the observations that prove them. */
import { provedFrom } from "#words/sheets.ts";
import type { SaltEntry } from "../engine/bench/prediction-table.ts";
import { proofOfIon } from "../engine/deduction/proof.ts";
import { ionName } from "../engine/formula/ion-name.ts";
import { creditsIn } from "../engine/wording/credit.ts";
import { entryNamed } from "./answer.ts";
import type { Walkthrough } from "./walkthrough.types.ts";

/** One line of the record for one sample. */
export interface MarkedLine {
  cell: string;
  sample: string;
  /** Each is one mark. */
  credits: string[];
  /** What else the true salt may show there, in words: the reading stands on a border. */
  instead: string[];
}

export interface Marks {
  lines: MarkedLine[];
  conclusions: { sample: string; ions: string[]; because: string }[];
  total: number;
}

export function marksOf({ table, record, answers, practical }: Walkthrough): Marks {
  const lines = table.cells.flatMap((cell, c) =>
    cell.samples.flatMap((sample): MarkedLine[] => {
      const reading = record[sample]?.[cell.id];
      if (reading === undefined) return [];
      const salt = entryNamed(table, answers[sample]);
      const mask = salt ? acceptedOf(table, sample, salt, c) : 0;
      return [
        {
          cell: cell.id,
          sample,
          credits: creditsIn(cell.readings[reading], cell.dry ? "solid" : "precipitate"),
          instead: cell.words.filter((_, r) => r !== reading && mask & (1 << r)),
        },
      ];
    }),
  );
  const conclusions = practical.samples.map(({ label }, s) => {
    const salt = entryNamed(table, answers[label]);
    const ions = (["cations", "anions"] as const).flatMap((kind) => (salt?.[kind] ?? []).map((ion) => ({ kind, ion })));
    const proofs = ions.flatMap(({ kind, ion }) => {
      const places = proofOfIon(table, record, s, kind, ion)?.places ?? [];
      const from = places.map((place) => (place.sample === label ? { cell: place.cell } : place));
      return from.length > 0 ? [provedFrom(ion, from)] : [];
    });
    return { sample: label, ions: ions.map(({ ion }) => `${ionName(ion)}, ${ion}`), because: proofs.join("; ") };
  });
  const marked = [...lines.map(({ credits }) => credits), ...conclusions.map(({ ions }) => ions)];
  return { lines, conclusions, total: marked.reduce((sum, { length }) => sum + length, 0) };
}

/** The readings the salt may show in a line, as bits. */
function acceptedOf(
  { samples, sets, salts }: Walkthrough["table"],
  label: string,
  salt: SaltEntry,
  cell: number,
): number {
  const set = sets[samples.find((sample) => sample.label === label)?.set ?? 0];
  return set.accepts[set.salts.indexOf(salts.indexOf(salt))]?.[cell] ?? 0;
}
