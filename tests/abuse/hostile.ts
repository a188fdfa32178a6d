/** What somebody might put where a text is expected: markup, names of the language, text that is endless, broken or turned about. */
import fc from "fast-check";

/** Of each kind one; sizes are those a link or a file could carry. */
export const HOSTILE: readonly string[] = [
  "<script>globalThis.ran = 1</script>",
  '"><img src=x onerror="globalThis.ran = 1">',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: the point is that nobody fills it in
  "${globalThis.ran = 1}",
  "{{constructor.constructor('globalThis.ran = 1')()}}",
  "javascript:globalThis.ran=1",
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "../../../etc/passwd",
  "%00",
  "%E0%A4%A",
  "\u0000",
  "\ud800",
  "\u202Eetihw\u202C",
  "white\u200bprecipitate",
  "ﬁne ﬆate",
  "−1e309",
  "1e309",
  "NaN",
  "0x1F",
  "١٢٣",
  "²",
  "(".repeat(5_000),
  "[{".repeat(2_500),
  "a ".repeat(5_000),
  "\n".repeat(5_000),
  "é".repeat(5_000),
  "'\"`\\".repeat(1_000),
  "-".repeat(5_000),
  "9".repeat(5_000),
];

/** One of these, a text at random, or both together. */
export const anyText = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: "binary", maxLength: 200 }),
  fc.string({ unit: "grapheme", maxLength: 80 }),
  fc.tuple(fc.string({ maxLength: 20 }), fc.constantFrom(...HOSTILE)).map(([one, other]) => one + other),
);

/** A text with one of these put in at some place, or a piece of it taken out. */
export const spoilt = (text: string) =>
  fc
    .tuple(fc.nat(text.length), fc.nat(40), fc.oneof(fc.constant(""), anyText))
    .map(([at, length, put]) => text.slice(0, at) + put + text.slice(at + length));

/** Nothing that was read has run, or has changed what all objects share. */
export function untouched(): boolean {
  const shared = {} as Record<string, unknown>;
  return !("ran" in globalThis) && shared.found === undefined && shared.name === undefined;
}
