import { describe, expect, test } from "vitest";
import { finished } from "../../scripts/finish-pages.ts";
import { scriptHash } from "../../src/build/hosting/script-hash.ts";

// A script and its hash as the Content Security Policy specification (W3C) gives them for an example.
const SCRIPT = "alert('Hello, world.');";
const ITS_HASH = "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='";
const OF_ANOTHER = "'sha256-zoAW/Degp1vCOwqp9UhWdbeBqDkJCVlsYbXAfPSVhAQ='";

describe("a finished page", () => {
  test("allows the scripts inside it and no other", () => {
    const page = (hashes: string) =>
      `<meta http-equiv="content-security-policy" content="script-src 'self' ${hashes}; style-src 'self'"><script>${SCRIPT}</script>`;
    expect(finished(page(`${OF_ANOTHER} ${ITS_HASH}`))).toBe(page(ITS_HASH));
  });

  test("allows the styles inside it and no other", () => {
    const page = (hashes: string) =>
      `<meta http-equiv="content-security-policy" content="style-src 'self'${hashes};"><style>${SCRIPT}</style>`;
    expect(finished(page(` ${ITS_HASH} ${OF_ANOTHER}`))).toBe(page(` ${ITS_HASH}`));
  });

  test("holds scripts that follow each other as one, allowed by its own hash", () => {
    const page = (hashes: string[], scripts: string[]) =>
      `<meta http-equiv="content-security-policy" content="script-src 'self'${hashes.map((hash) => ` '${hash}'`).join("")}">` +
      scripts.map((script) => `<script>${script}</script>`).join("");
    const all = ["a()", "if (b < c) d()", "e()"];
    const one = all.join("\n");
    expect(finished(page(all.map(scriptHash), all))).toBe(page([scriptHash(one)], [one]));
  });

  test("leaves a script with a mark of its own where it stands", () => {
    const page = "<script data-early>a()</script><script>b()</script>";
    expect(finished(page)).toBe(page);
  });

  test("quotes what an island starts from without escapes, unless an apostrophe stands in it", () => {
    const island = (props: string) => `<astro-island props=${props} ssr></astro-island>`;
    expect(finished(island('"{&quot;a&quot;:[0,&quot;x &amp; y&quot;]}"'))).toBe(island(`'{"a":[0,"x &amp; y"]}'`));
    const kept = island(`"{&quot;a&quot;:[0,&quot;it's&quot;]}"`);
    expect(finished(kept)).toBe(kept);
    expect(finished('<p title="&quot;">="&quot;"</p>')).toBe('<p title="&quot;">="&quot;"</p>');
  });

  test("leaves what the site's style sheet says to that sheet", () => {
    const css = "astro-island,astro-slot,astro-static-slot{display:contents}";
    const policy = (styles: string) =>
      `<meta http-equiv="content-security-policy" content="style-src 'self'${styles};">`;
    expect(finished(`${policy(` '${scriptHash(css)}'`)}<style>${css}</style>`)).toBe(policy(""));
  });

  test("carries no marks for the search index", () => {
    expect(
      finished(
        '<main id="content" data-pagefind-body data-facets="kind:ion|ion:Na+"><p data-pagefind-ignore class="soft">x</p></main>',
      ),
    ).toBe('<main id="content"><p class="soft">x</p></main>');
  });

  test("keeps every word and every other attribute", () => {
    const page = '<p data-head="a(i)">The attribute data-facets="ion:Na+" is 1 < 2 words of text.</p>';
    expect(finished(page)).toBe(page);
  });
});
