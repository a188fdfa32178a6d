/** Where the page of an ion is. */
import { ionName } from "../../engine/formula/ion-name.ts";

/** "copper-ii" for "Cu^2+": the ion's name as it stands in an address. */
export const ionSlug = (ion: string): string =>
  ionName(ion)
    .toLowerCase()
    .replace(/\((\w+)\)/, "-$1");

/** Address of the page of an ion, from the site's root. */
export const ionPath = (ion: string): string => `/ions/${ionSlug(ion)}/`;
