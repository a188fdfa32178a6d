/** Where the site is built, and what the last complete build says of itself. */
import { join, resolve } from "node:path";

export const ROOT = resolve(import.meta.dirname, "..");

/** The folder that `npm run build` writes and `npm start` serves. */
export const DIST = join(ROOT, "dist");

/** Says under which base path the site in `dist` expects to be served; absent while no complete build is there. */
export const LAST_BUILD = join(ROOT, ".cache", "last-build.json");

/** What `LAST_BUILD` holds. */
export interface LastBuild {
  base: string;
}
