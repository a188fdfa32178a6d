/**
 * Most that a paper holds: entries in a list, letters in a text. No paper on a school bench comes near; they keep a crafted file or link from
 * being worked on for long. Apart from the schemas, for a form keeps to them without zod.
 */
export const MOST = { samples: 8, parts: 26, tests: 12, steps: 30, ions: 40, statements: 5 } as const;
export const LONGEST = { title: 200, summary: 300, says: 2000, evidence: 200 } as const;
