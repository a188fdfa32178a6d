/** The department's file as a JSON schema, from which editors complete its entries and mark what is wrong while it is written. */
import { z } from "zod";
import { departmentFile } from "./schema.ts";

/** What only our own reader can check, such as a unit, is any text here. */
export function departmentJsonSchema(): string {
  const schema = z.toJSONSchema(departmentFile, { io: "input", unrepresentable: "any" });
  return `${JSON.stringify({ title: "A department's site", ...schema }, null, 2)}\n`;
}
