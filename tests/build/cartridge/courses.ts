/** Cartridges for the tests: an invented one whose every text is awkward, and one made from practicals of the course. */
import { resolve } from "node:path";
import type { Cartridge } from "../../../src/build/cartridge/cartridge.types.ts";
import { courseCartridge, type NamedPractical } from "../../../src/build/cartridge/course.ts";
import { readPage, readPracticalFile } from "../../../src/build/practical-files.ts";

export const AWKWARD: Cartridge = {
  identifier: "course-awkward",
  title: 'Salts & "acids" <for all>',
  description: "Two lines\nand a tab\there; a sign beyond the basic plane: \u{1F9EA}",
  units: [
    {
      identifier: "practical-a.b",
      title: "Zn²⁺ ]]> & more",
      links: [
        { identifier: "record-a.b", title: "Record <1>", url: "https://school.example/a/?x=1&y=%22" },
        { identifier: "practice-a.b", title: "Practice", url: "http://localhost:4321/p/#seed=4" },
      ],
      assessment: {
        identifier: "questions-a.b",
        title: "Questions 'n' answers",
        questions: [
          {
            identifier: "a.b-H-cation",
            title: "Sample H",
            stem: "<p>1 &lt; 2 &amp; <strong>which?</strong></p>",
            choices: [
              { identifier: "Zn_2p", words: "zinc (Zn²⁺)" },
              { identifier: "Na_p", words: "sodium", says: "Sodium is out: <b> & all." },
              { identifier: "K_p", words: "potassium" },
            ],
            correct: ["Zn_2p"],
            right: "Certain from a(i).",
          },
          {
            identifier: "a.b-M-cation",
            title: "Sample M",
            stem: "Which two?",
            choices: [
              { identifier: "a", words: "one", says: "No." },
              { identifier: "b", words: "two" },
              { identifier: "c", words: "three" },
            ],
            correct: ["b", "c"],
            right: "Both.",
          },
        ],
      },
    },
    {
      identifier: "practical-c",
      title: "Links only",
      links: [{ identifier: "record-c", title: "C", url: "https://school.example/c/" }],
    },
  ],
};

const ROOT = resolve(import.meta.dirname, "../../..");

/** One that needs another sample's record, one with two ions of a kind and too few anions to ask. */
export const NAMES = ["shed-two-tins", "etching-room"];

export const named = (slug: string): NamedPractical => {
  const path = `src/content/practicals/${slug}.mdx`;
  const read = readPracticalFile(path, readPage(ROOT, path));
  if ("faults" in read) throw new Error(`${path} cannot be read`);
  return { slug, practical: read.practical };
};

export const HOME = "https://school.example/chemistry/";
export const ofCourse = () => courseCartridge(NAMES.map(named), HOME);
