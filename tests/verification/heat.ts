/**
 * The published heating rows against the engine. A row describes the whole course, so the sample is heated gently and strongly:
 * - cold: the residue after strong heating must have a colour of the row's cold words;
 * - hot: the residue while hot after strong heating must have the row's colour; where the row names several ("off-white then
 *   red-brown"), the residue after gentle or after strong heating must have one of them; where nothing is left, the vapour counts;
 * - "melts": a melt is seen; "no residue", "little residue": nothing is left; a sublimate has the colour named;
 * - gases: each gas the row names must come, and none that it does not name.
 * A row that says "not in class" must be refused; its chemistry is compared all the same.
 */
import { type HeatOutcome, heatRegardless, heatSolid } from "../../src/engine/bench/heat/heat-solid.ts";
import { COLOURS } from "../../src/engine/constants/colours.ts";
import { type Colour, sameColour } from "../../src/engine/practical.ts";
import { type Comparison, comparison } from "./comparison.ts";
import { coloursIn, gasesOfRow, solidsOf } from "./heat-words.ts";
import { colourSynonyms, type PublishedRow, publishedRows } from "./qualitative-rows.ts";
import { reference } from "./reference.ts";

/** Reasons for the rows of this section that disagree. */
export const heatDifferences = reference<Record<string, string>>("known-differences-heat.json");

interface Heated {
  gently: HeatOutcome;
  strongly: HeatOutcome;
}

/** Compares every row of section "heat". */
export function compareHeat(): Comparison {
  const result = comparison(
    "published table, heat",
    "tests/reference/qualitative-tables.json (boards' published notes and textbooks)",
  );
  for (const row of publishedRows.filter(({ section }) => section === "heat")) {
    const solids = solidsOf(row);
    if (solids.length === 0) {
      result.left["solid not read"] = (result.left["solid not read"] ?? 0) + 1;
      continue;
    }
    result.compared++;
    const differences = solids.flatMap((formula) => differencesOf(row, formula));
    if (differences.length === 0) {
      result.agreed++;
      continue;
    }
    const reason = heatDifferences[row.id];
    result.misses.push({ id: row.id, difference: differences.join("; "), ...(reason === undefined ? {} : { reason }) });
  }
  return result;
}

function differencesOf(row: PublishedRow, formula: string): string[] {
  const heated = { gently: heatRegardless(formula, "gently"), strongly: heatRegardless(formula, "strongly") };
  const { colour: hot, resultingColour: cold, notes } = row.observation;
  const found: string[] = [];
  const expect = (agrees: boolean, what: string, published: string, predicted: string) => {
    if (!agrees) found.push(`${formula}, ${what}: published ${published}; predicted ${predicted}`);
  };
  expect(hotAgrees(hot ?? "", heated), "hot", String(hot), wordHot(heated));
  expect(
    coldAgrees(cold ?? "", heated.strongly),
    "cold",
    String(cold),
    heated.strongly.residue?.cold ?? "nothing left",
  );
  const { must, may } = gasesOfRow(row);
  const given = [...heated.strongly.gases, ...heated.strongly.otherGases];
  const gasesAgree = must.every((gas) => given.includes(gas as never)) && given.every((gas) => may.includes(gas));
  expect(gasesAgree, "gases", String(row.observation.gas), given.join(", ") || "none");
  if (/not? (for|heat in) class/i.test(notes ?? "")) {
    const refused = heatSolid(formula, "gently").refused !== undefined;
    expect(refused, "in class", notes ?? "", "not refused");
  }
  return found;
}

function hotAgrees(published: string, { gently, strongly }: Heated): boolean {
  if (published.includes("no residue")) return strongly.residue === null;
  const words = coloursIn(published);
  if (words.length === 0) return gently.melts || strongly.melts;
  const last = strongly.residue === null ? strongly.vapours : [strongly.residue.hot];
  const seen = words.length > 1 ? [...last, gently.residue?.hot] : last;
  return seen.some((colour) => colour !== undefined && words.some((word) => colourAgrees(word, colour)));
}

function coldAgrees(published: string, { residue, sublimate }: HeatOutcome): boolean {
  if (/no residue|little residue/.test(published)) return residue === null;
  const seen = residue === null || published.includes("cool wall") ? sublimate?.colour : residue.cold;
  return seen !== undefined && coloursIn(published).some((word) => colourAgrees(word, seen));
}

/** True when the published word and ours are the same, or the table or our colour list calls them the same. */
function colourAgrees(wanted: string, seen: Colour): boolean {
  const listed = (word: string) => [word, ...(colourSynonyms[word] ?? [])];
  if (listed(wanted).includes(seen) || listed(seen).includes(wanted)) return true;
  return Object.hasOwn(COLOURS, wanted) && sameColour(wanted as Colour, seen);
}

const wordHot = ({ gently, strongly }: Heated): string =>
  `${gently.residue?.hot ?? "nothing left"} gently, ${strongly.residue?.hot ?? "nothing left"} strongly`;
