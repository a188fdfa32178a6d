/** Names of salts. Apart from the names of ions, for islands that come with the names they need. */
import { list } from "./language.ts";

/** A salt or a mixture by the names of its ions: "Zinksulfat", "Kupfer(II)-sulfat", "Ammonium- und Eisen(II)-sulfat". */
export function salt(cations: readonly string[], anions: readonly string[]): string {
  const [last, ...before] = [...cations].reverse();
  const joined = [...before.reverse().map((name) => `${name}-`), last + (last.endsWith(")") ? "-" : "")];
  const salts = anions.map((name) => name.toLowerCase());
  const ends = salts.map((name, index) => (index === 0 ? name : `-${name}`));
  return list(joined) + list(ends);
}
