/** The languages the interface is written in, by their tags (BCP 47), which are the names of the folders here. The first is that of the course. */
export const LANGUAGES = {
  "en-GB": { name: "English", direction: "ltr" },
  de: { name: "Deutsch", direction: "ltr" },
} as const satisfies Record<string, { name: string; direction: "ltr" | "rtl" }>;

export type Language = keyof typeof LANGUAGES;

export const TAGS = Object.keys(LANGUAGES) as [Language, ...Language[]];
