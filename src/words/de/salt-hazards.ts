/** What is said of the salts of a store, by the English of its row. The wording follows that row and its source. */
export const SALT_HAZARDS: Readonly<Record<string, string>> = {
  "Low hazard.": "Geringe Gefahr.",
  "The solid is harmful if swallowed and irritates skin and eyes.":
    "Der Feststoff ist gesundheitsschädlich beim Verschlucken und reizt Haut und Augen.",
  "Low hazard; some suppliers call the solid an eye irritant.":
    "Geringe Gefahr; manche Lieferanten nennen den Feststoff augenreizend.",
  "Low hazard; some suppliers name harm to the thyroid and to water life.":
    "Geringe Gefahr; manche Lieferanten nennen Schaden für die Schilddrüse und für Wasserorganismen.",
  "The solid is an oxidiser and irritates eyes: keep it from anything that burns.":
    "Der Feststoff ist brandfördernd und reizt die Augen: von allem Brennbaren fernhalten.",
  "The solid is an oxidiser: keep it from anything that burns.":
    "Der Feststoff ist brandfördernd: von allem Brennbaren fernhalten.",
  "The solid is toxic if swallowed and an oxidiser. Brown, toxic fumes with acid: small scale, ventilate.":
    "Der Feststoff ist giftig beim Verschlucken und brandfördernd. Mit Säure braune, giftige Dämpfe: kleine Mengen, lüften.",
  "Low hazard itself. Acid sets free sulfur dioxide, which is toxic and can bring on an asthma attack.":
    "Selbst geringe Gefahr. Säure setzt Schwefeldioxid frei, das giftig ist und einen Asthmaanfall auslösen kann.",
  "The solid irritates eyes; solutions below 0.8 mol/dm3 are low hazard.":
    "Der Feststoff reizt die Augen; Lösungen unter 0.8 mol/dm3 sind von geringer Gefahr.",
  "The solid irritates skin, eyes and throat; solutions below 0.8 mol/dm3 are low hazard.":
    "Der Feststoff reizt Haut, Augen und Rachen; Lösungen unter 0.8 mol/dm3 sind von geringer Gefahr.",
  "Harmful if swallowed, irritates eyes; harm to unborn children is under discussion.":
    "Gesundheitsschädlich beim Verschlucken, reizt die Augen; Schaden für ungeborene Kinder wird erörtert.",
  "Can cause cancer, genetic damage and skin allergy; low hazard only below 0.01 mol/dm3. Gloves, smallest amounts.":
    "Kann Krebs, Schäden am Erbgut und Hautallergien auslösen; geringe Gefahr erst unter 0.01 mol/dm3. Handschuhe, kleinste Mengen.",
  "The solid is harmful if swallowed and irritates eyes.":
    "Der Feststoff ist gesundheitsschädlich beim Verschlucken und reizt die Augen.",
  "The solid is an oxidiser, irritates eyes and can explode: never heat the solid in class.":
    "Der Feststoff ist brandfördernd, reizt die Augen und kann explodieren: Erhitze ihn nie in der Klasse.",
  "Harmful if swallowed; gives off ammonia that irritates eyes and throat.":
    "Gesundheitsschädlich beim Verschlucken; gibt Ammoniak ab, das Augen und Rachen reizt.",
  "The solid is an oxidiser; solutions below 0.5 mol/dm3 are low hazard.":
    "Der Feststoff ist brandfördernd; Lösungen unter 0.5 mol/dm3 sind von geringer Gefahr.",
  "The solid irritates eyes, and so do solutions from 0.9 mol/dm3.":
    "Der Feststoff reizt die Augen, Lösungen ab 0.9 mol/dm3 auch.",
  "Damages eyes from 0.15 mol/dm3, irritates from 0.05 mol/dm3; the solid is an oxidiser.":
    "Schädigt die Augen ab 0.15 mol/dm3, reizt ab 0.05 mol/dm3; der Feststoff ist brandfördernd.",
  "The solid is toxic if swallowed; treat the solution as harmful and wash hands.":
    "Der Feststoff ist giftig beim Verschlucken; behandle die Lösung als gesundheitsschädlich und wasch dir die Hände.",
  "The solid is toxic if swallowed and an oxidiser; treat the solution as harmful and wash hands.":
    "Der Feststoff ist giftig beim Verschlucken und brandfördernd; behandle die Lösung als gesundheitsschädlich und wasch dir die Hände.",
  "Harmful if swallowed: stomach acid dissolves it.":
    "Gesundheitsschädlich beim Verschlucken: Die Säure im Magen löst es.",
  "Damages eyes from 0.1 mol/dm3, irritates from 0.03 mol/dm3. The solution is acidic, about pH 3.":
    "Schädigt die Augen ab 0.1 mol/dm3, reizt ab 0.03 mol/dm3. Die Lösung ist sauer, etwa pH 3.",
  "The solid is an oxidiser and irritates or damages eyes; solutions irritate from 0.5 mol/dm3.":
    "Der Feststoff ist brandfördernd und reizt oder schädigt die Augen; Lösungen reizen ab 0.5 mol/dm3.",
  "The solid irritates skin and eyes, and so do solutions from 0.8 mol/dm3.":
    "Der Feststoff reizt Haut und Augen, Lösungen ab 0.8 mol/dm3 auch.",
  "The solid damages eyes and is harmful if swallowed. Treat solutions from 0.19 mol/dm3 as damaging to eyes.":
    "Der Feststoff schädigt die Augen und ist gesundheitsschädlich beim Verschlucken. Behandle Lösungen ab 0.19 mol/dm3 als schädlich für die Augen.",
  "The solid burns skin; solutions burn from 0.7 and irritate from 0.3 mol/dm3.":
    "Der Feststoff verätzt die Haut; Lösungen verätzen ab 0.7 und reizen ab 0.3 mol/dm3.",
  "The solid is an oxidiser, harmful if swallowed, and irritates skin and eyes.":
    "Der Feststoff ist brandfördernd, gesundheitsschädlich beim Verschlucken und reizt Haut und Augen.",
  "Low hazard; harms water life.": "Geringe Gefahr; schadet Wasserorganismen.",
  "Damages eyes from 0.2 mol/dm3, irritates from 0.02 mol/dm3, harmful if swallowed from 1.0 mol/dm3.":
    "Schädigt die Augen ab 0.2 mol/dm3, reizt ab 0.02 mol/dm3, gesundheitsschädlich beim Verschlucken ab 1.0 mol/dm3.",
  "The solid is harmful if swallowed; solutions irritate from 0.8 mol/dm3.":
    "Der Feststoff ist gesundheitsschädlich beim Verschlucken; Lösungen reizen ab 0.8 mol/dm3.",
  "Damages eyes from 0.15 mol/dm3, irritates from 0.05 mol/dm3.":
    "Schädigt die Augen ab 0.15 mol/dm3, reizt ab 0.05 mol/dm3.",
  "Harmful if swallowed, irritates eyes, harms water life.":
    "Gesundheitsschädlich beim Verschlucken, reizt die Augen, schadet Wasserorganismen.",
  "Harmful if swallowed, irritates, harms water life.":
    "Gesundheitsschädlich beim Verschlucken, reizt, schadet Wasserorganismen.",
  "The solid irritates skin and eyes.": "Der Feststoff reizt Haut und Augen.",
  "The solid damages eyes and is harmful if swallowed.":
    "Der Feststoff schädigt die Augen und ist gesundheitsschädlich beim Verschlucken.",
  "The solid damages eyes and is harmful if swallowed; solutions irritate from about 0.2 mol/dm3.":
    "Der Feststoff schädigt die Augen und ist gesundheitsschädlich beim Verschlucken; Lösungen reizen ab etwa 0.2 mol/dm3.",
  "The solid is an oxidiser and irritates skin and eyes.": "Der Feststoff ist brandfördernd und reizt Haut und Augen.",
  "Can harm an unborn child and damages organs with repeated use; a reproductive hazard from 0.01 mol/dm3. Students get the solution only.":
    "Kann ungeborenen Kindern schaden und schädigt bei wiederholtem Umgang Organe; fortpflanzungsgefährdend ab 0.01 mol/dm3. Die Klasse bekommt nur die Lösung.",
  "Can harm an unborn child and damages organs with repeated use. In many places for the teacher only.":
    "Kann ungeborenen Kindern schaden und schädigt bei wiederholtem Umgang Organe. Vielerorts nur für die Lehrkraft.",
  "The solid burns skin and eyes and is an oxidiser; solutions irritate from about 0.06 and damage eyes from about 0.18 mol/dm3. Stains.":
    "Der Feststoff verätzt Haut und Augen und ist brandfördernd; Lösungen reizen ab etwa 0.06 und schädigen die Augen ab etwa 0.18 mol/dm3. Macht Flecken.",
  "The solid damages organs with repeated use; solutions below 0.7 mol/dm3 are low hazard.":
    "Der Feststoff schädigt bei wiederholtem Umgang Organe; Lösungen unter 0.7 mol/dm3 sind von geringer Gefahr.",
  "The solid is harmful or toxic if swallowed; solutions below 1.5 mol/dm3 are low hazard.":
    "Der Feststoff ist gesundheitsschädlich oder giftig beim Verschlucken; Lösungen unter 1.5 mol/dm3 sind von geringer Gefahr.",
  "Low hazard below 0.4 mol/dm3, irritates above.": "Geringe Gefahr unter 0.4 mol/dm3, darüber reizend.",
  "The solid is harmful if swallowed and can cause skin allergy.":
    "Der Feststoff ist gesundheitsschädlich beim Verschlucken und kann Hautallergien auslösen.",
  "Can cause cancer and allergy: avoid as a class sample.":
    "Kann Krebs und Allergien auslösen: als Probe für eine Klasse meiden.",
};
