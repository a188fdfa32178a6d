/** What is asked of the command on its line, or what is wrong with it. */
import { parseArgs } from "node:util";

export type Asked = { out: string } | { read: string };

export const USAGE = `npm run cartridge -- [--out course.imscc]
npm run cartridge -- --read course.imscc

  --out    where to write the cartridge; ionwright.imscc when absent
  --read   lists the links and questions of a cartridge, and what is wrong with it`;

const OUT = "ionwright.imscc";

export function readOptions(args: readonly string[]): { asked: Asked } | { fault: string } | "help" {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { out: { type: "string" }, read: { type: "string" }, help: { type: "boolean" } },
    });
    if (values.help) return "help";
    if (values.out === "" || values.read === "") return { fault: "Found no name of a file, expected one." };
    if (values.read === undefined) return { asked: { out: values.out ?? OUT } };
    if (values.out !== undefined) return { fault: "Found both --read and --out, expected one of them." };
    return { asked: { read: values.read } };
  } catch (error) {
    // node:util words these itself, such as "Unknown option '--output'".
    return { fault: `${(error as Error).message.split(". ")[0]}. Expected only --out or --read.` };
  }
}
