/** Sentences that stand with the figures of the trade, in English: hazards, cautions, what is done with waste. */

/** A sentence of the constants as this language says it. */
export const said = (text: string): string => text;
