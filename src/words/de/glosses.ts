/**
 * German words of records, umlauts written out, and what they are in the vocabulary of the reader. Each is tried on the whole line in this
 * order: what holds another stands before it. Usual school words, no source.
 */
import type { Colour } from "../../engine/practical/same-colour.ts";
import { COLOURS } from "./observation.ts";

type Gloss = readonly [pattern: string, words: string];

const END = "(?:e[rsnm]?)?";
const SPACE = "[ -]?";

/** Other words for colours than those that a record is worded with. */
const OTHER_COLOURS: readonly (readonly [pattern: string, colour: Colour])[] = [
  ["gelblich[ -]weiss", "yellowish white"],
  ["blaeulich[ -]weiss", "pale blue-white"],
  ["(?:sehr |ganz )?(?:zart|schwach|blass)[ -]?rosa(?:farben)?", "very pale pink"],
  ["(?:hell|zart)[ -]?(?:lila|violett)|lila|flieder(?:farben)?", "lilac"],
  ["(?:creme|sahne)(?:[ -]?weiss|farben)?|eierschalenfarben", "cream"],
  ["beige|weisslich|schmutzig[ -]?weiss|grau[ -]?weiss", "off-white"],
  ["hell[ -]?gelb|schwach[ -]?gelb", "pale yellow"],
  ["knall[ -]?gelb|leuchtend[ -]gelb|kraeftig[ -]gelb|intensiv[ -]gelb", "bright yellow"],
  ["rost[ -]?(?:braun|rot|farben)|roetlich[ -]?braun|braun[ -]?rot", "red-brown"],
  ["gelblich[ -]?braun|braun[ -]?gelb|bernsteinfarben", "yellow-brown"],
  ["himmel[ -]?blau", "light blue"],
  ["(?:koenigs|intensiv|kornblumen)[ -]?blau", "deep blue"],
  ["tuerkis(?:farben)?|blaeulich[ -]?gruen|gruen[ -]?blau", "blue-green"],
  ["gruenlich[ -]?gelb|gelblich[ -]?gruen", "yellow-green"],
  ["schmutzig[ -]gruen|oliv(?:gruen)?|moosgruen", "dirty green"],
  ["schwach[ -]?gruen", "pale green"],
  ["karmesin(?:rot)?", "crimson"],
  ["(?:dunkel|tief|blut)[ -]?rot", "blood-red"],
  ["purpur(?:n|rot|farben)?|pink[ -]?violett|permanganatfarben", "purple"],
  ["orange(?:farben|n)?", "orange"],
  ["rosa(?:farben|rot)?|pink(?:farben)?", "pink"],
];

const writtenOut = (text: string) =>
  text.replace(/ä/g, "ae").replace(/ö/g, "oe").replace(/ü/g, "ue").replace(/ß/g, "ss");

/** "dunkel blau" and "dunkel-blau" are "dunkelblau". */
const loose = (name: string) =>
  writtenOut(name).replace(/^(sehr )?(blass|hell|dunkel|tief|leuchtend|schmutzig)(?=.)/, `$1$2${SPACE}`);

const OWN: [string, Colour][] = (Object.entries(COLOURS) as [Colour, string | readonly string[]][]).flatMap(
  ([colour, row]) =>
    [...(typeof row === "string" ? [row] : row)].map((name): [string, Colour] => [loose(name), colour]),
);

const NAMES = Object.keys(COLOURS) as Colour[];

/** A colour stands as its number while the rest of the line is read: no later gloss can take "orange" out of "orange-red". */
export const withColours = (line: string): string => line.replace(/#(\d+)#/g, (_, at: string) => NAMES[Number(at)]);

/** The longer before the shorter. */
const COLOUR_GLOSSES: Gloss[] = [...OTHER_COLOURS, ...OWN]
  .toSorted((a, b) => b[0].length - a[0].length)
  .map(([pattern, colour]) => [`(?:${pattern})${END}`, `#${NAMES.indexOf(colour)}#`]);

const PRECIPITATE =
  "niederschlag(?:e?s)?|niederschlaege|ausfaellung|faellung|bodensatz|ndschlg?|nd(?![a-z])\\.?|ns(?![a-z])\\.?";
const BUBBLES =
  "(?:gas|bl(?:ae|a)s)(?:s)?(?:chen)?(?:blaeschen|blasen)?(?:entwicklung|bildung)|aufschaeumen|aufbrausen|(?:auf)?schaeumt(?: auf)?|braust(?: auf)?|sprudel(?:t|n)?|gasblaeschen|blaeschen|(?:gas)?blasen|blubber(?:t|n)|zisch(?:t|en)|perlt";
const MIDDLE =
  "(?: (?:im|in|bei|mit|auch|wieder|dabei|sich|einem?|ueberschuss|ueberschuessige[rmn]?|weitere[rmn]?|zugabe|von|viel|natronlauge|ammoniak(?:loesung)?|saeure|reagenz))*";
const SLIGHT = "schwach|leicht|gering|fein|schwaechlich|kaum sichtbar";
const AGAIN = "(?: wieder| sofort| hell)*";

/** What names a colour, or looks like one, and means something else. */
const BEFORE_COLOURS: readonly Gloss[] = [
  [
    `(?:keine?|nicht) (?:sichtbare |weitere |erkennbare |deutliche )?(?:ver)?aenderung(?:en)?(?: (?:sichtbar|erkennbar|zu sehen|zu beobachten))?`,
    "no visible change",
  ],
  [
    "(?:es )?(?:passiert|geschieht|veraendert sich|aendert sich) nichts|nichts (?:passiert|geschieht|zu sehen|zu beobachten|sichtbar|veraendert sich)|nichts(?= *$)",
    "no visible change",
  ],
  ["keine (?:sichtbare )?reaktion|reagiert nicht|keine rkt", "no reaction"],
  ["nichts bleibt(?: zurueck| uebrig)?|bleibt nichts(?: zurueck| uebrig)?|kein rueckstand", "nothing left"],
  [
    "gas(?:nachweis|probe|test)(?: ist| war)? negativ|knallgasprobe(?: ist| war)? negativ|glimmspanprobe(?: ist| war)? negativ|(?:kein|ohne) (?:nachweisbares )?gas(?= *(?:$|,))",
    "gas test shows nothing",
  ],
  ["glimmspanprobe(?: ist| war|:)? positiv", "glowing splint relights"],
  ["knallgasprobe(?: ist| war|:)? positiv", "squeaky pop"],
  [
    "(?:hell|leise|laut|dumpf)?(?:er|es)? ?(?:ein )?(?:pfeifende[rs] |leise[rs] |kurze[rs] )*(?:knall|plopp|geraeusch)|knallt|ploppt|pfeift",
    "squeaky pop",
  ],
  [
    `(?:wird |ist )?(?:mit mehr gas |im ueberschuss |bei mehr gas )?(?:wieder klar|dann klar)(?: im ueberschuss)?`,
    "then clears again",
  ],
  [
    `truebt sich${AGAIN}(?: milchig| weiss)?|(?:wird|ist) (?:milchig(?:[ -](?:trueb|weiss))?|trueb|weiss getruebt|getruebt)|milchig getruebt|milchige truebung|faerbt sich milchig`,
    "turns milky",
  ],
  ["([a-z]*(?:rot|blau|gruen|gelb|braun|violett|schwarz|rosa|orange))faerbung", "$1 faerbung"],
];

const AFTER_COLOURS: readonly Gloss[] = [
  ["kein(?:e[rsnm]?)? (#\\d+#) (?:farbe|faerbung)", "no $1 colour"],
  ["(?:mit )?(?:der )?staerke(?:loesung)?", "with starch"],
  [
    `loest sich${MIDDLE} (?:nur )?(?:teilweise|zum teil|etwas|wenig|ein wenig|kaum)(?: auf)?|(?:teilweise|wenig|maessig|etwas|zum teil) (?:loeslich|geloest|aufgeloest)|ein teil${MIDDLE} loest sich(?: auf)?|geht teilweise in loesung`,
    "partly soluble",
  ],
  [
    `loest sich${MIDDLE} (?:nicht|nie)(?: mehr)?(?: wieder)?(?: auf)?|sich${MIDDLE} nicht(?: wieder)? (?:auf)?loest|nicht (?:loeslich|aufloesbar|geloest)|unloeslich${END}|schwer ?loeslich${END}`,
    "insoluble",
  ],
  [
    `loest sich${MIDDLE}(?: (?:vollstaendig|ganz|komplett|leicht|gut|schnell|langsam|wieder))*(?: auf)?|sich${MIDDLE} (?:auf)?loest|loest|(?:leicht |gut |wieder )?loeslich${END}|geht(?: wieder)? in loesung|(?:wieder )?(?:auf)?geloest|verschwindet(?: wieder)?|aufloesung`,
    "dissolves",
  ],
  [
    `bleibt(?: (?:bestehen|erhalten|zurueck|ungeloest|da|vorhanden|liegen))|bleibt(?= *(?:$|,))|(?:bestehen|erhalten|zurueck|liegen) ?bleibt|bestehen`,
    "remains",
  ],
  ["(?:bleibt )?unveraendert|bleibt gleich|wie vorher|wie zuvor", "unchanged"],
  [`(?:${SLIGHT})${END} (?:truebung|trueb)`, "slight cloudiness"],
  [`truebung${END}`, "cloudiness"],
  [`trueb${END}|milchig${END}`, "cloudy"],
  [PRECIPITATE, "precipitate"],
  [`gallertartig${END}|gelartig${END}|flockig${END}|schleimig${END}`, "gelatinous"],
  [`kaesig${END}`, "curdy"],
  [`kristallin${END}|feinkoernig${END}`, "crystalline"],
  [`(?:sehr (?:${SLIGHT})|kaum sichtbar)${END}`, "very slight"],
  [`(?:${SLIGHT})${END}`, "slight"],
  [
    "(?:im|in|bei|mit|mit dem|mit einem)? ?(?:ueberschuss|ueberschuessig(?:er|em|en|e)?)(?: von)?|i\\.? ?u\\.?",
    "in excess",
  ],
  ["ergibt|gibt|liefert|hinterlaesst|bildet|es entsteht|entsteht|dabei entsteht", "giving"],
  ["loesung(?:en)?|lsg\\.?", "solution"],
  ["fluessigkeit", "liquid"],
  ["filtrat", "filtrate"],
  [`klar${END}`, "clear"],
  ["(?:feucht|angefeuchtet|nass|benetzt)(?:e[rsnm]?)?", "damp"],
  ["lackmus(?:papier|streifen)?", "litmus"],
  ["universalindikator(?:papier)?", "universal indicator"],
  ["indikator(?:papier)?", "indicator"],
  ["kalk ?wasser(?:probe)?", "limewater"],
  ["(?:kalium)?permanganat(?:papier|loesung)?|(?:kalium)?manganat(?:papier|loesung)?", "manganate"],
  ["(?:kalium)?dichromat(?:papier|loesung)?", "dichromate"],
  ["(?:wasserfreies |weisses )*kupfer ?-?(?:sulfat|vitriol)", "anhydrous copper sulfate"],
  ["[ck]obalt ?-?chlorid(?:[ -]?papier)?", "cobalt chloride paper"],
  ["(?:glimmende[rmns]?|gluehende[rmns]?) (?:holz|kien)?(?:span|spans)|glimmspan(?:s)?", "glowing splint"],
  [
    "(?:am|an|mit)(?: (?:dem|der|einem))? (?:brennende[rmns]?|entzuendete[rmns]?) (?:holz|kien)?span",
    "with lighted splint",
  ],
  ["(?:brennende[rmns]?|entzuendete[rmns]?) (?:holz|kien)?span", "lighted splint"],
  [`(?:flammt|entzuendet sich|leuchtet|brennt|glueht|entflammt)${AGAIN}(?: auf)?`, "relights"],
  ["(?:wird |ist |sind )?(?:aus)?gebleicht|bleicht(?: aus)?", "bleached"],
  ["(?:wird |ist )?entfaerbt(?: sich)?", "decolourised"],
  [BUBBLES, "effervescence"],
  ["ammoniak(?:gas)?", "ammonia"],
  ["kohlen(?:stoff)?dioxid", "carbon dioxide"],
  ["schwefeldioxid", "sulfur dioxide"],
  ["stickstoffdioxid", "nitrogen dioxide"],
  ["chlorwasserstoff(?:gas)?", "hydrogen chloride"],
  ["salzsaeure", "hydrochloric acid"],
  ["wasserdampf", "water vapour"],
  ["wasserstoff(?:gas)?", "hydrogen"],
  ["sauerstoff(?:gas)?", "oxygen"],
  ["chlor(?:gas)?", "chlorine"],
  [
    "(?:stechende[rs]?|beissende[rs]?|unangenehme[rs]?)(?: gas)?(?: geruch)?|riecht(?: nach)?|geruch(?: nach)?",
    "pungent smell",
  ],
  ["(?:rauch|nebel|qualm)(?= *(?:am|an|$|,))", "smoke"],
  ["rauch|nebel|qualm|dampf|daempfe", "fumes"],
  ["(?:am|an einem|an dem) (?:glas)?stab", "on the rod"],
  ["keine (?:flammenfaerbung|farbe der flamme)", "no flame colour"],
  ["flammenfaerbung|flamme", "flame"],
  ["rueckstand(?:s|es)?", "residue"],
  ["feststoff(?:s|es)?|pulver", "solid"],
  ["sublimat", "sublimate"],
  ["(?:an der|am|im) (?:kuehlen|kalten|oberen)(?: (?:wand|teil|rand|glas|ende)(?:[a-z ]{0,20})?)?", "on the cool wall"],
  ["(?:farblose )?(?:fluessigkeits|wasser)?(?:tropfen|troepfchen)|kondensat|kondenswasser|beschlag", "droplets"],
  ["(?:in der hitze|beim erhitzen|im heissen|solange heiss|heiss)", "hot"],
  ["(?:in der kaelte|nach dem abkuehlen|beim abkuehlen|abgekuehlt|erkaltet|im kalten|kalt)", "cold"],
  ["schmilzt|geschmolzen", "melts"],
  ["knistert|knackt|verknistert", "crackles"],
  ["blaeht sich(?: auf)?", "swells"],
  ["nicht", "not"],
  ["nie", "never"],
  ["ohne", "without"],
  ["kein(?:e[rsnm]?)?", "no"],
  ["(?:wird|werden|faerbt sich|verfaerbt sich|faerbt|verfaerbt|wechselt|schlaegt um|wurde)", "turns"],
  ["nach|zu", "to"],
  ["von", "from"],
  ["bleibt|blieb", "remains"],
  ["gas(?:es)?", "gas"],
];

/** They name no sight. */
const SMALL =
  "der|die|das|den|dem|des|ein|eine[rsnm]?|einen|und|oder|dann|danach|zuerst|erst|er|sie|es|ist|sind|war|waren|sich|im|in|mit|bei|beim|an|am|auf|aus|zu|zur|zum|nach|von|vom|fuer|faellt|fallen|bildet|bilden|entsteht|entstehen|entstand|entwickelt|steigt|steigen|erscheint|man|sieht|sichtbar|erkennbar|beobachtet|zu sehen|wieder|auch|dabei|deutlich(?:e[rsnm]?)?|stark(?:e[rsnm]?)?|sofort|langsam|schnell|ganz|vollstaendig|zugabe|papier|probe|nachweis|angesaeuert(?:e[rsnm]?)?|verfaerbt|verfaerbung|farbe|faerbung|heftig(?:e[rsnm]?)?|lebhaft(?:e[rsnm]?)?|etwas|viel|jetzt|nun|mehr|positiv|wasserfreie[sn]?";

export const GLOSSES: readonly Gloss[] = [...BEFORE_COLOURS, ...COLOUR_GLOSSES, ...AFTER_COLOURS, [SMALL, ""]];
