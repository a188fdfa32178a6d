/**
 * A department's colours, held against the grounds they stand on, in light and in dark. The ratio is that of WCAG 2.2 (success criterion
 * 1.4.3, and "relative luminance" in its definitions; read). Only colours written #rrggbb are reckoned with.
 */
import type { ContentFault } from "../../authoring/faults.ts";

const LEAST = { value: 4.5, source: "WCAG 2.2, 1.4.3: text" };
const TEXT = ["--ink", "--soft", "--fit", "--clash"];
const GROUNDS = ["--paper", "--sheet"];
const SCHEMES = ["light", "dark"] as const;
type Scheme = (typeof SCHEMES)[number];

interface Declared {
  name: string;
  colour: string;
  /** Of the sheet, from 0. */
  offset: number;
  /** It holds in the dark only; otherwise in both, unless that is said again for the dark. */
  dark: boolean;
}

/**
 * @param ours the course's own style sheet with the variables
 * @param theme the department's
 */
export function themeFaults(file: string, ours: string, theme: string): ContentFault[] {
  const own = declarations(theme);
  const all = [...declarations(ours), ...own];
  const seen = new Set<Declared>();
  return SCHEMES.flatMap((scheme) =>
    TEXT.flatMap((text) =>
      GROUNDS.flatMap((ground): ContentFault[] => {
        const [one, other] = [inScheme(all, text, scheme), inScheme(all, ground, scheme)];
        const blamed = [one, other].find((each) => each && own.includes(each));
        if (!one || !other || !blamed || seen.has(blamed)) return [];
        const ratio = contrast(one.colour, other.colour);
        if (ratio >= LEAST.value) return [];
        seen.add(blamed);
        return [
          {
            ...placeIn(file, theme, blamed.offset),
            what: `${text} on ${ground}, ${scheme}`,
            stated: `${one.colour} on ${other.colour}`,
            found: `a contrast of ${ratio.toFixed(1)} to 1, expected at least ${LEAST.value}`,
            advice: `choose another colour, and one of its own for each scheme: @media (prefers-color-scheme: dark)`,
          },
        ];
      }),
    ),
  );
}

/** The variables of `:root`; what stands in a block for the dark is marked. */
function declarations(css: string): Declared[] {
  const plain = css.replace(/\/\*[\s\S]*?\*\//g, (comment) => " ".repeat(comment.length));
  const dark = [...plain.matchAll(/@media[^{]*prefers-color-scheme:\s*dark[^{]*\{(?:[^{}]*\{[^{}]*\})*[^{}]*\}/g)].map(
    ({ index, 0: block }) => [index, index + block.length],
  );
  return [...plain.matchAll(/(--[\w-]+)\s*:\s*(#[0-9a-f]{6})\b/gi)].map(({ index, 1: name, 2: colour }) => ({
    name,
    colour: colour.toLowerCase(),
    offset: index,
    dark: dark.some(([from, to]) => index > from && index < to),
  }));
}

/** The declaration that holds: the last of those that apply. */
const inScheme = (all: readonly Declared[], name: string, scheme: Scheme): Declared | undefined =>
  all.findLast((one) => one.name === name && (scheme === "dark" || !one.dark));

function placeIn(file: string, text: string, offset: number) {
  const before = text.slice(0, offset).split("\n");
  const line = before.length;
  return { file, line, column: (before.at(-1) as string).length + 1, excerpt: text.split(/\r?\n/)[line - 1] };
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

export function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
