/** An integer programme of variables nought or one, put together row by row and written in the CPLEX LP format. */

/** A sum: how often each variable is counted; without a name, a number. */
export type Sum = readonly (readonly [times: number, variable?: string])[];

export const times = (sum: Sum, count: number): Sum => sum.map(([one, variable]) => [one * count, variable]);

export class Programme {
  readonly #rows: string[] = [];
  readonly #variables = new Set<string>();

  /** The row `left relation right`. A row without a variable must be true by itself: it is kept as one that says so or cannot be met. */
  row(left: Sum, relation: "<=" | "=", right: Sum): void {
    const counted = new Map<string, number>();
    let constant = 0;
    for (const [count, variable] of [...left, ...times(right, -1)]) {
      if (variable === undefined) constant += count;
      else counted.set(variable, (counted.get(variable) ?? 0) + count);
    }
    const terms = [...counted].filter(([, count]) => count !== 0);
    if (terms.length === 0) {
      if (relation === "=" ? constant !== 0 : constant > 0) this.#rows.push(`never >= 2`);
      return;
    }
    for (const [variable] of terms) this.#variables.add(variable);
    const sum = terms.map(([variable, count]) => `${count < 0 ? "-" : "+"} ${Math.abs(count)} ${variable}`).join(" ");
    this.#rows.push(`${sum} ${relation} ${-constant}`);
  }

  /** The question whether all rows can be met at once. */
  text(): string {
    return [
      "Minimize",
      " obj: 0 never",
      "Subject To",
      ...this.#rows.map((row, r) => ` r${r}: ${row}`),
      "Binary",
      ...["never", ...this.#variables].map((variable) => ` ${variable}`),
      "End",
    ].join("\n");
  }
}
