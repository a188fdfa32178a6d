/** What happens, or comes slowly, although no constant says so; worked out at build. */

const NAMES: Readonly<Record<string, string>> = {
  "iodine-stays-dissolved": "Iod bleibt minutenlang in der braunen Lösung, bevor sich schwarze Kristalle absetzen",
  "gypsum-slow": "Calciumsulfat kristallisiert langsam",
  "iron-hydroxide-slow-in-acid":
    "Eisen(III), das in Säure aus Eisen(II) entsteht, fällt nur langsam als Hydroxid: Die Lösung bleibt klar und wird gelb oder braun",
  "silver-thiosulfate-first":
    "Silberthiosulfat fällt weiß und wird in Minuten gelb, braun und zuletzt schwarz, zu Silbersulfid",
  "sulfur-milky-first": "Schwefel trübt die Flüssigkeit weiß wie Milch, bevor man sieht, dass er blassgelb ist",
  "iron-hydroxide-browns": "grünes Eisen(II)-hydroxid wird an der Luft oben braun, auch zwischen zwei Versuchen",
  "manganese-hydroxide-browns": "fast weißes Mangan(II)-hydroxid wird an der Luft braun, auch zwischen zwei Versuchen",
  "manganese-carbonate-browns": "fast weißes Mangan(II)-carbonat wird an der Luft braun, langsam",
  "cobalt-hydroxide-pink": "blaues Cobalt(II)-hydroxid wird beim Stehen rosa, in der Wärme schneller",
  "lead-at-the-drop": "Blei(II)-hydroxid fällt, wo ein Tropfen Lauge auftrifft, und löst sich nur langsam wieder",
  "silver-sulfite-at-the-drop":
    "weißes Silbersulfit fällt, wo ein Tropfen Silbernitrat auftrifft, und löst sich beim Schütteln im übrigen Sulfit",
  "silver-thiosulfate-at-the-drop":
    "weißes Silberthiosulfat fällt, wo ein Tropfen Silbernitrat auftrifft, und löst sich beim Schütteln im übrigen Thiosulfat",
  "solid-to-solid":
    "ein Feststoff, der in einer Flüssigkeit liegt, wird nur langsam zu einem anderen, unter einer Kruste aus diesem",
  "copper-oxide": "Kupfer(II)-hydroxid wird nur beim Kochen zu schwarzem Kupfer(II)-oxid",
  "starch-iodine": "Stärke wird mit Iod blauschwarz, in der Kälte",
};

/** The name of a gate; the constants have it in English. */
export const gateName = (id: string, name: string): string => NAMES[id] ?? name;
