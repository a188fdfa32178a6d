/**
 * The same number of plain pages in a general-purpose generator of documentation, Starlight, for comparison: installed by npm into the
 * temporary folder, and no dependency of ours. Each page has some 600 words, a table and a block of code.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Cost, measuredRun } from "./measured-run.ts";
import { short } from "./our-site.ts";

const PACKAGES = ["astro@7.3.5", "@astrojs/starlight"];

export async function installStarlight(folder: string): Promise<void> {
  mkdirSync(join(folder, "src/content/docs"), { recursive: true });
  writeFileSync(join(folder, "package.json"), '{ "private": true, "type": "module" }');
  await measuredRun("npm", ["install", "--no-audit", "--no-fund", "--loglevel=error", ...PACKAGES], folder);
  writeFileSync(
    join(folder, "astro.config.mjs"),
    `import starlight from "@astrojs/starlight";
export default { integrations: [starlight({ title: "Pages" })] };
`,
  );
  writeFileSync(
    join(folder, "src/content.config.ts"),
    `import { defineCollection } from "astro:content";
import { docsLoader } from "@astrojs/starlight/loaders";
import { docsSchema } from "@astrojs/starlight/schema";
export const collections = { docs: defineCollection({ loader: docsLoader(), schema: docsSchema() }) };
`,
  );
}

export async function runStarlight(folder: string, pages: number): Promise<{ pages: number; cold: Cost }> {
  for (let page = 0; page < pages; page++)
    writeFileSync(join(folder, "src/content/docs", `page-${page}.md`), plainPage(page));
  const cold = await measuredRun(process.execPath, ["node_modules/astro/bin/astro.mjs", "build"], folder, {
    ASTRO_TELEMETRY_DISABLED: "1",
  });
  return { pages, cold: short(cold) };
}

const SENTENCE =
  "A portion of the solution goes into a clean tube, and what is seen is written down before anything else is added.";

/** @param page makes each page's words its own */
function plainPage(page: number): string {
  const paragraph = (at: number) =>
    Array.from({ length: 5 }, (_, line) => `${SENTENCE} (${page}, ${at}, ${line})`).join(" ");
  return `---
title: Page ${page}
---

${Array.from({ length: 5 }, (_, at) => `## Part ${at}\n\n${paragraph(at)}`).join("\n\n")}

| what | seen |
| --- | --- |
| first | white ${page} |
| second | none |

\`\`\`js
const page = ${page};
\`\`\`
`;
}
