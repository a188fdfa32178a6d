/** The collections of pages. A practical's frontmatter is a Practical: the engine's own schema reads it. */
import { defineCollection } from "astro:content";
import { file, glob } from "astro/loaders";
import { housePractical, practicalsLoader } from "./build/department/practicals-loader.ts";
import { patient } from "./build/pages/patient-loader.ts";
import { caution, ionNotes, ionTest, method, term } from "./build/pages/schemas.ts";

const pages = (folder: string) => patient(glob({ pattern: "**/*.mdx", base: `./src/content/${folder}` }));

export const collections = {
  practicals: defineCollection({ loader: practicalsLoader(), schema: housePractical }),
  ionTests: defineCollection({ loader: pages("ion-tests"), schema: ionTest }),
  cautions: defineCollection({ loader: pages("cautions"), schema: caution }),
  ions: defineCollection({ loader: pages("ions"), schema: ionNotes }),
  method: defineCollection({ loader: pages("method"), schema: method }),
  glossary: defineCollection({ loader: file("./src/content/glossary.yaml"), schema: term }),
};
