// Apart from sentence.ts, which weighs on every walkthrough.
/** The first letter made a capital. */
export const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
