/** How much of something a clause says: "1 cm3", "a few drops", "a spatula measure", "in excess", "a depth of 1 cm". */
import { BENCH_PRACTICE } from "../../constants/bench-practice.ts";

/** What an amount was read as: an entry of a written step, and what was taken for granted. */
export interface Amount {
  entry: Readonly<Record<string, string | number>>;
  assumed?: string;
}

/** Drops where a paper does not count them. Common practice, no source. */
const A_FEW = 5;

const NUMBERS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  half: 0.5,
};
const WORD = Object.keys(NUMBERS).join("|");
const FIGURE = "\\d{1,4}(?:\\.\\d{1,4})?";
/** "1-2", "5 to 10", "about 3", "two". Of a range the greater is taken: it is what may be needed. */
const NUMBER = `(?:(?:${FIGURE}|${WORD}) ?(?:-|–|to|or) ?)?(${FIGURE}|${WORD})`;

const MEASURES = {
  volume: new RegExp(`(?<![\\w.])${NUMBER} ?(?:cm3|cm\\^3|ml|cc)(?!\\w)`),
  mass: new RegExp(`(?<![\\w.])${NUMBER} ?(g|mg|grams?)(?!\\w)`),
  drops: new RegExp(`(?<![\\w.])${NUMBER} ?(?:small )?drops?(?!\\w)(?! by)`),
  pieces: new RegExp(`(?<![\\w.])${NUMBER} ?(?:[a-z]{2,9} ){0,2}(?:pieces?|strips?|granules?|squares?)(?!\\w)`),
  depth: new RegExp(`(?<![\\w.])${NUMBER} ?cm(?:[- ]depth|[- ]deep)|depth of (?:about )?${NUMBER} ?cm(?!\\w)`),
};

/** "half a minute", "one and a half minutes", "a minute and a half" in figures. */
const inFigures = (text: string): string =>
  text
    .replace(new RegExp(`\\b(${FIGURE}|${WORD}) and a half\\b`, "g"), (_, figure) => String(figureOf(figure) + 0.5))
    .replace(/\ban? (minute|hour|second) and a half\b/g, "1.5 $1")
    .replace(/\bhalf (?:of )?an? /g, "0.5 ");

const figureOf = (text: string): number => NUMBERS[text] ?? Number(text);

function measured(text: string, kind: keyof typeof MEASURES): { value: number; unit?: string } | undefined {
  const found = MEASURES[kind].exec(inFigures(text));
  if (!found) return undefined;
  const [number, unit] = kind === "depth" ? [found[1] ?? found[2]] : [found[1], found[2]];
  return { value: figureOf(number), unit };
}

export const saysExcess = (text: string): boolean =>
  /\bexcess\b|until (?:there is |you see )?no (?:further|more) (?:change|reaction|precipitate|effervescence)|until nothing more/.test(
    text.replace(/\b(?:not|never|without|avoid(?:ing)?)\b[^,;]{0,40}?\bexcess\b/g, " "),
  );
export const saysDropwise = (text: string): boolean =>
  /\bdropwise\b|\bdrop[- ]by[- ]drop\b|\bdrops? at a time\b|\bslowly\b|\blittle at a time\b/.test(text);
/** "a few drops", "several drops", "some drops". */
const FEW_DROPS = /\b(?:a )?(?:few|several|some|couple of) drops\b/;

/** Of a liquid reagent; undefined where nothing is said. `sampleCm3`: what "an equal volume" means. */
export function amountOfLiquid(text: string, sampleCm3?: number): Amount | undefined {
  const drops = measured(text, "drops");
  if (drops) return { entry: { drops: Math.ceil(drops.value) } };
  if (FEW_DROPS.test(text)) return { entry: { drops: A_FEW }, assumed: `a few drops: ${A_FEW} are taken` };
  const volume = measured(text, "volume");
  if (volume) return { entry: { volume: `${volume.value} cm3` } };
  const depth = measured(text, "depth");
  if (depth) return { entry: { volume: `${depth.value} cm3` }, assumed: DEPTH };
  if (/\bequal (?:volume|amount)\b|\bsame volume\b/.test(text) && sampleCm3 !== undefined) {
    return {
      entry: { volume: `${sampleCm3} cm3` },
      assumed: `an equal volume: ${sampleCm3} cm3, as much as the sample`,
    };
  }
  if (saysDropwise(text)) return { entry: { drops: A_FEW }, assumed: `drop by drop: ${A_FEW} drops at first` };
  if (saysExcess(text)) return { entry: { until: "in excess" } };
  return undefined;
}

/** "and then a further 3 cm3", "then another 2 cm3", after the first amount of the same liquid. */
export function furtherAmounts(text: string): Amount[] {
  const [, ...pieces] = text.split(/,|\b(?:and|then|followed by)\b/).filter((piece) => isMeasured(piece));
  return pieces.flatMap((piece) => (/\bof\b/.test(piece) ? [] : (amountOfLiquid(piece) ?? [])));
}
const isMeasured = (text: string): boolean =>
  FEW_DROPS.test(text) || (["drops", "volume", "depth"] as const).some((kind) => measured(text, kind) !== undefined);

/** A test-tube of 16 mm holds 1 cm3 at a depth of 8.3 to 9.7 mm, for walls of 0.6 to 1.5 mm. */
const DEPTH = "a depth of 1 cm in a test-tube is about 1 cm3";

/** Of pieces of a solid reagent: foil, granules. */
export function amountOfPieces(text: string): Amount {
  const pieces = measured(text, "pieces");
  if (pieces) return { entry: { pieces: Math.ceil(pieces.value) } };
  return { entry: { pieces: 1 }, assumed: "one small piece is taken" };
}

const SPATULA = BENCH_PRACTICE.spatulaMeasure.value;
const TIP = BENCH_PRACTICE.spatulaTip.value;
const PORTION = BENCH_PRACTICE.portion.value;

/** Of a sample; where nothing is said, what is usually taken. `solid`: the clause speaks of a solid. */
export function amountOfSample(text: string, solid: boolean): Amount {
  const mass = measured(text, "mass");
  if (mass) return { entry: { take: `${mass.value} ${mass.unit === "mg" ? "mg" : "g"}` } };
  const volume = measured(text, "volume");
  if (volume && !solid) return { entry: { take: `${volume.value} cm3` } };
  const depth = measured(text, "depth");
  if (depth && !solid) return { entry: { take: `${depth.value} cm3` }, assumed: DEPTH };
  if (solid && /\bspatula|\bend of a spatula/.test(text)) {
    return { entry: { take: `${SPATULA} g` }, assumed: `a spatula measure: ${SPATULA} g` };
  }
  if (solid && /\bfew crystals|\bvery small|\btip of a spatula|\ba little\b|\btrace\b/.test(text)) {
    return { entry: { take: `${TIP} g` }, assumed: `a little of the solid: ${TIP} g` };
  }
  if (solid) return { entry: { take: `${SPATULA} g` }, assumed: `no mass is given: a spatula measure, ${SPATULA} g` };
  const drops = measured(text, "drops");
  if (drops) {
    const cm3 = Math.round(drops.value * BENCH_PRACTICE.drop.value * 100) / 100;
    return { entry: { take: `${cm3} cm3` }, assumed: `a drop is ${BENCH_PRACTICE.drop.value} cm3` };
  }
  return { entry: { take: `${PORTION} cm3` }, assumed: `no volume is given: ${PORTION} cm3 is taken` };
}

/** The strength of a reagent, where the clause states it. */
export function strengthIn(text: string): string | undefined {
  const found = /(\d{1,2}(?:\.\d{1,4})?) ?(?:mol ?(?:\/ ?dm3|dm-3|\/ ?l|l-1)|m(?![\w]))/.exec(text);
  return found ? `${found[1]} mol/dm3` : undefined;
}

/** How long, as a written step has it. */
export function timeIn(text: string): string | undefined {
  const found = new RegExp(`(?<![\\w.])${NUMBER} ?(minutes?|mins?|seconds?|secs?|s|hours?)(?!\\w)`).exec(
    inFigures(text),
  );
  if (!found) return /\ba few minutes\b/.test(text) ? "3 min" : undefined;
  const [value, unit] = [figureOf(found[1]), found[2].startsWith("s") ? "s" : found[2].startsWith("h") ? "h" : "min"];
  // Part of a minute or an hour in the smaller unit.
  if (unit === "s" || Number.isInteger(value)) return `${value} ${unit}`;
  return `${Math.round(value * 60)} ${unit === "h" ? "min" : "s"}`;
}
