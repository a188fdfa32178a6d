import { expect, test } from "vitest";
import { toHtml, toUnicode } from "../../../src/engine/formula/typeset.ts";
import { equationToHtml } from "../../../src/engine/formula/typeset-equation.ts";

test.each([
  ["Cu^2+", "Cu²⁺", "Cu<sup>2+</sup>"],
  ["Cl-", "Cl⁻", "Cl<sup>−</sup>"],
  ["NH4+", "NH₄⁺", "NH<sub>4</sub><sup>+</sup>"],
  ["SO4^2-", "SO₄²⁻", "SO<sub>4</sub><sup>2−</sup>"],
  ["S2O3^2-", "S₂O₃²⁻", "S<sub>2</sub>O<sub>3</sub><sup>2−</sup>"],
  ["[Cu(NH3)4]^2+", "[Cu(NH₃)₄]²⁺", "[Cu(NH<sub>3</sub>)<sub>4</sub>]<sup>2+</sup>"],
  ["[Fe(CN)6]^3-(aq)", "[Fe(CN)₆]³⁻(aq)", "[Fe(CN)<sub>6</sub>]<sup>3−</sup>(aq)"],
  ["C12H22O11", "C₁₂H₂₂O₁₁", "C<sub>12</sub>H<sub>22</sub>O<sub>11</sub>"],
  ["CuSO4*5H2O", "CuSO₄·5H₂O", "CuSO<sub>4</sub>·5H<sub>2</sub>O"],
  ["CuSO4.5H2O", "CuSO₄·5H₂O", "CuSO<sub>4</sub>·5H<sub>2</sub>O"],
  ["MnSO4*H2O", "MnSO₄·H₂O", "MnSO<sub>4</sub>·H<sub>2</sub>O"],
  ["CaSO3*0.5H2O(s)", "CaSO₃·0.5H₂O(s)", "CaSO<sub>3</sub>·0.5H<sub>2</sub>O(s)"],
  ["KAl(SO4)2*12H2O", "KAl(SO₄)₂·12H₂O", "KAl(SO<sub>4</sub>)<sub>2</sub>·12H<sub>2</sub>O"],
  ["Al(OH)3(s, fresh)", "Al(OH)₃(s)", "Al(OH)<sub>3</sub>(s)"],
  ["e-", "e⁻", "e<sup>−</sup>"],
  ["Al", "Al", "Al"],
  ['<a title="&">', '<a title="&">', "&#60;a title=&#34;&#38;&#34;&#62;"],
])("%s", (text, unicode, html) => {
  expect(toUnicode(text)).toBe(unicode);
  expect(toHtml(text)).toBe(html);
});

test.each([
  ["Ag+ + 2 NH3 = [Ag(NH3)2]+", "Ag<sup>+</sup> + 2 NH<sub>3</sub> → [Ag(NH<sub>3</sub>)<sub>2</sub>]<sup>+</sup>"],
  ["Ag+(aq) + Cl-(aq) -> AgCl(s)", "Ag<sup>+</sup>(aq) + Cl<sup>−</sup>(aq) → AgCl(s)"],
  ["1/2 I2 + 0.5Br2 -> IBr", "1/2 I<sub>2</sub> + 0.5Br<sub>2</sub> → IBr"],
  [
    "Zn(OH)2(s, amorphous) + 2H+ = Zn^2+ + 2H2O(l)",
    "Zn(OH)<sub>2</sub>(s) + 2H<sup>+</sup> → Zn<sup>2+</sup> + 2H<sub>2</sub>O(l)",
  ],
])("the equation %s", (text, html) => {
  expect(equationToHtml(text)).toBe(html);
});
