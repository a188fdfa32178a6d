/** All that a question gives and what it asks, as HTML that stands by itself. */
import { plain } from "../../components/sentence.ts";
import { element, writeElement, type XmlNode } from "./xml.ts";

/** One observation: where, what is done, what is seen. */
export interface Line {
  sample: string;
  cell: string;
  done: string;
  seen: string;
}

export interface Given {
  sample: string;
  /** How each sample is given, in words. */
  samples: readonly string[];
  /** What the paper says, in sentences. */
  paper: readonly string[];
  /** The sample's own record. */
  record: readonly Line[];
  /** Observations on other samples without which nothing follows. */
  others: readonly Line[];
  asked: string;
}

export function wordStem({ sample, samples, paper, record, others, asked }: Given): string {
  const blocks = [
    element("p", {}, `Samples: ${plain(samples.join("; "))}.`),
    element("p", {}, "The paper says:"),
    element("ul", {}, ...paper.map((sentence) => element("li", {}, plain(sentence)))),
    element("p", {}, `Record of sample ${sample}, test by test:`),
    table(
      ["Test", "What is done", "What is seen"],
      record.map(({ cell, done, seen }) => [cell, done, seen]),
    ),
    ...(others.length > 0
      ? [
          element("p", {}, others.length === 1 ? "From another sample:" : "From other samples:"),
          table(
            ["Sample", "Test", "What is done", "What is seen"],
            others.map((line) => [line.sample, line.cell, line.done, line.seen]),
          ),
        ]
      : []),
    element("p", {}, element("strong", {}, asked)),
  ];
  return blocks.map((block) => writeElement(block)).join("");
}

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): XmlNode & object =>
  element(
    "table",
    {},
    element("thead", {}, element("tr", {}, ...heads.map((head) => element("th", { scope: "col" }, head)))),
    element(
      "tbody",
      {},
      ...rows.map((row) => element("tr", {}, ...row.map((words) => element("td", {}, plain(words))))),
    ),
  );
