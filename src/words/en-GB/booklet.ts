/** The whole course as one document. */

export const TITLE = "The whole course, to print";
export const DESCRIPTION =
  "All walkthroughs, tests, ions, method and cautions as one document, with contents and page numbers.";
export const wholeCourse = (course: string) => `${course}: the whole course`;
export const ABOUT =
  "All pages of the course as one document. Press the button and wait until they are all here; then print from your browser, on paper or into a file. It is long: choose single pages in the print dialogue, or print a walkthrough from its own page.";
export const NEEDS_SCRIPT = "Putting the pages together needs JavaScript. Without it, print each page below by itself.";
export const PUT_TOGETHER = "Put all pages together here";
export const COMES_FIRST =
  "Your teacher in charge and your school's own rules come before anything written here. Walkthroughs name their salts.";
export const CONTENTS = "Contents";
export const WORDS = "Words";
export const GLOSSARY = "Glossary";
export const howFar = (pages: number, of: number) =>
  pages < of ? `${pages} of ${of} pages …` : `All ${of} pages are here. Print them from your browser.`;
export const NOT_WHOLE =
  "A page could not be fetched, so the document is not whole. Check the connection, load this page again, and press the button again.";
