import { expect, test } from "vitest";
import { headerRules, headersFile, headersFor } from "../../../src/build/hosting/headers.ts";

const rules = headerRules(["practicals", "embed"]);
const headers = (path: string) => headersFor(rules, path);

test("nobody else's frame shows a page, but for those made for it", () => {
  const frames = "frame-ancestors 'self'";
  expect(headers("")["Content-Security-Policy"]).toBe(frames);
  expect(headers("404.html")["Content-Security-Policy"]).toBe(frames);
  expect(headers("practicals/shed/")["Content-Security-Policy"]).toBe(frames);
  expect(headers("embed/shed/record/")).not.toHaveProperty("Content-Security-Policy");
});

test.each(["", "practicals/shed/", "embed/shed/", "_astro/a.js", "pagefind/pagefind.js"])(
  "the type of %j is not guessed",
  (path) => expect(headers(path)).toMatchObject({ "X-Content-Type-Options": "nosniff" }),
);

test.each(["", "404.html", "practicals/shed/", "embed/shed/"])(
  "the address of the page %j is told to nobody, and it asks for no camera, place or microphone",
  (path) => {
    expect(headers(path)["Referrer-Policy"]).toBe("no-referrer");
    expect(headers(path)["Permissions-Policy"]).toContain("camera=()");
  },
);

test("a script's head does not repeat what counts for its page", () => {
  expect(headers("_astro/a.js")).not.toHaveProperty("Permissions-Policy");
  expect(headers("_astro/a.js")).not.toHaveProperty("Referrer-Policy");
});

test("only files whose name changes with their content are kept for good", () => {
  expect(headers("_astro/page.X1.css")["Cache-Control"]).toContain("immutable");
  expect(headers("practicals/shed/")).not.toHaveProperty("Cache-Control");
});

test("an edition in another language has the same in its own folder", () => {
  const both = headerRules(["practicals", "embed"], [{ at: "de/", folders: ["practicals", "embed"] }]);
  for (const path of ["", "404.html", "practicals/shed/", "embed/shed/", "_astro/a.js", "pagefind/pagefind.js"]) {
    expect(headersFor(both, `de/${path}`)).toEqual(headers(path));
  }
});

test("the file for hosts has each path under the base path", () => {
  expect(
    headersFile(
      [
        { path: "a/*", headers: { One: "1", Two: "2" } },
        { path: "", headers: { One: "3" } },
      ],
      "/chem/",
    ),
  ).toBe("/chem/a/*\n  One: 1\n  Two: 2\n\n/chem/\n  One: 3\n");
});
