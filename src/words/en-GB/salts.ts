/** Salts of a school store, as on their bottles. */

/** Its name; the constants have it in English, and what it looks like too. */
export const nameOnBottle = (_formula: string, name: string): string => name;
export const looks = (appearance: string): string => appearance;
