/**
 * Names of ions for school use, following IUPAC Nomenclature of Inorganic Chemistry (Red Book 2005) with the accepted
 * short names of the common oxoanions; Stock numbers where the metal has several charges. From memory of the Red Book.
 */
export const ionNames: Readonly<Record<string, string>> = {
  "H+": "hydrogen",
  "Li+": "lithium",
  "Na+": "sodium",
  "K+": "potassium",
  "NH4+": "ammonium",
  "Mg^2+": "magnesium",
  "Ca^2+": "calcium",
  "Sr^2+": "strontium",
  "Ba^2+": "barium",
  "Al^3+": "aluminium",
  "Cr^3+": "chromium(III)",
  "Mn^2+": "manganese(II)",
  "Fe^2+": "iron(II)",
  "Fe^3+": "iron(III)",
  "Co^2+": "cobalt(II)",
  "Ni^2+": "nickel(II)",
  "Cu+": "copper(I)",
  "Cu^2+": "copper(II)",
  "Zn^2+": "zinc",
  "Ag+": "silver",
  "Sn^2+": "tin(II)",
  "Pb^2+": "lead(II)",
  "Hg^2+": "mercury(II)",

  "OH-": "hydroxide",
  "O^2-": "oxide",
  "F-": "fluoride",
  "Cl-": "chloride",
  "Br-": "bromide",
  "I-": "iodide",
  "I3-": "triiodide",
  "S^2-": "sulfide",
  "NO2-": "nitrite",
  "NO3-": "nitrate",
  "CO3^2-": "carbonate",
  "HCO3-": "hydrogencarbonate",
  "SO3^2-": "sulfite",
  "HSO3-": "hydrogensulfite",
  "SO4^2-": "sulfate",
  "HSO4-": "hydrogensulfate",
  "S2O3^2-": "thiosulfate",
  "PO4^3-": "phosphate",
  "CH3COO-": "ethanoate",
  "SCN-": "thiocyanate",
  "ClO-": "chlorate(I)",
  "CrO4^2-": "chromate(VI)",
  "Cr2O7^2-": "dichromate(VI)",
  "MnO4-": "manganate(VII)",

  "[Ag(NH3)2]+": "diamminesilver(I)",
  "[Cu(NH3)4]^2+": "tetraamminecopper(II)",
  "[Zn(NH3)4]^2+": "tetraamminezinc",
  "[CuCl4]^2-": "tetrachloridocuprate(II)",
  "[Al(OH)4]-": "tetrahydroxidoaluminate",
  "[Zn(OH)4]^2-": "tetrahydroxidozincate",
  "[Cr(OH)4]-": "tetrahydroxidochromate(III)",
  "[Pb(OH)3]-": "trihydroxidoplumbate(II)",
  "[Pb(OH)4]^2-": "tetrahydroxidoplumbate(II)",
  "[Fe(CN)6]^4-": "hexacyanidoferrate(II)",
  "[Fe(CN)6]^3-": "hexacyanidoferrate(III)",
};

/** A salt or a mixture by the names of its ions: "zinc sulfate", "ammonium and iron(II) sulfate". */
export const salt = (cations: readonly string[], anions: readonly string[]): string =>
  `${joined(cations)} ${joined(anions)}`;

const joined = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
