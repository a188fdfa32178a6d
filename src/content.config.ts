/** The collections of pages. A practical's frontmatter is a Practical: the engine's own schema reads it. */
import { defineCollection } from "astro:content";
import { file, glob } from "astro/loaders";
import { LANGUAGE } from "#words/language.ts";
import { projectRoot } from "./build/department/department.ts";
import { housePractical, practicalsLoader } from "./build/department/practicals-loader.ts";
import { patient } from "./build/pages/patient-loader.ts";
import { caution, ionNotes, ionTest, method, term } from "./build/pages/schemas.ts";
import { practicalPaths, translatedFolder } from "./build/practical-paths.ts";

/** The pages of a folder, in the language of the site where there is one: it has the name of ours. */
const pages = (folder: string) => {
  const translated = translatedFolder(LANGUAGE, folder);
  const names = practicalPaths(projectRoot(), translated).map((path) => path.slice(translated.length));
  const ours = `src/content/${folder}`;
  return patient(
    glob({
      base: ".",
      pattern: [`${ours}/**/*.mdx`, `${translated}/**/*.mdx`, ...names.map((name) => `!${ours}${name}`)],
      generateId: ({ entry }) =>
        entry.replace(`${entry.startsWith(translated) ? translated : ours}/`, "").replace(/\.mdx$/, ""),
    }),
  );
};

export const collections = {
  practicals: defineCollection({ loader: practicalsLoader(), schema: housePractical }),
  ionTests: defineCollection({ loader: pages("ion-tests"), schema: ionTest }),
  cautions: defineCollection({ loader: pages("cautions"), schema: caution }),
  ions: defineCollection({ loader: pages("ions"), schema: ionNotes }),
  method: defineCollection({ loader: pages("method"), schema: method }),
  glossary: defineCollection({ loader: file("./src/content/glossary.yaml"), schema: term }),
};
