import { type Arrow, importsOf } from "./imports-of.ts";
import type { SourceFiles } from "./source-files.ts";

/**
 * The engine's rooms from left to right, each with the rooms it may build on. Arrows point left only; formulas and
 * constants stand side by side, since a molar mass needs the table of atomic weights.
 */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  formula: ["constants"],
  constants: ["formula"],
  practical: ["formula", "constants"],
  equilibrium: ["formula", "constants", "practical"],
  bench: ["formula", "constants", "practical", "equilibrium"],
  wording: ["formula", "constants", "practical", "equilibrium", "bench"],
  deduction: ["formula", "constants", "practical", "equilibrium", "bench", "wording"],
  planning: ["formula", "constants", "practical", "equilibrium", "bench", "wording", "deduction"],
};

/**
 * What a component may run of the engine: nothing that predicts. Typesetting a formula, checking an entry and showing a
 * constant, such as a tube's size or a reagent's name, predict nothing.
 */
const FOR_COMPONENTS = ["deduction", "planning", "wording", "practical", "formula", "constants"];

/** The engine validates with the small form of zod, for it comes along into the browser, and depends on nothing else. */
const ENGINE_PACKAGES = ["zod/mini"];

/** A worker is where a component hands the chemistry over to the engine. */
const isWorker = (path: string): boolean => /\.worker\.ts$/.test(path);

/** The room of the engine a path lies in; `index` for the engine's public face. */
function roomOf(path: string): string | undefined {
  const inner = path.match(/^src\/engine\/(.+)$/)?.[1];
  return inner?.split("/")[0].replace(/\.ts$/, "");
}

/** How a page, and the engine, take what they say: of one language, which the build chooses. */
const WORDS = "#words/";

const areaOf = (path: string): string => path.split("/")[1];

/** Sentences on every import that points the wrong way, each beginning with file:line. */
export function wrongArrows(files: SourceFiles): string[] {
  return [...files].flatMap(([path, text]) =>
    importsOf(path, text).flatMap((arrow) => {
      const fault = faultOf(path, arrow);
      return fault === undefined ? [] : [`${path}:${arrow.line}: imports ${arrow.specifier}. ${fault}`];
    }),
  );
}

function faultOf(path: string, arrow: Arrow): string | undefined {
  const area = areaOf(path);
  if (arrow.target.startsWith("src/pages/")) return "Pages stand at the end; nothing imports from them.";
  if (area === "words") return wordsFault(path, arrow);
  if (/^src\/words\/(?!tags\.ts)/.test(arrow.target)) {
    return `Words come by their room, "${WORDS}record.ts": a path would bring one language into the pages of every other.`;
  }
  if (area === "engine") return engineFault(path, arrow);
  if (area === "components") return componentFault(path, arrow);
  if (area === "authoring") return authoringFault(arrow);
  return undefined;
}

/** The catalogue says and does nothing else; types of the engine tell what it must have a word for. */
function wordsFault(path: string, { target, typeOnly }: Arrow): string | undefined {
  if (target.startsWith("src/engine/") && typeOnly) return undefined;
  if (!target.startsWith("src/words/"))
    return "Words stand by themselves: they take only types, and those of the engine.";
  const language = (one: string) => one.match(/^src\/words\/([^/]+)\//)?.[1];
  const [own, other] = [language(path), language(target)];
  if (own === undefined || other === undefined || own === other) return undefined;
  return `A language takes no words of another: "${own}" imports "${other}".`;
}

function engineFault(path: string, { specifier, target }: Arrow): string | undefined {
  if (specifier.startsWith(WORDS)) return undefined;
  if (!specifier.startsWith(".")) {
    if (ENGINE_PACKAGES.includes(target)) return undefined;
    return `The engine is pure and takes only ${ENGINE_PACKAGES.join(", ")} from outside.`;
  }
  const from = roomOf(path);
  const to = roomOf(target);
  if (to === undefined) return "The engine knows nothing of the site around it; move what it needs into the engine.";
  if (from === undefined || from === "index" || from === to) return undefined;
  const allowed = MAY_IMPORT[from];
  if (allowed === undefined) return `The room "${from}" is not in the order of rooms; give it a place there.`;
  if (allowed.includes(to)) return undefined;
  return `Arrows in the engine point left: "${from}" may use ${allowed.join(", ") || "no other room"}, not "${to}".`;
}

/** Reading what authors write serves the build and the page alike, and knows neither. */
function authoringFault({ target }: Arrow): string | undefined {
  return /^src\/(?:build|components|content|layouts)\//.test(target)
    ? "The room that reads what authors write stands below the build and the pages."
    : undefined;
}

/** What runs in a browser; an `.astro` part runs at build. */
const isScript = (path: string): boolean => /\.tsx?$/.test(path);

function componentFault(path: string, { target, typeOnly }: Arrow): string | undefined {
  if (target.startsWith("src/build/") && isScript(path) && !typeOnly) {
    return "A script of a page takes only types from the build; what both need belongs into the engine or another room.";
  }
  const room = roomOf(target);
  if (room === undefined || typeOnly || isWorker(path) || FOR_COMPONENTS.includes(room)) return undefined;
  return `Components compute no chemistry: they may run ${FOR_COMPONENTS.join(", ")} of the engine, not "${room}".`;
}
