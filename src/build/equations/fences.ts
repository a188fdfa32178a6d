/** How fenced blocks of a page are highlighted: equations as chemistry, anything else as code with classes. */
import type { MdxOptions } from "@astrojs/mdx";
import type { LanguageRegistration, ShikiTransformer } from "shiki";
import grammar from "./equation.tmLanguage.json" with { type: "json" };
import { equationBlock } from "./equation-block.ts";

/** The word after the three backticks. */
export const EQUATION = "equation";

const equations: ShikiTransformer = {
  name: "equations",
  preprocess(_code, options) {
    if (options.lang !== EQUATION) return;
    options.includeExplanation = "scopeName";
    options.mergeWhitespaces = false;
  },
  root(root) {
    if (this.options.lang === EQUATION) root.children = [equationBlock(this.tokens)];
  },
};

/** `color:var(--astro-code-token-comment)` -> `token-comment`: the site's policy blocks style attributes. */
const classesForStyles: ShikiTransformer = {
  name: "classes-for-styles",
  tokens(lines) {
    for (const token of lines.flat()) {
      const kind = /--astro-code-(token-[a-z-]+)/.exec(token.color ?? "")?.[1];
      token.color = undefined;
      token.fontStyle = undefined;
      if (kind !== undefined) token.htmlAttrs = { ...token.htmlAttrs, class: kind };
    }
  },
  pre(node) {
    delete node.properties.style;
  },
};

/**
 * Settings of the MDX integration. They stand there and not in Astro's own `markdown`, where Shiki beside a content
 * security policy brings a warning of style attributes at every build; ours writes none.
 */
export const FENCES: Pick<MdxOptions, "syntaxHighlight" | "shikiConfig"> = {
  syntaxHighlight: "shiki",
  shikiConfig: {
    langs: [grammar as LanguageRegistration],
    theme: "css-variables",
    wrap: null,
    transformers: [classesForStyles, equations],
  },
};
