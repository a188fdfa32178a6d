// Reaches the browser with every island, so it stays at the level of one regular expression and imports nothing.

type Style = {
  readonly subscript: (digits: string) => string;
  readonly superscript: (charge: string) => string;
  readonly plain: (text: string) => string;
};

/** In order: a state with a form; water of crystallisation; a charge; any other number. No lookbehind: old tablets lack it. */
const PARTS = /\((s|l|g|aq), ?[^()]*\)|[*.]((?:\d+(?:\.\d+)?)?)(?=[A-Z([])|(\^\d*)?([+-])(?=$|[\s(])|(\d+)/g;

const MINUS = "\u2212";

const unicode: Style = {
  subscript: (digits) => digits.replace(/\d/g, (digit) => String.fromCharCode(0x2080 + Number(digit))),
  superscript: (charge) => charge.replace(/./g, (sign) => "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻"["0123456789+-".indexOf(sign)]),
  plain: (text) => text,
};

const html: Style = {
  subscript: (digits) => `<sub>${digits}</sub>`,
  superscript: (charge) => `<sup>${charge.replace("-", MINUS)}</sup>`,
  plain: (text) => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`),
};

/**
 * An mhchem formula with Unicode sub- and superscripts; the form of a solid is dropped: `(s, fresh)` becomes `(s)`.
 *
 * @example toUnicode("[Cu(NH3)4]^2+") // "[Cu(NH₃)₄]²⁺"
 */
export function toUnicode(formula: string): string {
  return typeset(formula, unicode);
}

/**
 * The same as HTML with `<sub>`, `<sup>` and a real minus sign; everything else is escaped.
 *
 * @example toHtml("SO4^2-") // "SO<sub>4</sub><sup>2−</sup>"
 */
export function toHtml(formula: string): string {
  return typeset(formula, html);
}

function typeset(formula: string, style: Style): string {
  let result = "";
  let done = 0;
  for (const match of formula.matchAll(PARTS)) {
    const [whole, state, hydrate, caret, sign, count] = match;
    const before = formula[match.index - 1] ?? " ";
    result += style.plain(formula.slice(done, match.index));
    if (state !== undefined) result += `(${state})`;
    else if (!/[\w)\]]/.test(before)) result += style.plain(whole);
    else if (hydrate !== undefined) result += `·${hydrate}`;
    else if (sign !== undefined) result += style.superscript((caret ?? "^").slice(1) + sign);
    else result += /\d/.test(before) ? count : style.subscript(count);
    done = match.index + whole.length;
  }
  return result + style.plain(formula.slice(done));
}
