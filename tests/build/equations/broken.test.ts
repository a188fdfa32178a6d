/** One broken page a fault, named by the fault; what an author is told of it. Imbalances are counted by hand. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { wordFault } from "../../../src/authoring/faults.ts";
import { checkEquations } from "../../../src/build/equations/check-equations.ts";

const FOLDER = join(import.meta.dirname, "broken");

const report = (name: string): string => {
  const faults = checkEquations(`${name}.mdx`, readFileSync(join(FOLDER, `${name}.mdx`), "utf8"));
  return `\n${faults.map(wordFault).join("\n\n")}\n`;
};

/** Every fixture is reported by a test below. */
const reported = new Set<string>();
const fault = (name: string, check: (words: string) => void) => {
  reported.add(`${name}.mdx`);
  test(name, () => check(report(name)));
};

fault("atoms-out-of-balance", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    atoms-out-of-balance.mdx:6:1  equation
      stated: NH4+(aq) + OH-(aq) -> NH3(g) + 2 H2O(l)
      found:  2 H more on the right, 1 O more
      to do:  the charge agrees: correct a formula or a coefficient
      6 | NH4+(aq) + OH-(aq) -> NH3(g) + 2 H2O(l) # warmed
        | ^
    "
  `);
});

fault("charge-out-of-balance", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    charge-out-of-balance.mdx:6:1  equation
      stated: Fe^3+(aq) -> Fe^2+(aq)
      found:  charge 1 less on the right
      to do:  the atoms agree: correct the charge of an ion or the number of electrons
      6 | Fe^3+(aq) -> Fe^2+(aq)
        | ^
    "
  `);
});

fault("atoms-and-charge-out-of-balance", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    atoms-and-charge-out-of-balance.mdx:6:1  equation
      stated: CO3^2-(aq) + H+(aq) -> CO2(g) + H2O(l)
      found:  1 H more on the right, charge 1 more
      to do:  correct a formula or a coefficient; atoms first, then the charge
      6 | CO3^2-(aq) + H+(aq) -> CO2(g) + H2O(l)
        | ^
    "
  `);
});

fault("fraction-out-of-balance", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    fraction-out-of-balance.mdx:6:1  equation
      stated: 1/2 O2(g) + H2(g) -> 1/3 H2O(l)
      found:  0.667 O less on the right, 1.333 H less
      to do:  the charge agrees: correct a formula or a coefficient
      6 | 1/2 O2(g) + H2(g) -> 1/3 H2O(l)
        | ^
    "
  `);
});

fault("states-left-out", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    states-left-out.mdx:6:1  equation
      stated: Zn^2+ + 2 OH-(aq) -> Zn(OH)2
      found:  no state on Zn^2+
      to do:  write (aq), (s), (l) or (g) right behind the formula
      6 | Zn^2+ + 2 OH-(aq) -> Zn(OH)2
        | ^

    states-left-out.mdx:6:22  equation
      stated: Zn^2+ + 2 OH-(aq) -> Zn(OH)2
      found:  no state on Zn(OH)2
      to do:  write (aq), (s), (l) or (g) right behind the formula
      6 | Zn^2+ + 2 OH-(aq) -> Zn(OH)2
        |                      ^
    "
  `);
});

fault("not-an-element", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    not-an-element.mdx:9:14  equation
      stated: Ag+(aq) + Cx-(aq) -> AgCx(s)
      found:  "Cx" at character 11, expected the symbol of an element
      to do:  correct the equation there
      9 |    Ag+(aq) + Cx-(aq) -> AgCx(s)
        |              ^
    "
  `);
});

fault("subscript-typed", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    subscript-typed.mdx:6:3  equation
      stated: CO₂(g) + H2O(l) -> H2CO3(aq)
      found:  "₂" at character 3, expected an element, a bracket, *, a charge such as ^2+, a state such as (aq), or the end
      to do:  correct the equation there
      6 | CO₂(g) + H2O(l) -> H2CO3(aq)
        |   ^
    "
  `);
});

fault("another-arrow", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    another-arrow.mdx:6:18  equation
      stated: NH3(aq) + H2O(l) <=> NH4+(aq) + OH-(aq)
      found:  "<=>" at character 18, expected "->" with a space on either side
      to do:  write " -> "; that a reaction goes both ways is said in words
      6 | NH3(aq) + H2O(l) <=> NH4+(aq) + OH-(aq)
        |                  ^
    "
  `);
});

fault("arrow-without-spaces", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    arrow-without-spaces.mdx:6:18  equation
      stated: Ag+(aq) + Cl-(aq)->AgCl(s)
      found:  "->" at character 18, expected "->" with a space on either side
      to do:  write " -> "; that a reaction goes both ways is said in words
      6 | Ag+(aq) + Cl-(aq)->AgCl(s)
        |                  ^
    "
  `);
});

fault("remark-alone", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    remark-alone.mdx:6:1  equation
      found:  a remark without an equation
      to do:  put it behind an equation or into the text
      6 | # in excess
        | ^
    "
  `);
});

fault("empty-fence", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    empty-fence.mdx:5:1  equation
      found:  an empty fence
      to do:  write one equation a line in it, or take it away
      5 | \`\`\`equation
        | ^
    "
  `);
});

fault("fence-word-misspelt", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    fence-word-misspelt.mdx:5:4  fence
      stated: Equations
      found:  a word that is not known, so the fence would be printed as it stands
      to do:  write equation after the backticks
      5 | \`\`\`Equations
        |    ^
    "
  `);
});

fault("sentence-out-of-balance", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    sentence-out-of-balance.mdx:5:24  equation
      stated: Ag+ + Cl- -> AgCl2(s)
      found:  1 Cl more on the right
      to do:  the charge agrees: correct a formula or a coefficient
      5 | At 20 °C <Equation of="Ag+ + Cl- -> AgCl2(s)" /> is seen, and <Equation
        |                        ^

    sentence-out-of-balance.mdx:6:8  equation
      stated: Pb^2+ + I- -> PbI2(s)
      found:  1 I more on the right, charge 1 less
      to do:  correct a formula or a coefficient; atoms first, then the charge
      6 |   of={"Pb^2+ + I- -> PbI2(s)"} /> as well.
        |        ^
    "
  `);
});

fault("equation-computed", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    equation-computed.mdx:7:1  equation
      found:  an Equation without an equation written out in it, so nobody could check it
      to do:  write <Equation of="Ag+ + Cl- -> AgCl(s)" /> with the equation itself between the quotes, outside braces
      7 | <Equation of={shown} /> and {shown && <Equation of="Ag+ + Cl- -> AgCl(s)" />} and <Equation />
        | ^

    equation-computed.mdx:7:29  equation
      found:  an Equation without an equation written out in it, so nobody could check it
      to do:  write <Equation of="Ag+ + Cl- -> AgCl(s)" /> with the equation itself between the quotes, outside braces
      7 | <Equation of={shown} /> and {shown && <Equation of="Ag+ + Cl- -> AgCl(s)" />} and <Equation />
        |                             ^

    equation-computed.mdx:7:83  equation
      found:  an Equation without an equation written out in it, so nobody could check it
      to do:  write <Equation of="Ag+ + Cl- -> AgCl(s)" /> with the equation itself between the quotes, outside braces
      7 | <Equation of={shown} /> and {shown && <Equation of="Ag+ + Cl- -> AgCl(s)" />} and <Equation />
        |                                                                                   ^
    "
  `);
});

fault("tag-never-closed", (words) => {
  expect(words).toMatchInlineSnapshot(`
    "
    tag-never-closed.mdx:5:1  the page is not MDX
      found:  Expected a closing tag for \`<Equation>\` (5:1)
      to do:  check tags, braces and less-than signs at this place
      5 | <Equation of="Ag+ + Cl- -> AgCl(s)">
        | ^
    "
  `);
});

test("every broken page stands here", () => {
  expect([...reported].sort()).toEqual(readdirSync(FOLDER).sort());
});
