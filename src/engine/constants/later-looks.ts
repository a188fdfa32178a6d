/**
 * What an eye finds in minutes that no equilibrium knows: precipitates that change their look, metal on foil, and colours by another name.
 * Each is accepted beside what the constants give.
 */
import type { COLOURS } from "./colours.ts";

type Colour = keyof typeof COLOURS;

/** A precipitate that takes another colour while it stands between two tests, or is warmed. */
export interface LaterLook {
  id: string;
  solid: string;
  colour: Colour;
  name: string;
  source: string;
}

export const LATER_LOOKS: readonly LaterLook[] = [
  {
    id: "iron-hydroxide-browns",
    solid: "Fe(OH)2(s)",
    colour: "red-brown",
    name: "green iron(II) hydroxide turns brown at the surface in air, also between two tests",
    source: "boards' notes on iron(II) with sodium hydroxide: turns brown at the surface on standing in air",
  },
  {
    id: "manganese-hydroxide-browns",
    solid: "Mn(OH)2(s)",
    colour: "brown",
    name: "off-white manganese(II) hydroxide turns brown in air, also between two tests",
    source: "boards' notes and textbooks on manganese(II) with alkali: browning in air, rapidly; from memory",
  },
  {
    id: "manganese-carbonate-browns",
    solid: "MnCO3(s)",
    colour: "brown",
    name: "off-white manganese(II) carbonate turns brown in air, slowly",
    source: "textbooks' tables on manganese(II) with sodium carbonate: off-white, browns slowly",
  },
  {
    id: "cobalt-hydroxide-pink",
    solid: "Co(OH)2(s)",
    colour: "pink",
    name: "blue cobalt(II) hydroxide turns pink on standing, faster when warm",
    source: "Vogel, from memory: the blue precipitate turns pink on warming or standing",
  },
];

/** Metals that warm aluminium foil throws out of an alkaline mixture, with the looks of the deposit. `of`: their cation. */
export const FOIL_DEPOSITS: readonly { of: string; colours: readonly Colour[]; source: string }[] = [
  {
    of: "Pb^2+",
    colours: ["grey-black"],
    source: "displacement series of any school text: lead comes as a grey to black sponge; from memory",
  },
  {
    of: "Ag+",
    colours: ["grey-black"],
    source: "displacement series of any school text: silver comes as a grey to black powder; from memory",
  },
  {
    of: "Cu^2+",
    colours: ["red-brown", "black"],
    source: "displacement series of any school text: copper comes red-brown, or black where it is fine; from memory",
  },
];

/** Liquids that are called by another colour when they hold all the species `of`. */
export const ALSO_CALLED: readonly {
  of: readonly string[];
  seen: Colour;
  also: Colour;
  /** Only of a liquid with less than this absorbance. */
  below?: number;
  source: string;
}[] = [
  {
    of: ["Fe^3+", "[Fe(CN)6]^3-"],
    seen: "yellow",
    also: "brown",
    source:
      "textbooks on iron(III) with hexacyanoferrate(III): a brown solution and no precipitate (no constant is known for it)",
  },
  {
    of: ["Br2"],
    seen: "orange",
    also: "yellow",
    source: "textbooks on displacing bromine: a yellow to orange solution, by its strength; from memory",
  },
  {
    of: ["I3-"],
    seen: "brown",
    also: "yellow",
    below: 2,
    source:
      "textbooks on iodine in iodide: yellow when dilute, brown when strong; from memory. The absorbance is our choice",
  },
  {
    of: ["[Ni(NH3)6]^2+"],
    seen: "blue",
    also: "violet",
    source: "textbooks on nickel(II) in excess ammonia: blue to violet or lilac; from memory",
  },
];
