/** A small sound practical as an author writes it, and the faults of one with a single entry changed. */
import { readPractical } from "../../../src/engine/practical/faults.ts";

// biome-ignore format: reads like the frontmatter it stands for
export const sound = () => ({
  title: "Two bottles",
  summary: "Two solutions, one test each.",
  level: "core",
  minutes: 20,
  order: 1,
  samples: [
    { label: "P", given: "solution", concentration: "0.1 mol/dm3", salt: "ZnSO4*7H2O" },
    { label: "Q", given: "solid", salt: "CaCO3" },
  ],
  paper: { cations: ["Zn^2+", "Ca^2+"], anions: ["SO4^2-", "CO3^2-"] },
  parts: [
    { label: "a", title: "Alkali", samples: ["P"], tests: [
      { steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }] },
      { steps: [{ add: "NaOH(aq)", until: "in excess" }] },
    ] },
    { label: "b", title: "Acid", samples: ["Q"], tests: [{ steps: [{ take: "0.1 g" }, { add: "HCl(aq)", volume: "2 cm3" }, { testGas: "limewater" }] }] },
  ],
  record: {
    P: { "a(i)": { precipitate: "white" }, "a(ii)": { fate: "dissolves" } },
    Q: { b: { effervescence: true, gas: "CO2" } },
  },
});

type Node = Record<string | number, unknown>;

/** The practical with `value` at the path; undefined takes the entry out. Own properties only, so that "__proto__" is an entry too. */
export function changed(path: readonly (string | number)[], value: unknown): unknown {
  const practical = sound();
  let at = practical as unknown as Node;
  for (const step of path.slice(0, -1)) at = at[step] as Node;
  const last = path[path.length - 1];
  if (value === undefined) delete at[last];
  else Object.defineProperty(at, last, { value, enumerable: true, configurable: true, writable: true });
  return practical;
}

/** The faults of any input, one a line: where, then what was found and expected. */
export function faultsOf(input: unknown): string {
  const read = readPractical(input);
  if (!("faults" in read)) return "no fault";
  return read.faults.map(({ path, message }) => `${path.join(" > ") || "(top)"}: ${message}`).join("\n");
}

/** The same for the sound practical with one entry changed. */
export const faultsWith = (path: readonly (string | number)[], value: unknown): string =>
  faultsOf(changed(path, value));
