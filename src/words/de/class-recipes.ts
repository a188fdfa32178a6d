/** What a class's sheet says of making up, of limits of strength and of first aid; worked out at build. A test finds what has no German. */
import { SALT_HAZARDS } from "./salt-hazards.ts";

const ACID =
  "Abzug, Schutzbrille und Handschuhe. Säure ins Wasser, nie Wasser in die Säure, immer nur wenig und unter Rühren.";
const EYES =
  "Augen: sofort mindestens zwanzig Minuten unter sanft fließendem Wasser spülen, die Lider offen gehalten, während deine Lehrkraft ärztliche Hilfe holt.";

const SAID: Readonly<Record<string, string>> = {
  ...SALT_HAZARDS,

  // Who decides, and the day before.
  "Your employer's risk assessment and your local rules decide, and come before anything on this sheet. The hazards below are teaching data, not labels: take what goes onto a label from the supplier's safety data sheet.":
    "Die Gefährdungsbeurteilung deiner Schule und die Regeln am Ort entscheiden und gehen allem auf diesem Blatt vor. Die Gefahren unten sind Angaben für den Unterricht, keine Etiketten: Was auf ein Etikett kommt, steht im Sicherheitsdatenblatt des Lieferanten.",
  "Carry out the tests yourself the day before, with the same bottles that the class will get.":
    "Führe die Versuche am Tag davor selbst durch, mit denselben Flaschen, die die Klasse bekommt.",
  "Keep what is left of each bottle back until the reports are written: a group may ask for more.":
    "Heb den Rest jeder Flasche auf, bis die Protokolle geschrieben sind: Eine Gruppe braucht vielleicht mehr.",
  "Keep the master list of letters and salts where no student sees it.":
    "Verwahre die Liste der Buchstaben und Salze, wo keine Schülerin und kein Schüler sie sieht.",

  // How a solution is made up.
  "Dissolve in deionised water, stirring, and make up.": "Unter Rühren in entionisiertem Wasser lösen und auffüllen.",
  "Measure it into most of the water, stirring, and make up.":
    "Unter Rühren in den größten Teil des Wassers messen und auffüllen.",
  "Grind any lumps, and weigh it out dry.": "Klumpen zerreiben und trocken abwiegen.",
  "Bought ready made.": "Fertig kaufen.",
  "A few pellets at a time into cold water, stirring: it gets hot. Cool, then make up. Plastic bottle, no glass stopper.":
    "Immer nur einige Plätzchen unter Rühren in kaltes Wasser geben: Es wird heiß. Abkühlen lassen, dann auffüllen. Kunststoffflasche, kein Glasstopfen.",
  "Dissolve and make up. Brown bottle: light darkens it.": "Lösen und auffüllen. Braune Flasche: Licht dunkelt sie.",
  "Dissolve in warm water, cool, make up.": "In warmem Wasser lösen, abkühlen lassen, auffüllen.",
  "Dissolve and make up. Brown bottle; throw it away when it is yellow.":
    "Lösen und auffüllen. Braune Flasche; wegwerfen, wenn sie gelb ist.",
  "Gloves, and no dust. Dissolve and make up.": "Handschuhe, und kein Staub. Lösen und auffüllen.",
  "Gloves, and no dust. Dissolve, add the acid, make up.":
    "Handschuhe, und kein Staub. Lösen, die Säure zugeben, auffüllen.",
  "Add the acid to the water, dissolve, make up. No ammonium iron(II) sulfate instead: warm alkali would find its ammonia.":
    "Die Säure ins Wasser geben, lösen, auffüllen. Kein Ammoniumeisen(II)-sulfat stattdessen: Warme Lauge fände sein Ammoniak.",
  "Dissolve and make up, fresh. Dark bottle.": "Frisch lösen und auffüllen. Dunkle Flasche.",
  "Gloves, and no dust. Dissolve in deionised water, with a few drops of dilute nitric acid if it is cloudy, and make up.":
    "Handschuhe, und kein Staub. In entionisiertem Wasser lösen, mit einigen Tropfen verdünnter Salpetersäure, wenn es trüb ist, und auffüllen.",
  "Dissolve in warm water, let it stand, pour off from any brown solid, make up. Brown bottle.":
    "In warmem Wasser lösen, stehen lassen, von braunem Feststoff abgießen, auffüllen. Braune Flasche.",
  "Dissolve in warm water, let it stand and cool, pour off from any brown solid; add the acid and make up on the day.":
    "In warmem Wasser lösen, stehen und abkühlen lassen, von braunem Feststoff abgießen; am Tag selbst die Säure zugeben und auffüllen.",
  "Make up on the day. Vented cap, dark, cool.":
    "Am Tag selbst ansetzen. Verschluss, der Gas entweichen lässt, dunkel, kühl.",
  "Add the acid and make up on the day. Vented cap, dark, cool.":
    "Am Tag selbst die Säure zugeben und auffüllen. Verschluss, der Gas entweichen lässt, dunkel, kühl.",
  "Dissolve the iodide in very little water, then the iodine in that, then make up. Fume cupboard; no metal spatula. Brown bottle.":
    "Das Iodid in sehr wenig Wasser lösen, darin das Iod, dann auffüllen. Abzug; kein Metallspatel. Braune Flasche.",
  "Shake with boiled and cooled water, leave overnight, pour off or filter until clear. Keep the bottle full and stoppered: air clouds it. Where a test asks for it weaker, dilute some with boiled and cooled water.":
    "Mit abgekochtem, abgekühltem Wasser schütteln, über Nacht stehen lassen, abgießen oder filtrieren, bis es klar ist. Die Flasche voll und verschlossen halten: Luft trübt es. Wo ein Versuch es schwächer verlangt, etwas davon mit abgekochtem, abgekühltem Wasser verdünnen.",
  "Stir to a paste with a little cold water, pour into boiling water, cool. It keeps for a week.":
    "Mit wenig kaltem Wasser zu einem Brei rühren, in kochendes Wasser gießen, abkühlen lassen. Hält eine Woche.",
  "Buy it, or make it by your employer's own recipe in a fume cupboard, the same day. Keep it stoppered.":
    "Kaufen, oder am selben Tag im Abzug nach der Vorschrift deiner Schule herstellen. Verschlossen halten.",
  "From the still or the ion exchanger.": "Aus der Destille oder dem Ionenaustauscher.",
  "calcium hydroxide (an excess: it saturates)": "Calciumhydroxid (ein Überschuss: Es sättigt)",
  "soluble starch": "lösliche Stärke",

  // Stocks.
  "880 ammonia (35 %, 0.88 g/cm3)": "konzentrierte Ammoniaklösung (35 %, 0.88 g/cm3)",
  "25 % ammonia (0.91 g/cm3)": "Ammoniaklösung 25 % (0.91 g/cm3)",
  "concentrated hydrochloric acid (36 %, 1.18 g/cm3)": "konzentrierte Salzsäure (36 %, 1.18 g/cm3)",
  "concentrated nitric acid (70 %, 1.42 g/cm3)": "konzentrierte Salpetersäure (70 %, 1.42 g/cm3)",
  "concentrated sulfuric acid (98 %, 1.84 g/cm3)": "konzentrierte Schwefelsäure (98 %, 1.84 g/cm3)",
  "glacial ethanoic acid": "Eisessig",
  "100 volume hydrogen peroxide (30 %)": "Wasserstoffperoxid (30 %)",
  "dilute sulfuric acid, 1 mol/dm3": "verdünnte Schwefelsäure, 1 mol/dm3",
  "Fume cupboard, goggles and gloves. Acid into water, never water into acid, a little at a time and stirring.": ACID,
  "Fume cupboard, goggles and gloves. Acid into water, never water into acid, a little at a time and stirring. Cool the mixture: it gets very hot.": `${ACID} Kühle die Mischung: Sie wird sehr heiß.`,
  "Fume cupboard, goggles and gloves. Acid into water, never water into acid, a little at a time and stirring. It is flammable.": `${ACID} Sie ist entzündbar.`,
  "Fume cupboard, goggles and gloves: it fumes and burns. Open the bottle slowly, it may be under pressure.":
    "Abzug, Schutzbrille und Handschuhe: Es dampft und verätzt. Öffne die Flasche langsam, sie kann unter Druck stehen.",
  "Goggles and gloves: it burns skin and eyes. Vented cap, dark and cool.":
    "Schutzbrille und Handschuhe: Es verätzt Haut und Augen. Verschluss, der Gas entweichen lässt, dunkel und kühl.",
  "Goggles: it irritates skin and eyes.": "Schutzbrille: Sie reizt Haut und Augen.",

  // What to mind with an ion or a bottle.
  "Make it the same day in boiled and cooled water: air turns it to iron(III).":
    "Am selben Tag in abgekochtem, abgekühltem Wasser ansetzen: Luft macht Eisen(III) daraus.",
  "If a brown cloud forms, add a few drops of the dilute acid with the same anion, and no more.":
    "Bildet sich eine braune Trübung, einige Tropfen der verdünnten Säure mit demselben Anion zugeben, nicht mehr.",
  "Deionised water. If it is cloudy, a few drops of dilute nitric acid clear it; add them only to a nitrate.":
    "Entionisiertes Wasser. Ist es trüb, klären es einige Tropfen verdünnte Salpetersäure; nur zu einem Nitrat geben.",
  "Deionised water only, and a brown bottle.": "Nur entionisiertes Wasser, und eine braune Flasche.",
  "It is acidic, near pH 3: litmus goes red without any free acid.":
    "Sie ist sauer, etwa pH 3: Lackmus wird auch ohne freie Säure rot.",
  "Brown bottle; throw it away when it is yellow.": "Braune Flasche; wegwerfen, wenn sie gelb ist.",
  "Make it the same day: air turns it to sulfate, and the barium test then misleads.":
    "Am selben Tag ansetzen: Luft macht Sulfat daraus, und dann führt die Bariumprobe irre.",
  "Make it the same day.": "Am selben Tag ansetzen.",
  "0.4 mol/dm3 only irritates, but is too weak to redissolve lead(II) and zinc hydroxides quickly from 0.2 mol/dm3 samples.":
    "0.4 mol/dm3 reizt nur, ist aber zu schwach, um Bleihydroxid und Zinkhydroxid aus Proben von 0.2 mol/dm3 rasch wieder zu lösen.",
  "Old stock holds carbonate, which clouds barium and calcium samples.":
    "Alter Vorrat enthält Carbonat, das Barium- und Calciumproben trübt.",
  "0.4 mol/dm3 only irritates and is enough for the silver and barium tests.":
    "0.4 mol/dm3 reizt nur und genügt für die Silberprobe und die Bariumprobe.",
  "For the technician: acid into water, never water into acid.":
    "Für die Sammlung: Säure ins Wasser, nie Wasser in die Säure.",
  "Distilled or deionised water only: tap water gives a haze of silver chloride.":
    "Nur destilliertes oder entionisiertes Wasser: Leitungswasser gibt einen Schleier von Silberchlorid.",
  "A stricter class (reproduction, genetic damage) was proposed in 2023: look up the present one.":
    "2023 wurde eine strengere Einstufung (Fortpflanzung, Erbgut) vorgeschlagen: Sieh nach, welche jetzt gilt.",
  "Adds chloride: where silver nitrate follows, or silver or lead(II) may be present, take barium nitrate.":
    "Bringt Chlorid mit: Wo Silbernitrat folgt oder Silber oder Blei(II) da sein kann, Bariumnitrat nehmen.",
  "Adds no chloride, so it goes with the silver tests.": "Bringt kein Chlorid mit, passt also zur Silberprobe.",
  "Not above 0.3 mol/dm3: it does not dissolve.": "Nicht über 0.3 mol/dm3: Es löst sich nicht.",
  "Many schools no longer use it: iodide and sulfate tests can take its place.":
    "Viele Schulen nehmen es nicht mehr: Die Proben mit Iodid und Sulfat können es ersetzen.",
  "Make it the same day in boiled, cooled water with a little sulfuric acid: air turns it to iron(III).":
    "Am selben Tag in abgekochtem, abgekühltem Wasser mit etwas Schwefelsäure ansetzen: Luft macht Eisen(III) daraus.",
  "Acidify it for the sulfur dioxide test.": "Für den Nachweis von Schwefeldioxid ansäuern.",
  "Equal volumes of 0.04 mol/dm3 potassium manganate(VII) and 1 mol/dm3 sulfuric acid; never hydrochloric acid, which it can turn to chlorine.":
    "Gleiche Volumen Kaliumpermanganat mit 0.04 mol/dm3 und Schwefelsäure mit 1 mol/dm3; nie Salzsäure, aus der es Chlor machen kann.",
  "Add it by drops: an excess is purple whatever the sample was.":
    "Tropfenweise zugeben: Ein Überschuss ist violett, was immer die Probe war.",
  "Many schools no longer use it: acidified manganate(VII) shows the same reducing agents.":
    "Viele Schulen nehmen es nicht mehr: Angesäuertes Permanganat zeigt dieselben Reduktionsmittel.",
  "In the constants dichromate(VI) is two chromate(VI) with two protons, less water.":
    "In den Konstanten ist Dichromat zweimal Chromat mit zwei Protonen, ohne Wasser.",
  "For each mole of iodine 2.4 mol of potassium iodide, as it is weighed out: without it the iodine would not stay dissolved.":
    "Auf jedes Mol Iod 2.4 mol Kaliumiodid, so wie abgewogen wird: Ohne es bliebe das Iod nicht gelöst.",
  "Make it the same day: air turns it to sulfate.": "Am selben Tag ansetzen: Luft macht Sulfat daraus.",
  "Damp it with distilled water for a gas, and keep it off the glass.":
    "Für ein Gas mit destilliertem Wasser anfeuchten und vom Glas fernhalten.",
  "Rinse what is left and use it again.": "Was übrig ist, spülen und wiederverwenden.",
  "Not tap water: its chloride clouds silver nitrate and its hardness clouds carbonate.":
    "Kein Leitungswasser: Sein Chlorid trübt Silbernitrat, und seine Härte trübt Carbonat.",
  "What is sold is usually a basic carbonate such as 4MgCO3*Mg(OH)2*5H2O.":
    "Verkauft wird meist ein basisches Carbonat wie 4MgCO3*Mg(OH)2*5H2O.",
  "0.1 mol/dm3 keeps it in the irritant band; 0.2 mol/dm3 would not.":
    "Mit 0.1 mol/dm3 bleibt es bei reizend; mit 0.2 mol/dm3 nicht.",
  "0.1 mol/dm3 keeps it in the irritant band.": "Mit 0.1 mol/dm3 bleibt es bei reizend.",
  "Also sold with 18 water: read the bottle before weighing.":
    "Auch mit 18 Wasser im Handel: Vor dem Wiegen das Etikett lesen.",
  "Never use the anhydrous solid: it reacts violently with water.":
    "Nie den wasserfreien Feststoff nehmen: Er reagiert heftig mit Wasser.",
  "What is sold is usually a basic carbonate.": "Verkauft wird meist ein basisches Carbonat.",
  "What is sold as copper(II) carbonate is this basic carbonate.":
    "Was als Kupfer(II)-carbonat verkauft wird, ist dieses basische Carbonat.",
  "Keeps better than iron(II) sulfate; also gives the test for ammonium.":
    "Haltbarer als Eisen(II)-sulfat; gibt auch die Probe auf Ammonium.",
  "The green form; it dissolves slowly.": "Die grüne Form; sie löst sich langsam.",

  // Where a note is from.
  "common practice, no source": "übliche Praxis, keine Quelle",
  "from memory of the trade": "aus der Praxis, aus dem Gedächtnis",
  "reagent list, from memory": "Liste der Reagenzien, aus dem Gedächtnis",
  "store list, from memory": "Liste der Sammlung, aus dem Gedächtnis",

  // What a strength does.
  "low hazard": "geringe Gefahr",
  "below its limits": "unter ihren Grenzen",
  "names no limit": "nennt keine Grenze",
  "burns skin and damages eyes": "verätzt die Haut und schädigt die Augen",
  "damages eyes and irritates skin": "schädigt die Augen und reizt die Haut",
  "damages eyes": "schädigt die Augen",
  "damages eyes, harmful if swallowed": "schädigt die Augen, gesundheitsschädlich beim Verschlucken",
  "harmful if swallowed or on skin": "gesundheitsschädlich beim Verschlucken oder auf der Haut",
  "harmful if swallowed": "gesundheitsschädlich beim Verschlucken",
  "harmful if swallowed, irritates eyes": "gesundheitsschädlich beim Verschlucken, reizt die Augen",
  "harmful if swallowed, irritates skin and eyes": "gesundheitsschädlich beim Verschlucken, reizt Haut und Augen",
  harmful: "gesundheitsschädlich",
  "irritates eyes": "reizt die Augen",
  "irritates skin and eyes": "reizt Haut und Augen",
  "irritates skin, eyes and throat": "reizt Haut, Augen und Rachen",
  "may damage organs with repeated use": "kann bei wiederholtem Umgang Organe schädigen",
  "may harm the thyroid with repeated use": "kann bei wiederholtem Umgang der Schilddrüse schaden",
  "toxic if swallowed": "giftig beim Verschlucken",
  toxic: "giftig",
  "can cause cancer": "kann Krebs auslösen",
  "can cause cancer and skin allergy": "kann Krebs und Hautallergien auslösen",
  "can cause cancer and genetic damage": "kann Krebs und Schäden am Erbgut auslösen",
  "can cause cancer, genetic damage and skin allergy": "kann Krebs, Schäden am Erbgut und Hautallergien auslösen",
  "can cause cancer and genetic damage and allergy of skin and lungs":
    "kann Krebs, Schäden am Erbgut und Allergien von Haut und Lunge auslösen",
  "can harm an unborn child": "kann ungeborenen Kindern schaden",
  "can harm an unborn child, damages organs with repeated use":
    "kann ungeborenen Kindern schaden, schädigt bei wiederholtem Umgang Organe",
  "can cause cancer and allergy": "kann Krebs und Allergien auslösen",

  // What is to be said of a source.
  "class of the solid or gas, with the general limits for mixtures":
    "Einstufung des Feststoffs oder Gases, mit den allgemeinen Grenzen für Gemische",
  "class of the solid or gas, with the general limits for mixtures; the class itself was read, and a stricter one was proposed in 2023":
    "Einstufung des Feststoffs oder Gases, mit den allgemeinen Grenzen für Gemische; die Einstufung selbst ist gelesen, und 2023 wurde eine strengere vorgeschlagen",
  "older issue; a newer one says 2.7 mol/dm3": "ältere Ausgabe; eine neuere nennt 2.7 mol/dm3",
  "general limits below 5 %": "unter 5 % die allgemeinen Grenzen",
  "quoted second-hand": "aus zweiter Hand",
  "gives 0.1 mol/dm3 and says only that it stains skin": "nennt 0.1 mol/dm3 und sagt nur, dass es die Haut verfärbt",
  "by older rules": "nach älteren Regeln",
  "by calculation from 100 mg/kg": "gerechnet aus 100 mg/kg",
  "as for barium chloride": "wie für Bariumchlorid",
  "by calculation not classed at 2.6 %": "nach Rechnung bei 2.6 % nicht eingestuft",
  "some suppliers only": "nur manche Lieferanten",
  "saturated; the undissolved solid is worse": "gesättigt; der ungelöste Feststoff ist schlimmer",
  "an older card": "eine ältere Karte",
  "older issue": "ältere Ausgabe",

  // First aid.
  "Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help. Skin: wash off. Swallowed: rinse the mouth and drink some water.": `${EYES} Haut: abwaschen. Verschluckt: Mund ausspülen und etwas Wasser trinken.`,
  "Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help. Skin: wash off. Swallowed: rinse the mouth and sip water.": `${EYES} Haut: abwaschen. Verschluckt: Mund ausspülen und Wasser in kleinen Schlucken trinken.`,
  "Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help. Skin: take off wet clothing and rinse for at least twenty minutes. Swallowed: rinse the mouth, do not cause vomiting, get medical help.": `${EYES} Haut: nasse Kleidung ausziehen und mindestens zwanzig Minuten spülen. Verschluckt: Mund ausspülen, kein Erbrechen herbeiführen, ärztliche Hilfe holen.`,
  "Swallowed: rinse the mouth, give water and get medical help at once, with the label. Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help. Skin: rinse with plenty of water. Wash hands after use.": `Verschluckt: Mund ausspülen, Wasser geben und sofort ärztliche Hilfe holen, mit dem Etikett. ${EYES} Haut: mit viel Wasser spülen. Nach Gebrauch Hände waschen.`,
  "Go into fresh air. Eyes: gently running water at once, lids held open, for at least twenty minutes, while your teacher gets medical help. Get help if breathing suffers.": `An die frische Luft gehen. ${EYES} Hilfe holen, wenn das Atmen schwerfällt.`,
};

/** A sentence of the constants as this language says it. */
export const saidOnSheet = (text: string): string => SAID[text] ?? text;
/** Where a hazard begins. */
export const limitFrom = (words: string, molPerDm3: number, asPrinted: string) =>
  `${words} ab ${molPerDm3} mol/dm3${asPrinted}`;
/** What something besides the tests is made up for. */
export const forIt = (what: string) => `Für: ${what}.`;
export const THIS_PAPER = "diese Aufgabe";
export const smallPieceOf = (name: string) => `kleines Stück ${name}`;
export const asSolid = (name: string) => `${name}, Feststoff`;
