/** Where the page of an ion is: the same in every language, so that an address can be sent to anybody. */

/** As their files in src/content/ions are named. */
const SLUGS: Readonly<Record<string, string>> = {
  "NH4+": "ammonium",
  "Li+": "lithium",
  "Na+": "sodium",
  "K+": "potassium",
  "Mg^2+": "magnesium",
  "Ca^2+": "calcium",
  "Sr^2+": "strontium",
  "Ba^2+": "barium",
  "Al^3+": "aluminium",
  "Cr^3+": "chromium-iii",
  "Mn^2+": "manganese-ii",
  "Fe^2+": "iron-ii",
  "Fe^3+": "iron-iii",
  "Co^2+": "cobalt-ii",
  "Ni^2+": "nickel-ii",
  "Cu^2+": "copper-ii",
  "Zn^2+": "zinc",
  "Ag+": "silver",
  "Pb^2+": "lead-ii",
  "CO3^2-": "carbonate",
  "HCO3-": "hydrogencarbonate",
  "Cl-": "chloride",
  "Br-": "bromide",
  "I-": "iodide",
  "NO3-": "nitrate",
  "NO2-": "nitrite",
  "SO4^2-": "sulfate",
  "SO3^2-": "sulfite",
  "S2O3^2-": "thiosulfate",
  "CrO4^2-": "chromate-vi",
  "OH-": "hydroxide",
  "O^2-": "oxide",
};

/** "copper-ii" for "Cu^2+". @throws Error for an ion that has no page */
export function ionSlug(ion: string): string {
  if (!Object.hasOwn(SLUGS, ion))
    throw new Error(`No page for the ion "${ion}": expected one of ${Object.keys(SLUGS).join(", ")}.`);
  return SLUGS[ion];
}

/** Address of the page of an ion, from the site's root. */
export const ionPath = (ion: string): string => `/ions/${ionSlug(ion)}/`;
