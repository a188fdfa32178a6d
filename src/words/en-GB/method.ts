/** Method, the glossary, and the worked example of ions that become fewer. */

export const METHOD = "Method";
export const DESCRIPTION = "How to read a paper, prepare, record, conclude and manage time.";
export const ABOUT =
  "What is the same in every practical: how the job is done, and the words it is written in. Five short pages, each with an example that the engine has worked out.";
/** Before the link to it. */
export const ALL_TERMS = "All terms of the trade on one page: the";
export const GLOSSARY_LINK = "glossary";

export const GLOSSARY = "Glossary";
export const GLOSSARY_DESCRIPTION = "The terms of salt analysis, each in a sentence or two.";
export const GLOSSARY_ABOUT =
  "Words with a dotted line under them, anywhere in the course, lead here. Point at one, or tap it, and its meaning shows beside it.";
/** Before other names of a term. */
export const ALSO = ", also:";

/** Which ions are left after each test. */
export const LEFT_CAPTION = "Ions left after each test";
export const TEST = "Test";
export const RECORDED = "Recorded";
export const LEFT = { cations: "Cations left", anions: "Anions left" };
export const BEFORE_FIRST = "Before the first test";
export const LEFT_FOR =
  "Worked out over every salt of these ions that dissolves, at the usual strengths of the bottles.";
