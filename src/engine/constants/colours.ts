/**
 * Colour names a record may use. `alsoCalled`: names that boards or textbooks credit for the same sight (the synonyms of the boards'
 * published notes, and common practice where no board says so). `paint`: a CSS colour for drawings, our own choice; the word always
 * stands beside it.
 */
interface ColourRow {
  alsoCalled: readonly string[];
  paint: string;
}

const rows = {
  colourless: { alsoCalled: [], paint: "#f4f8fa" },
  white: { alsoCalled: [], paint: "#ffffff" },
  "yellowish white": { alsoCalled: ["white", "pale yellow", "off-white", "cream"], paint: "#faf6dc" },
  "off-white": { alsoCalled: ["white", "cream"], paint: "#f3ecdc" },
  cream: { alsoCalled: ["pale yellow"], paint: "#f7edc8" },
  "pale yellow": { alsoCalled: ["yellow"], paint: "#f5ea9a" },
  yellow: { alsoCalled: [], paint: "#f2d93b" },
  "bright yellow": { alsoCalled: ["yellow"], paint: "#ffd800" },
  orange: { alsoCalled: [], paint: "#ef8a1d" },
  "yellow-brown": { alsoCalled: ["yellow", "brown", "orange"], paint: "#c9972e" },
  brown: { alsoCalled: ["dark brown"], paint: "#8a5a2b" },
  "dark brown": { alsoCalled: ["black"], paint: "#5b3a1b" },
  "red-brown": { alsoCalled: ["brown", "orange", "brick red"], paint: "#a2502a" },
  red: { alsoCalled: [], paint: "#c22f2f" },
  "blood-red": { alsoCalled: ["red"], paint: "#8e1018" },
  "brick red": { alsoCalled: ["orange-red"], paint: "#c4532d" },
  "orange-red": { alsoCalled: [], paint: "#d9542b" },
  crimson: { alsoCalled: ["red", "scarlet"], paint: "#b3123c" },
  "golden yellow": { alsoCalled: ["yellow"], paint: "#f0b90b" },
  "orange-yellow": { alsoCalled: ["yellow", "orange"], paint: "#f3a81c" },
  scarlet: { alsoCalled: ["red"], paint: "#d1281c" },
  "apple green": { alsoCalled: ["light green", "green"], paint: "#9bcf6a" },
  "pale purple": { alsoCalled: ["lilac"], paint: "#cdb4dc" },
  "pale blue-white": { alsoCalled: ["pale blue"], paint: "#dbe7f3" },
  lilac: { alsoCalled: ["violet", "purple"], paint: "#c3a1d6" },
  "pale violet": { alsoCalled: ["violet", "lilac"], paint: "#d9c9e8" },
  violet: { alsoCalled: [], paint: "#7b4aa5" },
  purple: { alsoCalled: ["violet"], paint: "#7a1f7f" },
  blue: { alsoCalled: [], paint: "#3f86d0" },
  "pale blue": { alsoCalled: ["blue", "light blue"], paint: "#bfdcf2" },
  "light blue": { alsoCalled: ["blue"], paint: "#9cc9ee" },
  "deep blue": { alsoCalled: ["dark blue", "blue"], paint: "#1f3fa8" },
  "dark blue": { alsoCalled: ["blue"], paint: "#1b2f7d" },
  "blue-black": { alsoCalled: ["dark blue", "black"], paint: "#161b3a" },
  "blue-green": { alsoCalled: ["green", "blue"], paint: "#3fa79a" },
  green: { alsoCalled: [], paint: "#4d9a52" },
  "pale green": { alsoCalled: ["green", "very pale green", "light green"], paint: "#cfe6cd" },
  "very pale green": { alsoCalled: ["colourless"], paint: "#e6f2e2" },
  "light green": { alsoCalled: ["green"], paint: "#a6d59c" },
  "dark green": { alsoCalled: ["green"], paint: "#2c6b3a" },
  "dirty green": { alsoCalled: ["green", "dark green", "pale green"], paint: "#6f8a5c" },
  "grey-green": { alsoCalled: ["green"], paint: "#8aa08a" },
  "yellow-green": { alsoCalled: ["green"], paint: "#a9c43a" },
  "very pale pink": { alsoCalled: ["colourless", "pink"], paint: "#fbeaee" },
  pink: { alsoCalled: [], paint: "#eea3b8" },
  grey: { alsoCalled: [], paint: "#9aa0a6" },
  "grey-black": { alsoCalled: ["black", "grey"], paint: "#3a3d42" },
  black: { alsoCalled: [], paint: "#22252a" },
} as const satisfies Record<string, ColourRow>;

export const COLOURS: { readonly [name in keyof typeof rows]: ColourRow } = rows;
