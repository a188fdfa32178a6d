/** The folder of a host that a site lives in, as people write it: "/chemistry/", "chemistry". */

/** The path with a slash at both ends; undefined when it is no path on a host. */
export function basePath(given: string): string | undefined {
  const inner = given.split("/").filter((part) => part !== "");
  if (inner.some((part) => !/^[\w.~-]+$/.test(part) || part === ".." || part === ".")) return undefined;
  return inner.length === 0 ? "/" : `/${inner.join("/")}/`;
}

/** The host of a whole web address, without its path; undefined when it is none. */
export function hostAddress(given: string): string | undefined {
  if (!URL.canParse(given) || !/^https?:$/.test(new URL(given).protocol)) return undefined;
  return new URL(given).origin;
}
