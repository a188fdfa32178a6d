/** Names of salts. Apart from the names of ions, for islands that come with the names they need. */

/** A salt or a mixture by the names of its ions: "zinc sulfate", "ammonium and iron(II) sulfate". */
export const salt = (cations: readonly string[], anions: readonly string[]): string =>
  `${joined(cations)} ${joined(anions)}`;

const joined = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
