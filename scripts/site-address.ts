/** Where the built site will live, as the two environment variables of the build say it. */
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
 * Reads `IONWRIGHT_BASE` (default `/`) and `IONWRIGHT_SITE` (default: none).
 * @throws SettingFault naming the variable, what it holds and what it should hold
 */
export function siteAddress(environment: Readonly<Record<string, string | undefined>>): SiteAddress {
  return { base: basePath(environment.IONWRIGHT_BASE), site: hostAddress(environment.IONWRIGHT_SITE) };
}

function basePath(given: string | undefined): string {
  const inner = (given ?? "").split("/").filter((part) => part !== "");
  if (inner.some((part) => !/^[\w.~-]+$/.test(part) || part === ".." || part === ".")) {
    throw new SettingFault(
      `IONWRIGHT_BASE is "${given}", which is not a path on a host. ` +
        "Give a path such as /chemistry/ (letters, digits, dots and hyphens between slashes).",
    );
  }
  return inner.length === 0 ? "/" : `/${inner.join("/")}/`;
}

function hostAddress(given: string | undefined): string | undefined {
  if (given === undefined || given === "") return undefined;
  if (!URL.canParse(given) || !/^https?:$/.test(new URL(given).protocol)) {
    throw new SettingFault(
      `IONWRIGHT_SITE is "${given}". Give the whole address of the host, such as https://example.org.`,
    );
  }
  return new URL(given).origin;
}
