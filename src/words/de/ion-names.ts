/** Names of ions in German, after the IUPAC nomenclature in the German of its authorised translations (Red Book 2005). From memory. */
export const ionNames: Readonly<Record<string, string>> = {
  "H+": "Wasserstoff",
  "Li+": "Lithium",
  "Na+": "Natrium",
  "K+": "Kalium",
  "NH4+": "Ammonium",
  "Mg^2+": "Magnesium",
  "Ca^2+": "Calcium",
  "Sr^2+": "Strontium",
  "Ba^2+": "Barium",
  "Al^3+": "Aluminium",
  "Cr^3+": "Chrom(III)",
  "Mn^2+": "Mangan(II)",
  "Fe^2+": "Eisen(II)",
  "Fe^3+": "Eisen(III)",
  "Co^2+": "Cobalt(II)",
  "Ni^2+": "Nickel(II)",
  "Cu+": "Kupfer(I)",
  "Cu^2+": "Kupfer(II)",
  "Zn^2+": "Zink",
  "Ag+": "Silber",
  "Sn^2+": "Zinn(II)",
  "Pb^2+": "Blei(II)",
  "Hg^2+": "Quecksilber(II)",

  "OH-": "Hydroxid",
  "O^2-": "Oxid",
  "F-": "Fluorid",
  "Cl-": "Chlorid",
  "Br-": "Bromid",
  "I-": "Iodid",
  "I3-": "Triiodid",
  "S^2-": "Sulfid",
  "NO2-": "Nitrit",
  "NO3-": "Nitrat",
  "CO3^2-": "Carbonat",
  "HCO3-": "Hydrogencarbonat",
  "SO3^2-": "Sulfit",
  "HSO3-": "Hydrogensulfit",
  "SO4^2-": "Sulfat",
  "HSO4-": "Hydrogensulfat",
  "S2O3^2-": "Thiosulfat",
  "PO4^3-": "Phosphat",
  "CH3COO-": "Ethanoat",
  "SCN-": "Thiocyanat",
  "ClO-": "Chlorat(I)",
  "CrO4^2-": "Chromat(VI)",
  "Cr2O7^2-": "Dichromat(VI)",
  "MnO4-": "Manganat(VII)",

  "[Ag(NH3)2]+": "Diamminsilber(I)",
  "[Cu(NH3)4]^2+": "Tetraamminkupfer(II)",
  "[Zn(NH3)4]^2+": "Tetraamminzink",
  "[CuCl4]^2-": "Tetrachloridocuprat(II)",
  "[Al(OH)4]-": "Tetrahydroxidoaluminat",
  "[Zn(OH)4]^2-": "Tetrahydroxidozincat",
  "[Cr(OH)4]-": "Tetrahydroxidochromat(III)",
  "[Pb(OH)3]-": "Trihydroxidoplumbat(II)",
  "[Pb(OH)4]^2-": "Tetrahydroxidoplumbat(II)",
  "[Fe(CN)6]^4-": "Hexacyanidoferrat(II)",
  "[Fe(CN)6]^3-": "Hexacyanidoferrat(III)",
};

/** A salt or a mixture by the names of its ions: "Zinksulfat", "Kupfer(II)-sulfat", "Ammonium- und Eisen(II)-sulfat". */
export function salt(cations: readonly string[], anions: readonly string[]): string {
  const [last, ...before] = [...cations].reverse();
  const joined = [...before.reverse().map((name) => `${name}-`), last + (last.endsWith(")") ? "-" : "")];
  const salts = anions.map((name) => name.toLowerCase());
  const ends = salts.map((name, index) => (index === 0 ? name : `-${name}`));
  return and(joined) + and(ends);
}

const and = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} und ${names[names.length - 1]}`;
