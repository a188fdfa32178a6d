/** Files and links from anywhere: a paper, a page's frontmatter, a department, a page. Each is read, or told what is wrong with it, in bounded size. */
import { deflateRawSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ContentFault, ContentFaults, wordFault } from "../../src/authoring/faults.ts";
import { readDepartment } from "../../src/build/department/read-department.ts";
import { checkEquations } from "../../src/build/equations/check-equations.ts";
import { checkFrontmatter } from "../../src/build/pages/check-frontmatter.ts";
import { checkMarkup } from "../../src/build/pages/check-markup.ts";
import { readPracticalFile } from "../../src/build/practical-files.ts";
import { draftOf } from "../../src/components/paper/draft-of.ts";
import { readFile } from "../../src/components/paper/paper-file.ts";
import { fromFragment, LONGEST_CODE, MOST_UNPACKED, toFragment } from "../../src/components/paper/paper-link.ts";
import { MARK } from "../../src/components/paper/paper-mark.ts";
import { sound } from "../build/broken.ts";
import { anyText, HOSTILE, spoilt, untouched } from "./hostile.ts";

/** YAML that asks for more than a person would write. Ten thousand signs each, where a sign is repeated. */
const MANY = 10_000;
const TENFOLD = "abcdefgh"
  .split("")
  .map(
    (name, index, all) =>
      `${name}: &${name} [${Array(10)
        .fill(index === 0 ? "x" : `*${all[index - 1]}`)
        .join(",")}]`,
  )
  .join("\n");
const YAML: Readonly<Record<string, string>> = {
  "a list that unfolds tenfold eight times": TENFOLD,
  "a list that holds itself": "a: &a [*a]",
  "lists within lists": `name: ${"[".repeat(MANY)}`,
  "groups within groups": "{a: ".repeat(MANY),
  "ten thousand dashes": "- ".repeat(MANY),
  "ten thousand anchors": "&a ".repeat(MANY),
  "ten thousand aliases": "*a ".repeat(MANY),
  "ten thousand quotes": '"'.repeat(MANY),
  "ten thousand questions": "? ".repeat(MANY),
  "ten thousand tags": "!a ".repeat(MANY),
  "ten thousand documents": "---\n".repeat(MANY),
  "a key that all objects have": "__proto__: { name: x, found: 1 }\nconstructor: { prototype: { found: 1 } }",
  "a tag of another language": "nam: !!js/function 'function () { globalThis.ran = 1 }'",
  "a merge of another group": "a: &a { found: 1 }\n<<: *a",
  "a key that is a group": "? { a: b }\n: c",
  "tabs for spaces": "name:\n\tx: 1",
  "a version from elsewhere": "%YAML 9.9\n---\nname: x",
  "one word of fifty thousand letters": "x".repeat(50_000),
};

/** A report that a person can read: places in the file, words, and no more than a screen or two for each file. */
function areTold(faults: readonly ContentFault[], text: string): void {
  const lines = text.split(/\r?\n/).length;
  expect(faults.length).toBeLessThan(100);
  for (const fault of faults) {
    const { line, column, what, found, advice } = fault;
    expect(line).toBeGreaterThanOrEqual(1);
    expect(line).toBeLessThanOrEqual(lines + 1);
    expect(column).toBeGreaterThanOrEqual(1);
    for (const words of [what, found, advice]) expect(words).not.toBe("");
    expect(wordFault(fault).length).toBeLessThan(15_000);
  }
  expect(new ContentFaults(faults).message.length).toBeLessThan(1_000_000);
}

const inFence = (yaml: string) => `---\n${yaml}\n---\n\nWords.\n`;
const DEPARTMENT =
  "name: Quillstrand\nreagents: { strengths: { NaOH(aq): 0.5 mol/dm3 } }\npracticals: { hide: [darkroom] }\n";

/** Each door with a text that it takes. */
const DOORS: Readonly<
  Record<string, { wrap(yaml: string): string; sound: string; faults(text: string): ContentFault[] }>
> = {
  "a practical": {
    wrap: inFence,
    sound,
    faults: (text) => {
      const read = readPracticalFile("a.mdx", text);
      return "faults" in read ? read.faults : [];
    },
  },
  "the frontmatter of a page": {
    wrap: inFence,
    sound: inFence("title: Reading\norder: 1\nsummary: How to read a paper first."),
    faults: (text) => checkFrontmatter("a.mdx", text, "method", []),
  },
  "the file of a department": {
    wrap: (yaml) => yaml,
    sound: DEPARTMENT,
    faults: (text) => {
      const read = readDepartment("department.yaml", text, ["darkroom"]);
      return "faults" in read ? read.faults : [];
    },
  },
};

describe.each(Object.entries(DOORS))("%s", (_, { wrap, sound, faults }) => {
  test("the one that is spoilt below is sound", () => {
    expect(faults(sound)).toEqual([]);
  });

  test.each(Object.entries(YAML))("%s is refused in words", (_, yaml) => {
    const text = wrap(yaml);
    const found = faults(text);
    expect(found.length).toBeGreaterThan(0);
    areTold(found, text);
    expect(untouched()).toBe(true);
  });

  test("spoilt anywhere it is read or told its faults", () => {
    fc.assert(
      fc.property(spoilt(sound), (text) => areTold(faults(text), text)),
      { numRuns: 300, seed: 31 },
    );
    expect(untouched()).toBe(true);
  });
});

describe("a file that a reader opens", () => {
  test.each(Object.entries(YAML))("%s fills no field with it", (_, yaml) => {
    const read = readFile("mine.mdx", inFence(yaml));
    const told = "faults" in read ? read.faults : draftOf(read.data).leftOut;
    expect(told.length).toBeGreaterThan(0);
    expect(told.length).toBeLessThan(20);
    for (const sentence of told) expect(sentence.length).toBeLessThan(500);
    expect(untouched()).toBe(true);
  });

  test("spoilt anywhere it fills the form or is told its faults, and what fills it can be kept", () => {
    fc.assert(
      fc.property(spoilt(sound), (text) => {
        const read = readFile("mine.mdx", text);
        if ("faults" in read) return;
        const { draft, leftOut } = draftOf(read.data);
        expect(leftOut.length).toBeLessThan(20);
        expect(JSON.stringify(draft).length).toBeLessThan(200_000);
      }),
      { numRuns: 300, seed: 32 },
    );
    expect(untouched()).toBe(true);
  });
});

describe("a link with a paper", () => {
  const inLink = (bytes: Uint8Array) => MARK + Buffer.from(bytes).toString("base64url");

  test("anything behind the mark is data or is refused in a sentence", async () => {
    const packed = fc.string({ maxLength: 300 }).map((text) => inLink(deflateRawSync(text)));
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          anyText.map((text) => MARK + text),
          packed,
        ),
        async (fragment) => {
          const read = await fromFragment(fragment);
          if ("refused" in read) expect(read.refused).toMatch(/\.$/);
          else draftOf(read.written);
        },
      ),
      { numRuns: 200, seed: 33 },
    );
  });

  test("any data in it fits the form, or what does not is named", async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue({ maxDepth: 5 }), async (written) => {
        const read = await fromFragment(await toFragment(written));
        if ("refused" in read) throw new Error(read.refused);
        const { draft, leftOut } = draftOf(read.written);
        expect(draft.samples.length).toBeGreaterThan(0);
        expect(leftOut.length).toBeLessThan(20);
      }),
      { numRuns: 200, seed: 34 },
    );
    expect(untouched()).toBe(true);
  });

  test("little that unpacks to much is not unpacked, and a long code is not looked at", async () => {
    const bomb = inLink(deflateRawSync(`"${"x".repeat(MOST_UNPACKED * 300)}"`));
    expect(bomb.length).toBeLessThan(LONGEST_CODE);
    expect(await fromFragment(bomb)).toEqual({ refused: expect.stringContaining("It unpacks to more than") });
    const long = await fromFragment(MARK + "A".repeat(LONGEST_CODE + 1));
    expect(long).toEqual({ refused: expect.stringContaining("letters long") });
  });
});

describe("a page", () => {
  const around = {
    addresses: { exact: new Set(["/"]), folders: [], hidden: new Set<string>() },
    named: { ionTests: [], terms: [] },
  };
  const faultsOf = (text: string) => [...checkMarkup("a.mdx", text, around), ...checkEquations("a.mdx", text)];
  const MARKUP: readonly string[] = [
    ...["<b>", "<", "{", "*a ", "**a_b", "[", "[a](", "`", "> ", "- ", "| a ", "\\", "&", "<!--"].map((one) =>
      one.repeat(3_000),
    ),
    `\`\`\`equation\n${"A -> ".repeat(3_000)}\n\`\`\``,
    `<Equation of="${"(".repeat(3_000)}" />`,
    `<Chem of="${"[".repeat(3_000)}" />`,
    "{globalThis.ran = 1}",
    "<Chem of={globalThis.ran = 1} />",
    "<Chem {...(globalThis.ran = 1)} />",
    "export const a = (globalThis.ran = 1)",
    "[a](javascript:globalThis.ran=1)",
    "&#0; &#x110000; &#xD800;",
  ];

  test("is looked at and never run", () => {
    for (const text of [...MARKUP, ...HOSTILE]) areTold(faultsOf(text).slice(0, 99), text);
    expect(untouched()).toBe(true);
  });

  test("that would run something is refused", () => {
    for (const text of MARKUP.filter((one) => one.includes("globalThis")))
      expect(faultsOf(text).length, text).toBeGreaterThan(0);
  });

  test("spoilt anywhere is told at places that it has", () => {
    const page = `${sound}\nSee [goggles](/), <Chem of="SO4^2-" /> and\n\n\`\`\`equation\nAg+(aq) + Cl-(aq) -> AgCl(s)\n\`\`\`\n`;
    fc.assert(
      fc.property(spoilt(page), (text) => areTold(faultsOf(text).slice(0, 99), text)),
      { numRuns: 200, seed: 35 },
    );
  });
});
