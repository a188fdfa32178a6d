/** The sheet that every page is written on. */

/** After the name of the site, where a page is the first. */
export const SUBTITLE = "salt analysis, worked through";
export const SKIP = "Skip to the page";
export const SITE = "Site";
export const LANGUAGES = "Language";
export const ROOMS = {
  practicals: "Practicals",
  ionTests: "Tests",
  ions: "Ions",
  method: "Method",
  cautions: "Cautions",
  paper: "Your own paper",
  search: "Search",
};
/** The line under every page; then the two links in it. */
export const FOOT =
  "Your teacher in charge and your school's own rules come before anything on these pages. The samples, places and people in the practicals are invented.";
export const KEEP = "Keep this course on this device";
export const OR_PRINT = ", or";
export const PRINT = "print all of it";

/** A page that stands in a frame of another site. */
export const framedTitle = (what: string, practical: string, course: string) =>
  `${what}: ${practical}, in a frame · ${course}`;
export const FROM_WALKTHROUGH = "From the walkthrough";
export const framedFoot = (course: string) =>
  `, ${course}. Goggles on; your teacher in charge and your school's own rules come first.`;
