/**
 * Reads an amount as people write it ("1 cm3", "0.1 mol/dm3", "2 min") into the unit we keep. Without zod, so that a page can read what is
 * typed into it with the rule the schemas in quantity.ts use.
 */

/** How one kind of amount is written: accepted unit spellings, each with its factor to the unit we keep. */
export interface Kind {
  name: string;
  example: string;
  units: Record<string, number>;
  /** Largest sensible amount on a school bench, in the unit we keep; above it a slip of the pen is likelier than an intention. */
  largest: number;
}

export const VOLUME: Kind = {
  name: "a volume",
  example: "1 cm3",
  units: { cm3: 1, "cm^3": 1, "cm³": 1, ml: 1, mL: 1, dm3: 1000, "dm^3": 1000, "dm³": 1000 },
  largest: 10_000,
};
export const MASS: Kind = { name: "a mass", example: "0.2 g", units: { g: 1, mg: 0.001 }, largest: 1000 };
export const CONCENTRATION: Kind = {
  name: "a concentration",
  example: "0.1 mol/dm3",
  units: { "mol/dm3": 1, "mol/dm^3": 1, "mol/dm³": 1, "mol dm-3": 1, "mol dm^-3": 1, "mmol/dm3": 0.001 },
  largest: 20,
};
export const DURATION: Kind = {
  name: "a time",
  example: "2 min",
  units: { min: 1, s: 1 / 60, h: 60 },
  largest: 24 * 60,
};

/** Of a long text, this much is repeated in a fault. */
const QUOTED = 60;

/** Reads `text` as an amount of the given kind, in the unit we keep. Returns the fault in words when it cannot. */
export function readAmount(text: string, kind: Kind): number | { fault: string } {
  const match = /^(\d+(?:\.\d+)?|\.\d+) *(\S.*)?$/.exec(text.trim());
  const expected = `expected ${kind.name} such as "${kind.example}"`;
  if (!match) return { fault: `found ${describe(text)}, ${expected}` };
  const unit = match[2];
  if (unit === undefined) return { fault: `found "${text}" without a unit, ${expected}` };
  const factor = Object.hasOwn(kind.units, unit) ? kind.units[unit] : undefined;
  if (factor === undefined) return { fault: `found the unit "${unit}" in "${text}", ${expected}` };
  const amount = Number(match[1]) * factor;
  if (!(amount > 0)) return { fault: `found "${text}", expected more than nothing, such as "${kind.example}"` };
  if (amount > kind.largest) return { fault: `found "${text}", which is more than any school bench uses; ${expected}` };
  return amount;
}

/** Names any input in a few words for a fault: `the number 3`, `nothing`, `a list`. */
export function describe(input: unknown): string {
  if (input === undefined || input === null) return "nothing";
  if (Array.isArray(input)) return "a list";
  if (typeof input === "string") return input.length > QUOTED ? `"${input.slice(0, QUOTED)}…"` : `"${input}"`;
  if (typeof input === "number") return `the number ${input}`;
  if (typeof input === "boolean") return input ? "yes (true)" : "no (false)";
  return "a group of entries";
}
