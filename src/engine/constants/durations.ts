/**
 * How long a practised student's hands are busy with each thing, and how long a tube is left alone. Planning figures, in minutes and quarters
 * of them. No source gives single actions: they were chosen so that whole tests take what is planned for them (few drops and excess
 * with a written observation 2 to 3 min, ammonia test 3 to 4, nitrate with foil 5 to 8, silver or barium with acid 2 to 3, carbonate with
 * limewater 3 to 4, a heated solid looked at cold 5 to 8, flame 3 to 4, filtering 4 to 6; all of it common practice, no source).
 */
export interface DurationRow {
  minutes: number;
  source: string;
}

const COMMON = "common practice, no source";
const part = (of: string) => `${COMMON}: part of ${of}`;

export const DURATIONS = {
  /** Read the whole sheet, plan, label the tubes and mark them. */
  plan: { minutes: 10, source: `${COMMON}: the first ten minutes of a practical` },
  clearUp: { minutes: 5, source: COMMON },
  takeSolution: { minutes: 0.5, source: part("a test with drops, 2 to 3 min") },
  takeSolid: { minutes: 0.5, source: part("a heated solid, 5 to 8 min") },
  addDrops: { minutes: 0.5, source: part("a test with drops, 2 to 3 min") },
  addVolume: { minutes: 0.5, source: part("a silver or barium test, 2 to 3 min") },
  addInExcess: { minutes: 0.75, source: part("a test with drops and excess, 2 to 3 min") },
  addPieces: { minutes: 0.5, source: part("the nitrate test with foil, 5 to 8 min") },
  shake: { minutes: 0.25, source: COMMON },
  warm: { minutes: 1.5, source: part("the ammonia test, 3 to 4 min") },
  /** Before the minutes of boiling that the paper asks for. */
  bringToBoil: { minutes: 0.5, source: part("the nitrate test with ammonia boiled off first, 5 to 8 min") },
  heatGently: { minutes: 1.5, source: part("a heated solid, 5 to 8 min") },
  heatStrongly: { minutes: 2, source: part("a heated solid, 5 to 8 min") },
  /** Left to itself until it can be held. */
  cool: { minutes: 2, source: part("a heated solid looked at cold, 5 to 8 min") },
  gasAtMouth: { minutes: 0.5, source: part("the ammonia test, 3 to 4 min") },
  /** Drawn up with a dropper and bubbled through, two or three times. */
  gasByDropper: { minutes: 1.5, source: part("a carbonate with limewater, 3 to 4 min") },
  leadThrough: { minutes: 2, source: part("a carbonate with limewater, 3 to 4 min") },
  indicator: { minutes: 0.5, source: COMMON },
  /** Wire cleaned until it gives no colour. */
  cleanWire: { minutes: 1.5, source: part("a flame test, 3 to 4 min") },
  flame: { minutes: 1, source: part("a flame test, 3 to 4 min") },
  /** Paper folded and wetted, liquid poured on. */
  pourOnFilter: { minutes: 0.75, source: part("filtering 5 cm3, 4 to 6 min") },
  runThrough: { minutes: 4, source: part("filtering 5 cm3, 4 to 6 min") },
  wash: { minutes: 1.5, source: COMMON },
  /** One line of the record. */
  writeDown: { minutes: 0.5, source: part("a test with drops and a written observation, 2 to 3 min") },
  /** A used tube emptied and rinsed for another part. */
  rinse: { minutes: 0.5, source: COMMON },
} as const satisfies Record<string, DurationRow>;
