/** Names of salts. Apart from the names of ions, for islands that come with the names they need. */
import { list } from "./language.ts";

/** A salt or a mixture by the names of its ions: "zinc sulfate", "ammonium and iron(II) sulfate". */
export const salt = (cations: readonly string[], anions: readonly string[]): string =>
  `${list(cations)} ${list(anions)}`;
