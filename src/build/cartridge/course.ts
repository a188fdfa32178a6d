/** The course as a cartridge: a folder for each practical, with links to its pages and its questions. */
import type { Practical } from "../../engine/practical.ts";
import { COURSE_NAME } from "../department/read-department.ts";
import type { Cartridge, Unit } from "./cartridge.types.ts";
import { nameOf } from "./identifiers.ts";
import { questionsOf } from "./questions.ts";

/** A practical with the name its page has in the address. */
export interface NamedPractical {
  slug: string;
  practical: Practical;
}

/** The pages of a practical that are for students, in the order in which they need them; what names the salts is left to the teacher. */
const PAGES = [
  { name: "record", path: "sheets/record/", title: "record sheet" },
  { name: "walkthrough", path: "", title: "walkthrough" },
  { name: "practice", path: "practice/", title: "practice" },
] as const;

const DESCRIPTION =
  "Salt analysis, worked through: for each practical its record sheet, walkthrough and practice as links, and questions on its record.";

/**
 * @param home address of the course's first page, with host, ending in a slash
 * @param title of the site, by which a platform lists it
 * @returns the cartridge, and what is not asked in it, in sentences
 */
export function courseCartridge(
  practicals: readonly NamedPractical[],
  home: string,
  title = COURSE_NAME,
): { cartridge: Cartridge; leftOut: string[] } {
  const leftOut: string[] = [];
  const units = practicals
    .toSorted((a, b) => a.practical.order - b.practical.order || (a.slug < b.slug ? -1 : 1))
    .map(({ slug, practical }): Unit => {
      const name = nameOf(slug);
      const made = questionsOf(name, practical);
      leftOut.push(...made.leftOut.map((sentence) => `${slug}: ${sentence}`));
      const assessment = {
        identifier: `questions-${name}`,
        title: `${practical.title}: questions`,
        questions: made.questions,
      };
      return {
        identifier: `practical-${name}`,
        title: practical.title,
        links: PAGES.map((page) => ({
          identifier: `${page.name}-${name}`,
          title: `${practical.title}: ${page.title}`,
          url: new URL(`practicals/${slug}/${page.path}`, home).href,
        })),
        // A section without a question is not allowed.
        ...(made.questions.length > 0 && { assessment }),
      };
    });
  const { host, pathname } = new URL(home);
  const identifier = `course-${nameOf(host + pathname.replace(/\/$/, ""))}`;
  return { cartridge: { identifier, title, description: DESCRIPTION, units }, leftOut };
}
