/**
 * The address of a page of this site, given from its root: `link("/cautions/")`. Puts the site's base path in front, so that the
 * same pages work at a domain's root and in a folder of a school's server. Addresses of other sites and anchors pass unchanged.
 */
export function link(path: string): string {
  if (!path.startsWith("/")) return path;
  return import.meta.env.BASE_URL.replace(/\/$/, "") + path;
}
