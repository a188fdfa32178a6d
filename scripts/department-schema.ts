/** Writes `department/department.schema.json` anew, after a change to `src/build/department/schema.ts`. */
import { writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { departmentJsonSchema } from "../src/build/department/json-schema.ts";

writeFileSync(resolve(import.meta.dirname, "../department/department.schema.json"), departmentJsonSchema());
