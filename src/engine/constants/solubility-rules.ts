/** What is known of salts for which the constants hold no solid: without it a missing constant would read as "soluble". */
export const HARDLY_SOLUBLE: readonly { anion: string; except: readonly string[]; source: string }[] = [
  {
    anion: "SO3^2-",
    except: ["NH4+", "Na+", "K+"],
    source: "textbook rule: only the sulfites of ammonium and the alkali metals dissolve well; from memory",
  },
];
