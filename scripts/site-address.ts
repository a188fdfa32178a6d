import { basePath, hostAddress } from "../src/build/hosting/base-path.ts";

/** Where the built site will live: as the two environment variables of the build say it, or else the department's file. */
export interface SiteAddress {
  /** Path under which every page lies; starts and ends with a slash. */
  base: string;
  /** Absolute address of the host, without the base path; absent when the host is not known at build time. */
  site: string | undefined;
}

/** A setting that cannot be used as it is; its message is for the person who gave it. */
export class SettingFault extends Error {
  override name = "SettingFault";
}

/**
 * Of the whole site, its first edition. Reads `IONWRIGHT_BASE` (default: the department's, or `/`) and `IONWRIGHT_SITE` (default: the department's, or none).
 * @throws SettingFault naming the variable, what it holds and what it should hold
 */
export function siteAddress(
  environment: Readonly<Record<string, string | undefined>>,
  department: { base?: string; site?: string } = {},
): SiteAddress {
  const { IONWRIGHT_BASE: base, IONWRIGHT_SITE: site } = environment;
  return {
    base: base === undefined ? (department.base ?? "/") : baseIn(base),
    site: site === undefined || site === "" ? department.site : siteIn(site),
  };
}

function baseIn(given: string): string {
  const path = basePath(given);
  if (path !== undefined) return path;
  throw new SettingFault(
    `IONWRIGHT_BASE is "${given}", which is not a path on a host. ` +
      "Give a path such as /chemistry/ (letters, digits, dots and hyphens between slashes).",
  );
}

function siteIn(given: string): string {
  const host = hostAddress(given);
  if (host !== undefined) return host;
  throw new SettingFault(
    `IONWRIGHT_SITE is "${given}". Give the whole address of the host, such as https://example.org.`,
  );
}
