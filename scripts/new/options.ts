/** What somebody says of a new practical on the command line, or all that is wrong with it. */
import { parseArgs } from "node:util";
import { STANDARD_TESTS } from "../../src/engine/constants/standard-tests.ts";

/** As typed; what is absent is asked for, or has its default. */
export interface Typed {
  name?: string;
  title?: string;
  summary?: string;
  level?: string;
  minutes?: string;
  order?: string;
  samples?: string;
  given?: string;
  concentration?: string;
  tests?: string;
  cations?: string;
  anions?: string;
  /** Beside the practicals that come with the course instead of the department's own. */
  course?: boolean;
}

export const TESTS = STANDARD_TESTS.map(({ id }) => id);

export const USAGE = `npm run new -- [--title "A tin from the quay store"] [--samples "Q=CuCl2*2H2O"] [--tests "sodium-hydroxide, halide"] ...

  Without flags it asks. It writes department/practicals/<name>.mdx and never writes over a file.

  --title           what the practical is called
  --samples         letters with their salts: "H=ZnCl2, K=CuSO4*5H2O"
  --tests           standard tests in their order, of: ${TESTS.join(", ")}
  --name            name of the file, for the address; made from the title when absent
  --given           solution (default), solid or both
  --concentration   of the solutions; "0.1 mol/dm3" when absent
  --cations, --anions   ions the paper offers: "Cu^2+, Zn^2+", or school (default), advanced, department
  --summary, --level, --minutes, --order   as the guide for course authors says; each has a default
  --course          write into src/content/practicals/ instead`;

const text = { type: "string" } as const;

export function readOptions(args: readonly string[]): { typed: Typed } | { fault: string } | "help" {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        name: text,
        title: text,
        summary: text,
        level: text,
        minutes: text,
        order: text,
        samples: text,
        given: text,
        concentration: text,
        tests: text,
        cations: text,
        anions: text,
        course: { type: "boolean" },
        help: { type: "boolean" },
      },
    });
    const { help, ...typed } = values;
    return help ? "help" : { typed };
  } catch (error) {
    // node:util words these itself, such as "Unknown option '--sample'".
    return { fault: `${(error as Error).message.split(". ")[0]}.` };
  }
}
