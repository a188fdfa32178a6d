/** What keeps one equation from being published: a formula that cannot be read, atoms or charge that do not agree, a state left out. */
import { type Equation, type Imbalance, imbalance, parseEquation } from "../../engine/formula/equation.ts";
import { FormulaError } from "../../engine/formula/parse.ts";
import type { StatedEquation } from "./find-equations.ts";
import type { PageFault } from "./page-fault.ts";

/** Arrows of other notations, and ours without its spaces. */
const OTHER_ARROW = /[<=-]*[=-]>|<[=-]+|[→⟶⇌⇄↔]/u;

/** All faults of an equation; empty when it may be printed. */
export function equationFaults({ text, offset, where }: StatedEquation): PageFault[] {
  const fault = (rest: Omit<PageFault, "what" | "stated" | "offset">, at = 0): PageFault => ({
    what: "equation",
    stated: text,
    ...rest,
    offset: offset + at,
  });
  if (text === "") {
    return [
      {
        what: "equation",
        offset,
        found: "a remark without an equation",
        advice: "put it behind an equation or into the text",
      },
    ];
  }
  let equation: Equation;
  try {
    equation = parseEquation(text);
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    return [unreadable(text, error, fault)];
  }
  const faults = where === "fence" ? stateless(equation).map(({ at, ...rest }) => fault(rest, at)) : [];
  const difference = imbalance(equation);
  const found = wordImbalance(difference);
  return found === "" ? faults : [fault({ found, advice: adviceOn(difference) }), ...faults];
}

function unreadable(
  text: string,
  { position, found, expected }: FormulaError,
  fault: (rest: Pick<PageFault, "found" | "advice">, at: number) => PageFault,
): PageFault {
  const arrow = / (?:->|=) /.test(text) ? null : OTHER_ARROW.exec(text);
  if (arrow !== null) {
    const at = `"${arrow[0]}" at character ${arrow.index + 1}`;
    const advice = 'write " -> "; that a reaction goes both ways is said in words';
    return fault({ found: `${at}, expected "->" with a space on either side`, advice }, arrow.index);
  }
  const rest = {
    found: `${found} at character ${position}, expected ${expected}`,
    advice: "correct the equation there",
  };
  return fault(rest, Math.min(position, text.length) - 1);
}

/**
 * What the right side has too much or too little of.
 *
 * @example wordImbalance({ elements: { O: 2 }, charge: -1 }) // "2 O more on the right, charge 1 less"
 */
export function wordImbalance({ elements, charge }: Imbalance): string {
  const atoms = Object.entries(elements).map(([symbol, n]) => ({ what: `${figure(n)} ${symbol}`, n }));
  const all = charge === 0 ? atoms : [...atoms, { what: `charge ${figure(charge)}`, n: charge }];
  return all
    .map(({ what, n }, index) => `${what} ${n > 0 ? "more" : "less"}${index === 0 ? " on the right" : ""}`)
    .join(", ");
}

function adviceOn({ elements, charge }: Imbalance): string {
  if (Object.keys(elements).length === 0)
    return "the atoms agree: correct the charge of an ion or the number of electrons";
  if (charge === 0) return "the charge agrees: correct a formula or a coefficient";
  return "correct a formula or a coefficient; atoms first, then the charge";
}

/** Fractions of an atom come from coefficients such as 1/3. */
const figure = (n: number): string => String(Number(Math.abs(n).toFixed(3)));

/** Every formula without a state, with its place in the equation, counted from 0. An electron has none. */
function stateless({ text, left, right }: Equation): (Pick<PageFault, "found" | "advice"> & { at: number })[] {
  let behind = 0;
  return [...left, ...right].flatMap(({ formula }) => {
    const at = text.indexOf(formula.text, behind);
    behind = at + formula.text.length;
    if (formula.state !== undefined || formula.text === "e-") return [];
    return [
      { at, found: `no state on ${formula.text}`, advice: "write (aq), (s), (l) or (g) right behind the formula" },
    ];
  });
}
