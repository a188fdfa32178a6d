/**
 * Which oxidations happen within the minutes of a test, in the cold or only when warmed. A potential says what is possible; these rows say
 * what is seen. Each couple carries a rule for both its forms (potentials.ts); a pair takes the slower of the two unless it stands here.
 */

/** At once or within a few minutes in the cold; only when warmed; not in the time of a test. */
export type Opening = "cold" | "warm" | "no";

export const openingSource =
  "textbook reactions of qualitative analysis (Vogel; school texts), from memory, for every couple's own two rules";

export interface PairGate {
  /** Ids of the couples that oxidise. */
  readonly oxidants: readonly string[];
  /** Ids of the couples that are oxidised. */
  readonly reductants: readonly string[];
  readonly opens: Opening;
  /** Lowest and highest pH of the mixture. */
  readonly fromPH?: number;
  readonly toPH?: number;
  /** One of these solids must be there, and speeds it up. */
  readonly besides?: readonly string[];
  /** So much of this species must be free, mol/kg. */
  readonly free?: { readonly id: string; readonly molality: number };
  /** Part of what could react that does in the time of the test, once; 1 where nothing is said. */
  readonly extent?: number;
  /** It goes as far as acid is there and takes no protons from water, whatever the pH. */
  readonly needsAcid?: true;
  /** Takes a minute or so: it waits until all has been poured in and whatever is faster has happened. */
  readonly slow?: true;
  readonly source: string;
}

const CHROMATE_ACID = "Cr2O7^2-/Cr^3+";
const PEROXIDE = ["H2O2/H2O", "HO2-/OH-"];
const OXYGEN_OF_PEROXIDE = ["O2/H2O2", "O2/HO2-"];
const CYANIDOFERRATE = "[Fe(CN)6]^3-/[Fe(CN)6]^4-";
const SULFITE = ["SO4^2-/H2SO3", "SO4^2-/HSO3-", "SO4^2-/SO3^2-"];
const AIR = ["air/H2O", "air/OH-"];

/** The first row that fits a pair decides, when its conditions are met; a later row, or the couples' own rules, otherwise. */
export const pairGates: readonly PairGate[] = [
  {
    oxidants: ["MnO4-/Mn^2+", "MnO4-/MnO2"],
    reductants: ["Br2/Br-"],
    opens: "warm",
    source: "textbook: acidified manganate(VII) gives bromine with bromide only on warming; from memory",
  },
  {
    oxidants: [CHROMATE_ACID],
    reductants: ["Br2/Br-"],
    opens: "no",
    source: "textbook: dichromate(VI) frees bromine only with concentrated sulfuric acid; from memory",
  },
  {
    oxidants: [CHROMATE_ACID],
    reductants: ["NO3-/HNO2"],
    opens: "warm",
    source: "textbook: nitrite turns acidified dichromate(VI) green on warming; from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: ["Br2/Br-", "S4O6^2-/S2O3^2-", "NO3-/NO2-"],
    opens: "no",
    source: "slow without a catalyst in dilute solution; from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: OXYGEN_OF_PEROXIDE,
    opens: "cold",
    besides: ["MnO2(s)"],
    source: "textbook: manganese(IV) oxide makes hydrogen peroxide fizz at once; from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: OXYGEN_OF_PEROXIDE,
    opens: "cold",
    besides: ["Fe(OH)3(s, amorphous)"],
    slow: true,
    source:
      "textbook: iron(III) hydroxide makes hydrogen peroxide fizz; the peroxide oxidises iron(II) far faster (Fenton); from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: OXYGEN_OF_PEROXIDE,
    opens: "warm",
    fromPH: 11,
    source: "textbook: excess peroxide is boiled off from alkaline solution; from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: OXYGEN_OF_PEROXIDE,
    opens: "no",
    source: "textbook: acidified hydrogen peroxide keeps for months without a catalyst; from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: [CYANIDOFERRATE],
    opens: "no",
    fromPH: 5,
    source: "textbook: hydrogen peroxide oxidises hexacyanidoferrate(II) in acid only; from memory",
  },
  {
    oxidants: [CYANIDOFERRATE],
    reductants: OXYGEN_OF_PEROXIDE,
    opens: "no",
    toPH: 9,
    source:
      "textbook: hexacyanidoferrate(III) sets oxygen free from hydrogen peroxide in alkali only (Vogel); from memory",
  },
  {
    oxidants: [CYANIDOFERRATE],
    reductants: ["S4O6^2-/S2O3^2-"],
    opens: "no",
    source: "a textbook example of a slow reaction with a large equilibrium constant; from memory",
  },
  {
    oxidants: ["I2/I-"],
    reductants: OXYGEN_OF_PEROXIDE,
    opens: "no",
    toPH: 9,
    source:
      "kinetics: iodide with peroxide, 0.012 dm3/(mol s) (textbook, from memory): beside 0.1 mol/dm3 iodide half of it takes ten minutes, so few bubbles are seen; iodine oxidises it fast in alkali only",
  },
  {
    oxidants: PEROXIDE,
    reductants: ["I2/I-"],
    opens: "cold",
    toPH: 7,
    needsAcid: true,
    source: "textbook: hydrogen peroxide frees iodine from iodide in acid, only slowly without; from memory",
  },
  {
    oxidants: PEROXIDE,
    reductants: ["I2/I-"],
    opens: "no",
    source: "textbook: no iodine stays in alkaline hydrogen peroxide; from memory",
  },
  {
    oxidants: ["I2/I-"],
    reductants: ["NO3-/NO2-", "NO3-/HNO2"],
    opens: "no",
    source:
      "textbook: iodine keeps its colour beside a nitrite; acid turns the nitrite into what sets iodine free; from memory",
  },
  {
    oxidants: ["MnO2/Mn^2+"],
    reductants: ["Br2/Br-"],
    opens: "no",
    source: "textbook: needs concentrated acid; from memory",
  },
  {
    oxidants: ["I2/I-"],
    reductants: ["Fe^3+/Fe^2+"],
    opens: "no",
    source:
      "textbook: iron(III) takes iodide to iodine and not the reverse; where hydrolysis would turn that round, the acid it makes stops it at once; from memory",
  },
  {
    oxidants: AIR,
    reductants: ["Fe(OH)3/Fe(OH)2"],
    opens: "cold",
    source:
      "textbook and boards' notes: green iron(II) hydroxide turns brown at the surface on standing; what is seen, the surface, is taken as the whole",
  },
  {
    oxidants: AIR,
    reductants: ["MnO2/Mn(OH)2"],
    opens: "cold",
    source:
      "textbook: off-white manganese(II) hydroxide turns brown in air; what is seen, the surface, is taken as the whole",
  },
  {
    oxidants: AIR,
    reductants: ["Fe4[Fe(CN)6]3/Fe^2+"],
    opens: "cold",
    extent: 0.05,
    source:
      "textbook: the white iron(II) hexacyanidoferrate(II) turns pale blue in air at once; that a twentieth turns is an assumption, no source",
  },
  {
    oxidants: ["Fe^3+/Fe^2+"],
    reductants: SULFITE,
    opens: "warm",
    source: "textbook: iron(III) is reduced by sulfur dioxide on warming, over a red-brown complex; from memory",
  },
  {
    oxidants: ["Fe^3+/Fe^2+"],
    reductants: [...OXYGEN_OF_PEROXIDE, CYANIDOFERRATE, "Fe4[Fe(CN)6]3/Fe^2+"],
    opens: "no",
    source:
      "iron(III) and hexacyanidoferrate(II) fall as the blue solid before anything else; with peroxide it is only a slow catalyst; from memory",
  },
  {
    oxidants: ["Cl2/Cl-", "Br2/Br-"],
    reductants: ["SO4^2-/S2O3^2-"],
    opens: "cold",
    source: "textbook: chlorine and bromine take thiosulfate to sulfate; from memory",
  },
  {
    oxidants: ["Cl2/Cl-", "Br2/Br-"],
    reductants: ["S4O6^2-/S2O3^2-"],
    opens: "no",
    source: "textbook: chlorine and bromine take thiosulfate to sulfate, not to tetrathionate; from memory",
  },
  {
    oxidants: ["Cu^2+/[Cu(S2O3)2]^3-"],
    reductants: ["S4O6^2-/S2O3^2-"],
    opens: "cold",
    source:
      "textbook: thiosulfate takes the colour from copper(II) solutions at once, to a copper(I) complex and tetrathionate; from memory",
  },
  {
    oxidants: ["Cu^2+/CuSCN"],
    reductants: ["FeSCN^2+/Fe^2+"],
    opens: "cold",
    source: "textbook: thiocyanate with copper(II) and iron(II) gives white copper(I) thiocyanate at once; from memory",
  },
  {
    oxidants: ["HNO2/NO"],
    reductants: ["NO3-/HNO2"],
    opens: "cold",
    extent: 0.3,
    slow: true,
    source:
      "textbook: nitrous acid falls apart slowly in cold dilute solution; that about 30 % does in a minute or two is an assumption, no source",
  },
  {
    oxidants: ["HNO2/NO"],
    reductants: ["NO3-/NO2-"],
    opens: "no",
    source: "textbook: the little nitrous acid there is above pH 3 lasts for hours; from memory",
  },
  {
    oxidants: ["Ag+/Ag"],
    reductants: ["Fe^3+/Fe^2+"],
    opens: "cold",
    source: "textbook: silver ions and iron(II) come to an equilibrium with metallic silver; from memory",
  },
  {
    oxidants: ["NO3-/NO"],
    reductants: ["Fe^3+/Fe^2+"],
    opens: "cold",
    toPH: -0.5,
    source: "textbook: the ring test needs concentrated sulfuric acid; from memory",
  },
  {
    oxidants: ["NO3-/NH3", "NO2-/NH3"],
    reductants: ["[Al(OH)4]-/Al"],
    opens: "warm",
    free: { id: "OH-", molality: 0.01 },
    extent: 0.3,
    source: "textbook reaction; that about 30 % is reduced in a minute or two is an assumption, no source",
  },
  {
    oxidants: ["H2O/H2"],
    reductants: ["[Al(OH)4]-/Al"],
    opens: "warm",
    free: { id: "OH-", molality: 0.01 },
    extent: 0.1,
    source: "textbook reaction; that a tenth of the foil dissolves in a minute or two is an assumption, no source",
  },
  {
    oxidants: ["H+/H2"],
    reductants: ["Zn^2+/Zn"],
    opens: "cold",
    toPH: 2,
    extent: 0.1,
    source: "textbook reaction; that a tenth of what could react does in a minute or two is an assumption, no source",
  },
  {
    oxidants: ["S2O3^2-/S"],
    reductants: ["SO2/S2O3^2-"],
    opens: "cold",
    source: "textbook: acid makes thiosulfate milky with sulfur within a minute, faster when warm; from memory",
  },
  {
    oxidants: ["S2O3^2-/Ag2S"],
    reductants: ["SO4^2-/S2O3^2-"],
    opens: "cold",
    free: { id: "Ag+", molality: 1e-6 },
    slow: true,
    source:
      "textbook: white silver thiosulfate blackens quickly unless an excess of thiosulfate keeps the silver in its complex; from memory",
  },
];
