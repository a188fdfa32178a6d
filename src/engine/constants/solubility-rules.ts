/** What is known of salts for which the constants hold no solid: without it a missing constant would read as "soluble". */
export const HARDLY_SOLUBLE: readonly { anion: string; except: readonly string[]; source: string }[] = [
  {
    anion: "SO3^2-",
    except: ["NH4+", "Na+", "K+"],
    source: "textbook rule: only the sulfites of ammonium and the alkali metals dissolve well; from memory",
  },
  {
    anion: "CrO4^2-",
    except: ["NH4+", "Li+", "Na+", "K+", "Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+", "Pb^2+", "Ag+", "Cu^2+"],
    source:
      "textbook rule: of the chromates those of ammonium, the alkali metals, magnesium and calcium dissolve well; from memory. Of those of the last six the constants hold a solid, which decides",
  },
];
