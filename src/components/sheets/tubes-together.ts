/** Tubes by part, for a card on which room is short: "a: P Q; h watch glass: P". What is no tube of a sample, "used papers", stays as it is. */
export function tubesTogether(labels: readonly string[]): string[] {
  const letters = new Map<string, string[]>();
  for (const label of labels) {
    const [, sample, part] = /^([A-Z]) (.+)$/.exec(label) ?? [undefined, undefined, label];
    letters.set(part, [...(letters.get(part) ?? []), ...(sample === undefined ? [] : [sample])]);
  }
  return [...letters].map(([part, samples]) => (samples.length > 0 ? `${part}: ${samples.join(" ")}` : part));
}
