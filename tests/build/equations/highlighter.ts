/** A highlighter with the site's own grammar, theme and transformers. */
import { createCssVariablesTheme, type LanguageRegistration } from "shiki";
import { createHighlighterCore } from "shiki/core";
import { createOnigurumaEngine } from "shiki/engine/oniguruma";
import { FENCES } from "../../../src/build/equations/fences.ts";

const theme = createCssVariablesTheme({ name: "css-variables", variablePrefix: "--astro-code-" });
const langs = FENCES.shikiConfig.langs as LanguageRegistration[];
const highlighter = await createHighlighterCore({
  themes: [theme],
  langs: [...langs, import("shiki/langs/json.mjs")],
  engine: createOnigurumaEngine(import("shiki/wasm")),
});

/** What a fence becomes on the page. */
export const fenceHtml = (code: string, lang = "equation"): string =>
  highlighter.codeToHtml(code, { lang, theme: theme.name as string, transformers: FENCES.shikiConfig.transformers });

/** The stretches of a line with their scopes, spaces left out; the ending "equation" is common to all. */
export const scopesOf = (line: string): [text: string, scope: string][] =>
  highlighter
    .codeToTokens(line, { lang: "equation", theme: theme.name as string, includeExplanation: "scopeName" })
    .tokens.flat()
    .flatMap(({ explanation = [] }) => explanation)
    .filter(({ content }) => content.trim() !== "")
    .map(({ content, scopes }) => [content, (scopes.at(-1)?.scopeName ?? "").replace(/\.equation$/, "")]);
