/** The gases of a plan for a reader: one line where several tests could give the same gas from the same salts. */
interface Expected {
  /** Test, such as "a(ii)". */
  cell: string;
  gas: string;
  /** Salts it would come from. */
  from: readonly string[];
  /** What must stand ready. */
  have: string;
}

/** A line of the table: a gas, and every test that could give it from these salts. */
export type GasLine<One extends Expected> = Omit<One, "cell"> & { tests: string[] };

/** @returns lines in the order in which the gases first come up */
export function gasesTogether<One extends Expected>(gases: readonly One[]): GasLine<One>[] {
  const lines = new Map<string, GasLine<One>>();
  for (const { cell, ...rest } of gases) {
    const key = JSON.stringify([rest.gas, rest.from]);
    const line = lines.get(key) ?? { ...rest, tests: [] };
    lines.set(key, { ...line, tests: [...line.tests, cell] });
  }
  return [...lines.values()];
}
