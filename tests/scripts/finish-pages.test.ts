import { describe, expect, test } from "vitest";
import { finished } from "../../scripts/finish-pages.ts";

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
