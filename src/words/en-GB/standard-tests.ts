/** The standard tests by name. */

/** The constants have it in English. */
export const testTitle = (_id: string, title: string): string => title;
/** A title within a sentence. */
export const inSentence = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1);
