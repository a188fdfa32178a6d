/** A practical as the text of its file, laid out as the guide for authors does, with a mark beside everything that was predicted. */
import { Document, isMap, isScalar, isSeq, type Node } from "yaml";

/** Beside every line that nobody has seen yet; the check counts them. */
export const MARK = "confirm";

const HEAD = `Predicted, not seen by anybody. Try each line at the bench, correct what differs, and take "# ${MARK}" away.`;

/**
 * @param data a practical in the short form of authors; its record and what stays undecided are marked
 * @returns frontmatter and a place for the author's own words
 */
export function writePractical(data: Readonly<Record<string, unknown>>): string {
  const document = new Document(data);
  const flow = (...path: (string | number)[]) => {
    const node = document.getIn(path, true);
    if (isMap(node) || isSeq(node)) node.flow = true;
  };
  const each = (path: (string | number)[]): (string | number)[] => {
    const node = document.getIn(path, true);
    if (isSeq(node)) return node.items.map((_, index) => index);
    return isMap(node) ? node.items.map(({ key }) => String(isScalar(key) ? key.value : key)) : [];
  };
  for (const sample of each(["samples"])) flow("samples", sample);
  flow("paper", "cations");
  flow("paper", "anions");
  for (const part of each(["parts"])) {
    flow("parts", part, "samples");
    for (const test of each(["parts", part, "tests"])) {
      for (const step of each(["parts", part, "tests", test, "steps"]))
        flow("parts", part, "tests", test, "steps", step);
    }
  }
  const mark = (...path: (string | number)[]) => {
    flow(...path);
    const node = document.getIn(path, true) as Node | undefined;
    if (node) node.comment = ` ${MARK}`;
  };
  for (const sample of each(["record"])) for (const cell of each(["record", sample])) mark("record", sample, cell);
  for (const sample of each(["undecided"])) mark("undecided", sample);
  const yaml = document.toString({ lineWidth: 0, flowCollectionPadding: true });
  return [
    "---",
    yaml.trimEnd().replace(/^record:/m, `# ${HEAD}\nrecord:`),
    "---",
    "",
    "Write here, in your own words, where the samples come from and what there is to find out.",
    "",
  ].join("\n");
}
