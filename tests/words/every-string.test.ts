/** Every text of a template comes from the catalogue. */
import { describe, expect, test } from "vitest";
import { sourceFiles } from "../architecture/source-files.ts";
import { wordsIn } from "./outside.ts";

test("no template says anything itself", () => {
  const said = [...sourceFiles("src", [".tsx", ".astro"])].flatMap(([path, text]) =>
    wordsIn(path, text).map((words) => `${path}: "${words}" belongs into src/words.`),
  );
  expect(said).toEqual([]);
});

describe("the search itself", () => {
  test.each([
    ["a.tsx", "const A = () => <p>Look at once <b>{x}</b></p>;", ["Look at once"]],
    ["a.tsx", 'const A = () => <nav aria-label="Site" class="wide page" />;', ["Site"]],
    ["a.tsx", `const A = () => <b title={\`Curve of \${x}\`}>{x} cm³</b>;`, ["Curve of"]],
    ["a.tsx", "const A = () => <p class='wide'>{words.ABOUT} · {figure} cm³</p>;", []],
    [
      "a.astro",
      "---\nconst x = 'No text';\n---\n<p>Seen {x && <b>again</b>}</p>\n<script>import 'x y';</script>",
      ["Seen", "again"],
    ],
    ["a.astro", "---\n---\n<p>{words.SEEN}</p>", []],
  ])("finds in %s: %s", (path, text, words) => {
    expect(wordsIn(path, text)).toEqual(words);
  });
});
