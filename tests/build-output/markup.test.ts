import { describe, expect, test } from "vitest";
import { markupFaults } from "./markup.ts";
import { builtSite, imaginedSite } from "./pages.ts";

test("every page of the built site has one heading, its own title, a language, the policy, and nothing inline or foreign", () => {
  const site = builtSite();
  expect(site.pages.length).toBeGreaterThan(1);
  expect(markupFaults(site)).toEqual([]);
});

describe("the check itself", () => {
  const policy = "default-src 'self';object-src 'none'; script-src 'self' 'sha256-x'; style-src 'self'";
  const page = ({ lang = "en-GB", title = "Flame tests", head = "", body = "", csp = policy } = {}) =>
    `<!DOCTYPE html><html lang="${lang}"><head><meta http-equiv="content-security-policy" content="${csp}">` +
    `<title>${title}</title>${head}</head><body><h1>Flame tests</h1>${body}</body></html>`;
  const faults = (html: string) => markupFaults(imaginedSite("/", { "index.html": html }));

  test("is content with a page that has it all", () => {
    const body = '<a href="https://elsewhere.invalid/">source</a><p data-style="x">one flame</p>';
    const head = '<link rel="canonical" href="https://course.invalid/"><link rel="stylesheet" href="/a.css">';
    expect(faults(page({ body, head }))).toEqual([]);
  });

  test.each([
    ["a second heading", page({ body: "<h1>Again</h1>" }), /has 2 h1 headings/],
    ["an empty title", page({ title: " " }), /has no title/],
    ["no language", page({ lang: "" }), /does not say its language/],
    ["no policy for scripts", page({ csp: policy.replace("script-src", "x") }), /without script-src 'self'/],
    ["a policy with a hole", page({ csp: `${policy} 'unsafe-inline'` }), /policy with a hole/],
    ["an inline style", page({ body: '<p style="color:red">x</p>' }), /<p> has the attribute style/],
    ["an inline handler", page({ body: '<button onclick="f()">x</button>' }), /<button> has the attribute onclick/],
    ["a foreign script", page({ head: '<script src="https://a.invalid/a.js"></script>' }), /<script> loads https/],
    ["a foreign font", page({ head: '<link rel="preload" href="//a.invalid/f">' }), /<link> loads \/\/a\.invalid/],
    ["a foreign picture", page({ body: '<img srcset="a.png, http://a.invalid/b.png 2x">' }), /<img> loads/],
  ])("reports %s", (_, html, fault) => {
    const found = faults(html);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(fault);
  });

  test("reports a page without a policy four times, once for each missing directive", () => {
    expect(faults(page({ csp: "" }))).toHaveLength(4);
  });

  test("reports two pages of one title", () => {
    const site = imaginedSite("/", { "a/index.html": page(), "b/index.html": page() });
    expect(markupFaults(site)).toEqual(['b/index.html: has the title of a/index.html: "Flame tests".']);
  });
});
