/** What reagents and gases can do to a person, by the English of the constants. */

const VERY_TOXIC_GAS =
  "Verdünnt wenig gefährlich. Nicht erwärmen, keine starke Säure dazu: Ein sehr giftiges Gas kann entstehen.";
const SETS_SO2_FREE =
  "An sich wenig gefährlich. Säure setzt Schwefeldioxid frei: giftig, und es kann einen Asthmaanfall auslösen.";
const irritating = (name: string) =>
  `${name} reizt Augen und Lunge und kann Asthma auslösen. Halte den Raum gut gelüftet und das Gesicht vom Glas weg.`;

export const HAZARDS: Readonly<Record<string, string>> = {
  // Reagents.
  "Burns skin and damages eyes: wear goggles.": "Verätzt die Haut und schädigt die Augen: Schutzbrille tragen.",
  "Spurts when heated.": "Spritzt beim Erhitzen.",
  "Treat as damaging to eyes and irritating to skin: wear goggles.":
    "Als schädlich für die Augen und reizend für die Haut behandeln: Schutzbrille tragen.",
  "The vapour irritates eyes, nose and lungs: keep the bottle closed, ventilate the room.":
    "Die Dämpfe reizen Augen, Nase und Lunge: Flasche geschlossen halten, Raum lüften.",
  "Low hazard at this strength; it still stings in eyes and cuts, so wear eye protection.":
    "Bei dieser Konzentration wenig gefährlich; brennt trotzdem in Augen und Wunden, deshalb Augenschutz tragen.",
  "Irritates skin and eyes; what dries up on skin or cloth grows strong and burns.":
    "Reizt Haut und Augen; was auf Haut oder Kleidung eintrocknet, wird stark und verätzt.",
  "Low hazard at this strength; wear eye protection.": "Bei dieser Konzentration wenig gefährlich; Augenschutz tragen.",
  "Irritates eyes and skin; stains skin and cloth brown.": "Reizt Augen und Haut; färbt Haut und Kleidung braun.",
  "Very toxic to water life.": "Sehr giftig für Wasserorganismen.",
  "Toxic to water life.": "Giftig für Wasserorganismen.",
  "Treat as toxic if swallowed: nothing near the mouth, wash hands.":
    "Als giftig beim Verschlucken behandeln: nichts in die Nähe des Mundes, Hände waschen.",
  "Treat as toxic if swallowed.": "Als giftig beim Verschlucken behandeln.",
  "The solid is toxic if swallowed: technician only.":
    "Der Feststoff ist beim Verschlucken giftig: nur für die Sammlung.",
  "The solid is harmful if swallowed and an oxidiser: technician only.":
    "Der Feststoff ist beim Verschlucken gesundheitsschädlich und brandfördernd: nur für die Sammlung.",
  "Some suppliers name harm to the thyroid with repeated use; school sheets call it low hazard. Stains when it meets an oxidiser.":
    "Einige Lieferanten nennen Schäden der Schilddrüse bei wiederholtem Kontakt; Schulblätter nennen es wenig gefährlich. Färbt, wenn es auf ein Oxidationsmittel trifft.",
  "Can cause cancer and genetic damage; can cause skin allergy: gloves, dropper bottle, smallest amount.":
    "Kann Krebs und Erbgutschäden auslösen; kann Hautallergien auslösen: Handschuhe, Tropfflasche, kleinste Menge.",
  "Irritates eyes: wear eye protection.": "Reizt die Augen: Augenschutz tragen.",
  "Low hazard when dilute. Do not warm it, add no strong acid: a very toxic gas can form.": VERY_TOXIC_GAS,
  "Low hazard when dilute.": "Verdünnt wenig gefährlich.",
  "Low hazard itself. Acid sets free sulfur dioxide: toxic, and it can bring on an asthma attack.": SETS_SO2_FREE,
  "Can harm an unborn child; damages organs with repeated use: gloves, smallest amount, wash hands.":
    "Kann das Kind im Mutterleib schädigen; schädigt bei wiederholtem Kontakt Organe: Handschuhe, kleinste Menge, Hände waschen.",
  "Low hazard at this strength; stains skin and cloth brown.":
    "Bei dieser Konzentration wenig gefährlich; färbt Haut und Kleidung braun.",
  "Irritates skin and eyes (0.5 mol/dm3 sulfuric acid is in it); stains skin and cloth brown.":
    "Reizt Haut und Augen (enthält Schwefelsäure, 0.5 mol/dm3); färbt Haut und Kleidung braun.",
  "Can cause cancer and genetic damage, harm an unborn child and cause allergy of skin and lungs: gloves, dropper bottle, smallest amount.":
    "Kann Krebs und Erbgutschäden auslösen, das Kind im Mutterleib schädigen und Allergien von Haut und Lunge auslösen: Handschuhe, Tropfflasche, kleinste Menge.",
  "Treat as toxic if swallowed. The sulfuric acid in it (0.5 mol/dm3) irritates skin and eyes.":
    "Als giftig beim Verschlucken behandeln. Die Schwefelsäure darin (0.5 mol/dm3) reizt Haut und Augen.",
  "The solid is toxic if swallowed and an oxidiser: technician only.":
    "Der Feststoff ist beim Verschlucken giftig und brandfördernd: nur für die Sammlung.",
  "Irritates skin and eyes (0.5 mol/dm3 sulfuric acid is in it): wear eye protection.":
    "Reizt Haut und Augen (enthält Schwefelsäure, 0.5 mol/dm3): Augenschutz tragen.",
  "Gives off chlorine, toxic to breathe: fume cupboard or a well-ventilated room; not near asthmatics.":
    "Gibt Chlor ab, beim Einatmen giftig: Abzug oder ein gut gelüfteter Raum; nicht in der Nähe von Menschen mit Asthma.",
  "Low hazard.": "Wenig gefährlich.",
  "Treat as irritating to eyes: it is alkaline, about pH 12.":
    "Als reizend für die Augen behandeln: alkalisch, etwa pH 12.",
  "The undissolved solid damages eyes.": "Der ungelöste Feststoff schädigt die Augen.",
  "Can cause cancer and allergy: tongs or gloves. Acidified manganate(VII) does the same job.":
    "Kann Krebs und Allergien auslösen: Pinzette oder Handschuhe. Angesäuertes Permanganat leistet dasselbe.",
  "Can cause cancer and allergy: do not touch it with fingers; wash hands.":
    "Kann Krebs und Allergien auslösen: nicht mit den Fingern anfassen; Hände waschen.",
  "Flammable if made up in ethanol: away from flames.":
    "Entzündbar, wenn mit Ethanol angesetzt: von Flammen fernhalten.",
  "Damages eyes, irritates skin, harmful if swallowed: wear goggles.":
    "Schädigt die Augen, reizt die Haut, gesundheitsschädlich beim Verschlucken: Schutzbrille tragen.",
  "Low hazard as foil. In warm alkali it froths and sprays: small pieces, boiling tube, take it off the flame once it starts.":
    "Als Folie wenig gefährlich. In warmer Lauge schäumt und sprüht es: kleine Stücke, großes Glas, von der Flamme nehmen, sobald es anfängt.",
  "Low hazard as granules. With acid it gives off hydrogen: keep flames away except for the splint.":
    "Als Granalien wenig gefährlich. Mit Säure entwickelt es Wasserstoff: Flammen fernhalten, außer dem Span.",
  "No hazard.": "Nicht gefährlich.",

  // Gases.
  "Chlorine is toxic and hurts eyes and lungs. Keep the room well aired and your face away, never mix it with ammonia, and empty the tube as soon as you have looked.":
    "Chlor ist giftig und greift Augen und Lunge an. Halte den Raum gut gelüftet und das Gesicht weg, misch es nie mit Ammoniak, und leere das Glas, sobald du hingesehen hast.",
  "Nitrogen dioxide is very toxic and harms the lungs hours later. Use a fume cupboard or only a pinch in a well aired room, and do not smell it.":
    "Stickstoffdioxid ist sehr giftig und schädigt die Lunge noch Stunden später. Arbeite im Abzug oder nur mit einer Prise in einem gut gelüfteten Raum, und riech nicht daran.",
  "Sulfur trioxide is a toxic, choking white smoke that burns like the sulfuric acid it turns to. Fume cupboard only, the least amount, and stop heating when the smoke comes; anyone with asthma stays away.":
    "Schwefeltrioxid ist ein giftiger, erstickender weißer Rauch, der ätzt wie die Schwefelsäure, zu der er wird. Nur im Abzug, die kleinste Menge, und hör mit dem Erhitzen auf, wenn der Rauch kommt; wer Asthma hat, bleibt fern.",
  "Hydrogen sulfide is very toxic, and where there is most of it the nose no longer smells it. Fume cupboard only, the least amount, and do not smell it.":
    "Schwefelwasserstoff ist sehr giftig, und wo am meisten davon ist, riecht die Nase nichts mehr. Nur im Abzug, so wenig wie möglich, und nicht daran riechen.",
  "Bromine vapour is very toxic and burns eyes and lungs. Fume cupboard only, and do not smell it.":
    "Bromdampf ist sehr giftig und verätzt Augen und Lunge. Nur im Abzug, und riech nicht daran.",
  "Iodine vapour is harmful and hurts eyes and lungs. Use a fume cupboard, or only a pinch or a few drops in a well aired room, and let it settle on the cool wall.":
    "Ioddampf ist gesundheitsschädlich und greift Augen und Lunge an. Arbeite im Abzug, oder nur mit einer Prise oder ein paar Tropfen in einem gut gelüfteten Raum, und lass ihn sich an der kühlen Wand absetzen.",
  "Hydrogen bromide hurts eyes and lungs and can set off asthma. Keep the room well aired and your face away from the tube.":
    irritating("Bromwasserstoff"),
  "Hydrogen iodide hurts eyes and lungs and can set off asthma. Keep the room well aired and your face away from the tube.":
    irritating("Iodwasserstoff"),
  "Hydrogen chloride hurts eyes and lungs and can set off asthma. Keep the room well aired and your face away from the tube.":
    irritating("Chlorwasserstoff"),
  "Sulfur dioxide is toxic and can set off asthma. Use a fume cupboard or an open window and a tiny amount; anyone with asthma stays away from this test.":
    "Schwefeldioxid ist giftig und kann Asthma auslösen. Arbeite im Abzug oder am offenen Fenster und mit einer winzigen Menge; wer Asthma hat, bleibt diesem Versuch fern.",
  "Ammonia hurts eyes and lungs. Test it with damp litmus, never with your nose.":
    "Ammoniak greift Augen und Lunge an. Prüfe es mit feuchtem Lackmuspapier, nie mit der Nase.",
  "Hydrogen burns with a pop. Move flammable liquids away. Test only a tube-full, with the lighted splint at the mouth and your face away.":
    "Wasserstoff verbrennt mit einem Knall. Stell entzündbare Flüssigkeiten weg. Prüfe nur ein Glas voll, mit dem brennenden Span an der Mündung und dem Gesicht weg.",
  "Oxygen makes things burn fiercely. Move flammable liquids away. Take the splint out as soon as it relights and do not drop it into the tube.":
    "Sauerstoff lässt Dinge heftig brennen. Stell entzündbare Flüssigkeiten weg. Zieh den Span heraus, sobald er aufflammt, und lass ihn nicht in das Glas fallen.",
  "Fizzing can carry acid out of the tube. Add the acid a little at a time.":
    "Beim Sprudeln kann Säure aus dem Glas mitgerissen werden. Gib die Säure immer nur wenig zu.",
  "Water that runs back cracks hot glass. When a dry solid is heated, keep the mouth of its tube a little lower than the bottom.":
    "Zurücklaufendes Wasser sprengt heißes Glas. Wird ein trockener Feststoff erhitzt, halte die Mündung des Glases etwas tiefer als den Boden.",

  // What stands ready for them.
  "damp blue litmus paper and an open window or a fume cupboard":
    "feuchtes blaues Lackmuspapier und ein offenes Fenster oder ein Abzug",
  "a fume cupboard or an open window, and white paper behind the tube":
    "ein Abzug oder ein offenes Fenster, und weißes Papier hinter dem Glas",
  "a fume cupboard": "ein Abzug",
  "a fume cupboard, and white paper behind the tube": "ein Abzug, und weißes Papier hinter dem Glas",
  "damp blue litmus paper": "feuchtes blaues Lackmuspapier",
  "damp red litmus paper": "feuchtes rotes Lackmuspapier",
  "acidified manganate(VII) paper": "Papier mit angesäuertem Permanganat",
  "a lighted splint": "ein brennender Span",
  "a glowing splint": "ein glimmender Span",
  limewater: "Kalkwasser",
  "a little anhydrous copper(II) sulfate": "ein wenig wasserfreies Kupfersulfat",
};
