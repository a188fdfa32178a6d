/** A term of the trade in a text: a link to the glossary, with its meaning as description and beside it on hover or focus. */

export interface TermUse {
  /** Address of its entry in the glossary. */
  href: string;
  /** Of the meaning; one of its own on the page. */
  id: string;
  /** The term as the text has it, in HTML. */
  words: string;
  says: string;
}

const inText = (text: string) => text.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** Neither the link nor the meaning is part of what a search finds on the page: its marks for the index say so. */
export const termMarkup = ({ href, id, words, says }: TermUse): string =>
  `<span class="term" data-pagefind-ignore="index"><a href="${href}" aria-describedby="${id}">${words}</a>` +
  `<span class="tip" role="tooltip" id="${id}" data-pagefind-ignore>${inText(says)}</span></span>`;
