import { expect, test } from "vitest";
import { pageNumbers } from "../../scripts/booklet/page-numbers.ts";

/** As the standard lays such objects out (ISO 32000-1, 7.7.3.2 and 12.3.2.3); two levels of pages. */
const pdf = (names: string) =>
  Buffer.from(
    `%PDF-1.4
1 0 obj
<</Type /Catalog
/Pages 2 0 R
/Dests 9 0 R>>
endobj
2 0 obj
<</Type /Pages
/Count 3
/Kids [3 0 R 4 0 R]>>
endobj
3 0 obj
<</Type /Pages
/Count 2
/Kids [5 0 R 6 0 R]
/Parent 2 0 R>>
endobj
4 0 obj
<</Type /Page
/Parent 2 0 R>>
endobj
5 0 obj
<</Type /Page>>
endobj
6 0 obj
<</Type /Page>>
endobj
9 0 obj
<<${names}>>
endobj
`,
    "latin1",
  );

test("says on which page each name stands, in the order of the tree", () => {
  const named = pdf("/method [6 0 R /XYZ 42 700 0]\n/ions-iron#2Dii [4 0 R /XYZ 42 700 0]\n/top [5 0 R /XYZ 0 0 0]");
  expect([...pageNumbers(named)]).toEqual([
    ["method", 2],
    ["ions-iron-ii", 3],
    ["top", 1],
  ]);
});

test("says so when the file is laid out otherwise", () => {
  expect(() => pageNumbers(Buffer.from("%PDF-1.7"))).toThrow("names no pages or no places");
});
