/**
 * Sentences that stand with the figures of the trade, in English: hazards, cautions, what is done with waste. Here each by
 * its English; a test finds those without German. The wording of hazards follows that of the English row and its source.
 */
import { HAZARDS } from "./hazards.ts";

const SAID: Readonly<Record<string, string>> = {
  ...HAZARDS,

  // Actions.
  "Wear goggles from the first bottle opened to the last tube washed, not only while you pour.":
    "Trag die Schutzbrille von der ersten geöffneten Flasche bis zum letzten gespülten Glas, nicht nur beim Eingießen.",
  "A mixture of silver and ammonia can explode once it dries. Add acid to it as soon as you have written down what you saw, and never keep it.":
    "Ein Gemisch aus Silber und Ammoniak kann explodieren, wenn es eintrocknet. Gib Säure dazu, sobald du aufgeschrieben hast, was zu sehen war, und heb es nie auf.",
  "A heated solution can shoot out of the tube. Start with a small flame at the top of the liquid, keep the tube moving, point its mouth away from everyone.":
    "Eine erhitzte Lösung kann aus dem Glas schießen. Beginne mit kleiner Flamme oben an der Flüssigkeit, halte das Glas in Bewegung und die Mündung von allen weg.",
  "Heat a solid in a dry hard-glass tube, gently first and then strongly, because many salts spit. Hold the mouth a little lower than the bottom: water that runs back cracks the hot glass, which looks like cold glass.":
    "Erhitze einen Feststoff in einem trockenen Glas aus Hartglas, erst vorsichtig und dann kräftig, denn viele Salze spritzen. Halte die Mündung etwas tiefer als den Boden: Zurücklaufendes Wasser sprengt das heiße Glas, und heißes Glas sieht aus wie kaltes.",
  "Take the delivery tube out of the limewater before the heat goes, or cold liquid is sucked back into the hot tube and cracks it. Never let it get blocked.":
    "Zieh das Ableitungsrohr aus dem Kalkwasser, bevor die Flamme wegkommt, sonst steigt kalte Flüssigkeit in das heiße Glas zurück und sprengt es. Lass es nie verstopfen.",
  "Hot alkali with aluminium froths up and sprays. Use small pieces and take the tube off the flame once it starts.":
    "Heiße Lauge schäumt mit Aluminium auf und sprüht. Nimm kleine Stücke und nimm das Glas von der Flamme, sobald es anfängt.",
  "Tie hair and loose cloth back, and keep anything that burns away from the burner.":
    "Binde Haare und lose Kleidung zurück und halte alles Brennbare vom Brenner fern.",
  "Your teacher and your school's rules come first.": "Deine Lehrkraft und die Regeln deiner Schule gehen vor.",

  // Ions that a sample may hold.
  "A sample may hold lead, which is toxic and harms unborn children. Wash your hands afterwards. All of it, rinsings too, goes into the bottle marked LEAD, nothing into the sink.":
    "Eine Probe kann Blei enthalten, das giftig ist und ungeborenen Kindern schadet. Wasch dir danach die Hände. Alles, auch das Spülwasser, kommt in die Flasche BLEI, nichts in den Ausguss.",
  "A sample may hold barium, which is toxic if swallowed. Wash your hands afterwards.":
    "Eine Probe kann Barium enthalten, das beim Verschlucken giftig ist. Wasch dir danach die Hände.",
  "A sample may hold chromium. Wash it off your skin. It goes into the bottle marked HEAVY METALS, unless the waste list names another.":
    "Eine Probe kann Chrom enthalten. Wasch es von der Haut ab. Es kommt in die Flasche SCHWERMETALLE, wenn die Abfallliste keine andere nennt.",
  "A sample may hold manganese, which is harmful as dust and poisons life in water. It goes into the bottle marked HEAVY METALS, unless the waste list names another.":
    "Eine Probe kann Mangan enthalten, das als Staub gesundheitsschädlich und für Wasserorganismen giftig ist. Es kommt in die Flasche SCHWERMETALLE, wenn die Abfallliste keine andere nennt.",
  "A sample may hold cobalt, which can cause cancer and allergy. Gloves, no dust, no spray. Wash your hands. It goes into the bottle marked HEAVY METALS, unless the waste list names another.":
    "Eine Probe kann Cobalt enthalten, das Krebs und Allergien auslösen kann. Handschuhe, kein Staub, kein Sprühnebel. Wasch dir die Hände. Es kommt in die Flasche SCHWERMETALLE, wenn die Abfallliste keine andere nennt.",
  "A sample may hold nickel, which can cause cancer and allergy. Gloves, no dust, no spray. Wash your hands. It goes into the bottle marked HEAVY METALS, unless the waste list names another.":
    "Eine Probe kann Nickel enthalten, das Krebs und Allergien auslösen kann. Handschuhe, kein Staub, kein Sprühnebel. Wasch dir die Hände. Es kommt in die Flasche SCHWERMETALLE, wenn die Abfallliste keine andere nennt.",
  "A sample may hold nitrite, which is toxic if swallowed. With acid it gives off brown nitrogen dioxide, which is very toxic: drops only, in a fume cupboard.":
    "Eine Probe kann Nitrit enthalten, das beim Verschlucken giftig ist. Mit Säure entwickelt es braunes Stickstoffdioxid, das sehr giftig ist: nur Tropfen, im Abzug.",
  "A sample may hold chromate, which is toxic and can cause cancer and allergy. Gloves, no spray. Wash your hands. It goes into the bottle marked CHROMIUM, unless the waste list names another.":
    "Eine Probe kann Chromat enthalten, das giftig ist und Krebs und Allergien auslösen kann. Handschuhe, kein Sprühnebel. Wasch dir die Hände. Es kommt in die Flasche CHROM, wenn die Abfallliste keine andere nennt.",
  "A sample may hold silver, which stains skin and cloth. Empty the tubes where the waste list says.":
    "Eine Probe kann Silber enthalten, das Haut und Kleidung verfärbt. Leere die Gläser dorthin, wohin die Abfallliste sagt.",

  // Waste.
  "Down the sink with plenty of water and the tap running.": "Mit viel Wasser in den Ausguss, bei laufendem Hahn.",
  "Neutralise, then down the sink with plenty of water.": "Neutralisieren, dann mit viel Wasser in den Ausguss.",
  "Test-tube amounts: down the sink, well diluted, where local rules allow. Larger amounts: precipitate with carbonate and collect.":
    "Reagenzglasmengen: gut verdünnt in den Ausguss, wo es die Regeln am Ort erlauben. Größere Mengen: mit Carbonat fällen und sammeln.",
  "Into the bottle marked BARIUM, with sulfate in excess: the barium sulfate settles and is collected; the liquid goes where your teacher says.":
    "In die Flasche BARIUM, mit Sulfat im Überschuss: Das Bariumsulfat setzt sich ab und wird gesammelt; die Flüssigkeit kommt dorthin, wohin deine Lehrkraft sagt.",
  "Into the bottle marked SILVER. Make mixtures with ammonia acidic at once and never store them: dried, they can explode.":
    "In die Flasche SILBER. Säure Gemische mit Ammoniak sofort an und heb sie nie auf: Eingetrocknet können sie explodieren.",
  "Into the bottle marked LEAD, solid and liquid. Never down the sink.":
    "In die Flasche BLEI, Feststoff und Flüssigkeit. Nie in den Ausguss.",
  "Into the bottle marked CHROMIUM. The technician reduces it, precipitates it as hydroxide and has it collected.":
    "In die Flasche CHROM. Die Sammlung reduziert es, fällt es als Hydroxid und lässt es abholen.",
  "Into the bottle marked HEAVY METALS, for collection by a licensed contractor.":
    "In die Flasche SCHWERMETALLE, zur Abholung durch einen zugelassenen Betrieb.",
  "Reuse what is clean; the rest into the solid waste, not the sink.":
    "Sauberes wiederverwenden; der Rest in den Feststoffabfall, nicht in den Ausguss.",
  "First, in a fume cupboard or at an open window, add as much sodium thiosulfate as there is liquid: chlorine comes off until then.":
    "Gib zuerst, im Abzug oder am offenen Fenster, so viel Natriumthiosulfatlösung dazu, wie Flüssigkeit da ist: Bis dahin entweicht Chlor.",
  "First add as much sodium thiosulfate as there is liquid, and see that the brown has gone.":
    "Gib zuerst so viel Natriumthiosulfatlösung dazu, wie Flüssigkeit da ist, und sieh nach, ob das Braun verschwunden ist.",
  "With ammonia it may hold a dark solid that explodes once it is dry: keep it wet, do not rub it, and empty it at once, with your teacher.":
    "Mit Ammoniak kann ein dunkler Feststoff darin sein, der trocken explodiert: Halte ihn nass, reibe nicht daran, und leere das Glas sofort, mit deiner Lehrkraft.",
  "It holds acid itself: first add solid sodium carbonate, a little at a time, until nothing more fizzes.":
    "Darin ist selbst Säure: Gib zuerst festes Natriumcarbonat dazu, immer nur wenig, bis nichts mehr sprudelt.",
  "No acid goes down with it: thiocyanate and hexacyanoferrates can give off a very toxic gas with acid.":
    "Keine Säure kommt mit hinunter: Thiocyanat und Hexacyanoferrate können mit Säure ein sehr giftiges Gas entwickeln.",
  "No hydrochloric acid goes down with it: manganate(VII) can turn that into chlorine.":
    "Keine Salzsäure kommt mit hinunter: Permanganat kann daraus Chlor machen.",
  "Do it as soon as you have looked, at an open window or in a fume cupboard: acid sets sulfur dioxide free from sulfite and thiosulfate.":
    "Tu es, sobald du hingesehen hast, am offenen Fenster oder im Abzug: Säure setzt aus Sulfit und Thiosulfat Schwefeldioxid frei.",
  "Do it as soon as you have looked, in a fume cupboard: acid sets nitrogen dioxide free from nitrite.":
    "Tu es, sobald du hingesehen hast, im Abzug: Säure setzt aus Nitrit Stickstoffdioxid frei.",

  // What is not done in class, and what is not mixed.
  "Lead in a flame gives off toxic fume, which harms unborn children. No flame test on it in class.":
    "Blei gibt in der Flamme giftigen Rauch ab, der ungeborenen Kindern schadet. Keine Flammenfärbung damit in der Klasse.",
  "The fume and dust of a cobalt salt in a flame can cause cancer when breathed in. No flame test on it in class.":
    "Rauch und Staub eines Cobaltsalzes in der Flamme können beim Einatmen Krebs auslösen. Keine Flammenfärbung damit in der Klasse.",
  "The fume and dust of a nickel salt in a flame can cause cancer when breathed in. No flame test on it in class.":
    "Rauch und Staub eines Nickelsalzes in der Flamme können beim Einatmen Krebs auslösen. Keine Flammenfärbung damit in der Klasse.",
  "The fume and dust of a chromate(VI) in a flame can cause cancer when breathed in. No flame test on it in class.":
    "Rauch und Staub eines Chromats in der Flamme können beim Einatmen Krebs auslösen. Keine Flammenfärbung damit in der Klasse.",
  "Heated lead(II) nitrate gives off much nitrogen dioxide, which is very toxic, and crackles and throws out lead dust. Never heat the solid in class.":
    "Erhitztes Blei(II)-nitrat entwickelt viel Stickstoffdioxid, das sehr giftig ist, knistert und schleudert Bleistaub heraus. Erhitze den Feststoff nie in der Klasse.",
  "Heated ammonium nitrate can explode. Never heat the solid in class.":
    "Erhitztes Ammoniumnitrat kann explodieren. Erhitze den Feststoff nie in der Klasse.",
  "Heated ammonium nitrite can explode. Never heat the solid in class.":
    "Erhitztes Ammoniumnitrit kann explodieren. Erhitze den Feststoff nie in der Klasse.",
  "A heated dichromate(VI) can send up toxic dust that can cause cancer. Not in class tubes.":
    "Ein erhitztes Dichromat kann giftigen Staub aufwirbeln, der Krebs auslösen kann. Nicht in den Gläsern einer Klasse.",
  "Dust of a chromate(VI) can cause cancer when breathed in. Do not heat the dry solid in class.":
    "Staub eines Chromats kann beim Einatmen Krebs auslösen. Erhitze den trockenen Feststoff nicht in der Klasse.",
  "Dust of a cobalt salt can cause cancer when breathed in. Do not heat the dry solid in class.":
    "Staub eines Cobaltsalzes kann beim Einatmen Krebs auslösen. Erhitze den trockenen Feststoff nicht in der Klasse.",
  "Dust of a nickel salt can cause cancer when breathed in. Do not heat the dry solid in class.":
    "Staub eines Nickelsalzes kann beim Einatmen Krebs auslösen. Erhitze den trockenen Feststoff nicht in der Klasse.",
  "a hexacyanoferrate and hot acid": "ein Hexacyanoferrat und heiße Säure",
  "a thiocyanate and hot acid": "ein Thiocyanat und heiße Säure",
  "a thiocyanate and an oxidising agent in acid": "ein Thiocyanat und ein Oxidationsmittel in Säure",
  "a thiocyanate and chlorine water": "ein Thiocyanat und Chlorwasser",
  "chlorine water and ammonia": "Chlorwasser und Ammoniak",
  "manganate(VII) and hydrochloric acid": "Permanganat und Salzsäure",
  "manganate(VII) and hot hydrochloric acid": "Permanganat und heiße Salzsäure",
  "iodine and ammonia": "Iod und Ammoniak",
  "iodide, something that sets iodine free from it, and ammonia":
    "Iodid, etwas, das daraus Iod freisetzt, und Ammoniak",
  "a sulfite or thiosulfate, zinc and acid": "ein Sulfit oder Thiosulfat, Zink und Säure",
  "they give off hydrogen sulfide, which is very toxic": "sie entwickeln Schwefelwasserstoff, der sehr giftig ist",
  "silver and ammonia, heated or left to stand": "Silber und Ammoniak, erhitzt oder stehen gelassen",
  "a dark solid may come down, nitrogen triiodide, which explodes at a touch once it is dry":
    "ein dunkler Feststoff kann ausfallen, Stickstofftriiodid, das trocken bei der leisesten Berührung explodiert",
  "a black solid can form from them that explodes even when wet":
    "aus ihnen kann ein schwarzer Feststoff entstehen, der sogar nass explodiert",
  "they can give off hydrogen cyanide, which is very toxic":
    "sie können Cyanwasserstoff entwickeln, der sehr giftig ist",
  "they can give off hydrogen cyanide and other very toxic gases":
    "sie können Cyanwasserstoff und andere sehr giftige Gase entwickeln",
  "they can give off cyanogen chloride, which is very toxic": "sie können Chlorcyan entwickeln, das sehr giftig ist",
  "they give chloramines, which are toxic to breathe and can explode when concentrated":
    "sie ergeben Chloramine, die beim Einatmen giftig sind und konzentriert explodieren können",
  "they can give off chlorine, which is toxic to breathe: sulfuric acid does not":
    "sie können Chlor entwickeln, das beim Einatmen giftig ist: Mit Schwefelsäure geschieht das nicht",
  "they give off chlorine, which is toxic to breathe": "sie entwickeln Chlor, das beim Einatmen giftig ist",

  // What could spoil an observation.
  "Lift the delivery tube out of the limewater before the flame is taken away. A cooling tube sucks the limewater back, and cold liquid cracks hot glass.":
    "Heb das Ableitungsrohr aus dem Kalkwasser, bevor die Flamme weggenommen wird. Ein abkühlendes Glas saugt das Kalkwasser zurück, und kalte Flüssigkeit sprengt heißes Glas.",
  "Liquid is added to a tube that was heated: let it cool first, or the glass cracks.":
    "In ein erhitztes Glas kommt Flüssigkeit: Lass es zuerst abkühlen, sonst springt das Glas.",
  "Drops are counted into a tube that was heated: take it from the flame first, so that nothing spits at the dropper.":
    "In ein erhitztes Glas werden Tropfen gezählt: Nimm es zuerst von der Flamme, damit nichts an die Pipette spritzt.",
  "Several bottles are used on one tube: each keeps its own dropper, which never touches the tube or another bottle.":
    "An einem Glas werden mehrere Flaschen gebraucht: Jede behält ihre eigene Pipette, die nie das Glas oder eine andere Flasche berührt.",
  "Acidify with nitric acid and take barium nitrate.": "Säure mit Salpetersäure an und nimm Bariumnitrat.",
  "Boil with the alkali until damp red litmus stays red, then add the foil.":
    "Koche mit der Lauge, bis feuchtes rotes Lackmuspapier rot bleibt, und gib dann die Folie dazu.",
  "Add dilute acid to a fresh drop or two in a fume cupboard: nitrite gives brown fumes, nitrate does not.":
    "Gib im Abzug verdünnte Säure zu einem oder zwei frischen Tropfen: Nitrit gibt braune Dämpfe, Nitrat nicht.",
  "Hold acidified manganate(VII) paper into the gas: sulfur dioxide takes its colour, carbon dioxide does not.":
    "Halte Papier mit angesäuertem Permanganat in das Gas: Schwefeldioxid entfärbt es, Kohlenstoffdioxid nicht.",
  "Dilute the sample with deionised water: silver sulfate dissolves, a silver halide does not.":
    "Verdünne die Probe mit entionisiertem Wasser: Silbersulfat löst sich, ein Silberhalogenid nicht.",
  "First add dilute nitric acid until blue litmus turns red and the fizzing stops.":
    "Gib zuerst verdünnte Salpetersäure zu, bis blaues Lackmuspapier rot wird und es nicht mehr sprudelt.",
  "Take the cation out first: sodium carbonate, filter, acidify the filtrate with nitric acid.":
    "Entferne zuerst das Kation: Natriumcarbonat, filtrieren, das Filtrat mit Salpetersäure ansäuern.",
  "Use deionised water, also to rinse.": "Nimm entionisiertes Wasser, auch zum Spülen.",
  "Use freshly made alkali, or take a faint white cloud for carbonate.":
    "Nimm frisch angesetzte Lauge, oder halte eine schwache weiße Trübung für Carbonat.",

  // Papers that are touched with a drop.
  "neutral litmus paper": "neutrales Lackmuspapier",
  "universal indicator paper": "Universalindikatorpapier",
};

/** A sentence of the constants as this language says it. */
export const said = (text: string): string => SAID[text] ?? text;
