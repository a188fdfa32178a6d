/** The collection of practicals for Astro: what the department shows, ours and its own, at the school's strengths. */
import type { Loader } from "astro/loaders";
import { glob } from "astro/loaders";
import { z } from "zod";
import { practical } from "../../engine/practical.ts";
import { patient } from "../pages/patient-loader.ts";
import { practicalName } from "../practical-paths.ts";
import { leftOut, practicalFolders } from "./course.ts";
import { department, departmentFolder } from "./department.ts";
import { houseOf } from "./key.ts";
import { atHouseStrengths, withHouseIons } from "./strengths.ts";

/** A practical as the department's pages show it. */
export const housePractical = z.preprocess(
  (data) => withHouseIons(data, department()),
  z.pipe(
    practical,
    z.transform((one: z.infer<typeof practical>) => ({ ...one, parts: atHouseStrengths(one.parts, department()) })),
  ),
);

export function practicalsLoader(): Loader {
  const root = departmentFolder()?.root;
  const out = root === undefined ? [] : leftOut(root);
  const files = patient(
    glob({
      base: ".",
      pattern: [...practicalFolders().map((folder) => `${folder}/**/*.mdx`), ...out.map((path) => `!${path}`)],
      generateId: ({ entry }) => practicalName(entry),
    }),
  );
  return {
    ...files,
    // An entry is read anew when its file changes; here also when the department does.
    load: (context) =>
      files.load({
        ...context,
        generateDigest: (data) => context.generateDigest(`${JSON.stringify(houseOf())}\0${data}`),
      }),
  };
}
