/** Folder of the built site with walkthroughs as single files. */
export const TAKE_AWAY_FOLDER = "take-away";

/** Where a walkthrough lies as one file, from the site's root. */
export const takeAwayPath = (practical: string): string => `/${TAKE_AWAY_FOLDER}/${practical}.html`;
