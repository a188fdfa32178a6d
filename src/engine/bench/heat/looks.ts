/** The colour of what is left in a heated tube. */
import { COLOURS } from "../../constants/colours.ts";
import { MELTING_POINTS } from "../../constants/heating.ts";
import type { Colour } from "../../practical.ts";
import type { Course } from "./course.ts";
import { rowOf } from "./figures.ts";
import { solid } from "./reaction.ts";

/** A solid that heat leaves or meets, of which the constants do not know the colour. */
export class UnknownSolidError extends Error {
  readonly formula: string;

  constructor(formula: string) {
    super(
      `No colour for the solid "${formula}" after heating: the constants have no row for it. ` +
        "Add one to constants/thermochemistry/ with its source, or heat another solid.",
    );
    this.name = "UnknownSolidError";
    this.formula = formula;
  }
}

/** Colours of the solids left: of a mixture, the darkest shows, unless most of it is a melt that holds only a little else. */
export function looks({ left, looksLikeFirst }: Course, sample: number): { hot: Colour; cold: Colour } {
  const shown = looksLikeFirst ? left.slice(0, 1) : left;
  return {
    hot: darkest(shown.map((formula) => hotColour(formula, sample))),
    cold: darkest(shown.map(coldColour)),
  };
}

function coldColour(formula: string): Colour {
  const cold = rowOf(solid(formula))?.cold;
  if (cold === undefined) throw new UnknownSolidError(formula);
  return cold;
}

/** A white salt melts to a colourless liquid, unless its row knows better. */
function hotColour(formula: string, sample: number): Colour {
  const cold = coldColour(formula);
  const melted = (MELTING_POINTS[formula] ?? Number.POSITIVE_INFINITY) <= sample;
  return rowOf(solid(formula))?.hot ?? (melted && cold === "white" ? "colourless" : cold);
}

const darkest = (colours: readonly Colour[]): Colour =>
  colours.reduce((best, one) => (darkness(one) > darkness(best) ? one : best));

/** 0 for white and for clear liquids, up to 1 for black: from the paint of the colour list. */
function darkness(colour: Colour): number {
  if (colour === "colourless") return -1;
  const paint = COLOURS[colour].paint;
  const channel = (at: number): number => Number.parseInt(paint.slice(at, at + 2), 16) / 255;
  return 1 - (0.299 * channel(1) + 0.587 * channel(3) + 0.114 * channel(5));
}
