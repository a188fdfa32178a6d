/**
 * A formula or equation that cannot be read. `position` counts characters from 1; a fault at the end of the text has
 * `position = text.length + 1`.
 */
export class FormulaError extends Error {
  readonly text: string;
  readonly position: number;
  readonly found: string;
  readonly expected: string;

  constructor(text: string, position: number, found: string, expected: string) {
    super(`Cannot read "${text}": found ${found} at character ${position}, expected ${expected}.`);
    this.name = "FormulaError";
    this.text = text;
    this.position = position;
    this.found = found;
    this.expected = expected;
  }
}
