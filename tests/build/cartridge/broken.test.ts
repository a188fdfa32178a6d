/** Cartridges that are broken, foreign or hostile: a clear message, bounded work, never a stack. */
import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { CartridgeFault } from "../../../src/build/cartridge/cartridge-fault.ts";
import { readCartridge } from "../../../src/build/cartridge/read-cartridge.ts";
import { DEEPEST, MOST_ELEMENTS, readXml } from "../../../src/build/cartridge/read-xml.ts";
import { BOUNDS } from "../../../src/build/cartridge/unpack.ts";
import { writeCartridge } from "../../../src/build/cartridge/write-cartridge.ts";
import { AWKWARD } from "./courses.ts";

const good = writeCartridge(AWKWARD);
const CP = "http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1";

const pack = (files: Record<string, string>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));

/** A manifest of our making with something wrong in it. */
const manifest = ({
  namespace = CP,
  version = "1.3.0",
  items = "",
  resources = "",
  organizations = 1,
}: {
  namespace?: string;
  version?: string;
  items?: string;
  resources?: string;
  organizations?: number;
}) =>
  `<manifest identifier="m" xmlns="${namespace}"><metadata><schema>IMS Common Cartridge</schema><schemaversion>${version}</schemaversion></metadata><organizations>${`<organization identifier="o" structure="rooted-hierarchy"><item identifier="r">${items}</item></organization>`.repeat(organizations)}</organizations><resources>${resources}</resources></manifest>`;
const folder = (inner: string) => `<item identifier="f"><title>Folder</title>${inner}</item>`;
const leaf = (to: string) => `<item identifier="i" identifierref="${to}"><title>One</title></item>`;
const link = '<resource identifier="l" type="imswl_xmlv1p3"><file href="l.xml"/></resource>';

const NOT_REFUSED = "nothing was refused";

/** The message of the refusal. */
async function refusal(bytes: Uint8Array): Promise<string> {
  try {
    await readCartridge(bytes);
  } catch (error) {
    expect(error).toBeInstanceOf(CartridgeFault);
    return (error as CartridgeFault).message;
  }
  return NOT_REFUSED;
}

/** A copy with the bytes at a signature changed. */
function patched(bytes: Uint8Array, signature: number, offset: number, change: (view: DataView, at: number) => void) {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at < copy.length - 4; at++) {
    if (view.getUint32(at, true) === signature) change(view, at + offset);
  }
  return copy;
}
const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;

describe("archives", () => {
  test.each([
    ["nothing", new Uint8Array(), /no zip archive, or its end is missing/],
    ["a text", strToU8("<html>not found</html>"), /no zip archive/],
    [
      "one that is cut short",
      good.slice(0, good.length - 30),
      /no zip archive, or its end is missing.*download it again/,
    ],
    ["one without its beginning", good.slice(200), /cannot be (used|unpacked)|damaged|no zip archive/],
    ["no manifest", pack({ "a.xml": "<a/>" }), /Found no imsmanifest\.xml in the archive/],
    [
      "a folder packed",
      pack({ "course/imsmanifest.xml": "<a/>" }),
      /in course\/imsmanifest\.xml, expected it at the root/,
    ],
    ["a way out", pack({ "../evil.xml": "<a/>", "imsmanifest.xml": "<a/>" }), /invalid relative path: \.\.\/evil\.xml/],
    ["an absolute path", pack({ "/etc/x.xml": "<a/>" }), /absolute path: \/etc\/x\.xml/],
    ["a path of another system", pack({ "..\\x.xml": "<a/>" }), /invalid characters in fileName: \.\.\\x\.xml/],
    [
      "no UTF-8",
      zipSync({ "imsmanifest.xml": new Uint8Array([60, 0xff, 62]) }),
      /imsmanifest\.xml: is not written in UTF-8/,
    ],
    ["too large", new Uint8Array(BOUNDS.archive + 1), /has 64000001 bytes, expected at most 64000000/],
  ])("%s", async (_, bytes, message) => {
    expect(await refusal(bytes)).toMatch(message);
  });

  test("a file that unpacks to far more than a course holds is refused before it is unpacked", async () => {
    const bomb = zipSync({ "imsmanifest.xml": new Uint8Array(BOUNDS.file + 1).fill(32) });
    expect(bomb.length).toBeLessThan(20_000);
    expect(await refusal(bomb)).toBe("imsmanifest.xml: has 4000001 bytes, expected at most 4000000.");
  });

  test("many that are small by themselves are refused by their sum", async () => {
    const one = new Uint8Array(BOUNDS.file).fill(32);
    const many = Object.fromEntries(Array.from({ length: 17 }, (_, index) => [`${index}.xml`, one]));
    expect(await refusal(zipSync(many, { level: 1 }))).toMatch(/would unpack to 68000000 bytes/);
  });

  test("a file that says it is small and is not ends where it said", async () => {
    const bomb = zipSync({ "imsmanifest.xml": new Uint8Array(BOUNDS.file * 10).fill(32) });
    const small = (offset: number) => (view: DataView, at: number) => view.setUint32(at + offset, 100, true);
    const liar = patched(patched(bomb, LOCAL, 22, small(0)), CENTRAL, 24, small(0));
    expect(await refusal(liar)).toMatch(/imsmanifest\.xml: cannot be unpacked: too many bytes in the stream/);
  });

  test("a changed bit is found by the checksum or by the reader", async () => {
    const plainZip = zipSync({ "imsmanifest.xml": [strToU8("<manifest/>"), { level: 0 }] });
    const at = Buffer.from(plainZip).indexOf("manifest/>");
    plainZip[at] ^= 1;
    expect(await refusal(plainZip)).toMatch(/imsmanifest\.xml: is damaged/);
  });

  test("more files than a course has", async () => {
    const many = Object.fromEntries(
      Array.from({ length: BOUNDS.files + 1 }, (_, index) => [`${index}.txt`, new Uint8Array()]),
    );
    expect(await refusal(zipSync(many, { level: 0 }))).toBe("The archive holds 5001 files, expected at most 5000.");
  });

  test("an encrypted file", async () => {
    const locked = patched(good, CENTRAL, 8, (view, at) => view.setUint16(at, view.getUint16(at, true) | 1, true));
    expect(await refusal(locked)).toMatch(/imsmanifest\.xml: is encrypted/);
  });

  test("wherever it is cut, it is refused", async () => {
    for (let cut = 0; cut < good.length; cut += 97) {
      expect(await refusal(good.slice(0, cut)), `cut at ${cut}`).not.toBe(NOT_REFUSED);
    }
  });

  test("whichever byte is changed, it is refused, or what is read is what was written", async () => {
    for (let at = 0; at < good.length; at += 31) {
      const copy = good.slice();
      copy[at] ^= 0x55;
      if ((await refusal(copy)) !== NOT_REFUSED) continue;
      expect((await readCartridge(copy)).cartridge, `byte ${at}`).toEqual(AWKWARD);
    }
  });
});

describe("XML", () => {
  const ENTITIES = '<!DOCTYPE m [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><manifest>&b;</manifest>';
  test.each([
    ["entities", ENTITIES, /imsmanifest\.xml, line 1, column \d+: found a document type \(DOCTYPE\), expected none/],
    ["a file by entity", '<!DOCTYPE m SYSTEM "file:///etc/passwd"><m/>', /found a document type/],
    ["an unknown entity", "<m>&x;</m>", /line 1, column \d+: this is not well-formed XML: undefined entity/],
    ["an open element", "<m>\n<n>\n</m>", /line 3, column \d+: this is not well-formed XML: unexpected close tag/],
    ["an unbound prefix", "<a:m/>", /unbound namespace prefix/],
    ["nothing", "", /document must contain a root element/],
    ["depth", "<a>".repeat(DEEPEST + 1), /more than 64 deep/],
    ["number", `<a>${"<b/>".repeat(MOST_ELEMENTS)}</a>`, /more than 50000 elements/],
  ])("%s", async (_, text, message) => {
    expect(() => readXml("imsmanifest.xml", text)).toThrow(message);
    expect(await refusal(pack({ "imsmanifest.xml": text }))).toMatch(message);
  });
});

describe("manifests", () => {
  const refused = (parts: Parameters<typeof manifest>[0], files: Record<string, string> = {}) =>
    refusal(pack({ "imsmanifest.xml": manifest(parts), ...files }));

  test("another version, and something else altogether", async () => {
    expect(await refused({ namespace: "http://www.imsglobal.org/xsd/imsccv1p1/imscp_v1p1" })).toBe(
      "imsmanifest.xml: found a cartridge of version 1.1, expected the manifest of a Common Cartridge 1.3.",
    );
    expect(await refused({ namespace: "http://www.imsglobal.org/xsd/imscp_v1p1" })).toMatch(/found <manifest>/);
    expect(await refused({ version: "1.4.0" })).toMatch(/version "1\.4\.0", expected .* version "1\.3\.0"/);
  });

  test("all that is wrong, at once", async () => {
    expect(
      await refused({ items: folder(leaf("gone")), resources: link + link, organizations: 1 }, { "l.xml": "" }),
    ).toBe(
      [
        'imsmanifest.xml: the identifier "l" stands twice, expected once.',
        'imsmanifest.xml: "One" leads to gone, which is not listed.',
      ].join("\n"),
    );
    expect(await refused({ organizations: 2 })).toMatch(/found 2 organizations, expected one/);
    expect(await refused({ items: folder(leaf("l")), resources: link })).toBe(
      "imsmanifest.xml: lists l.xml, which is not in the archive.",
    );
  });

  test("a link that is none, an assessment without a right answer", async () => {
    const items = folder(leaf("l"));
    expect(await refused({ items, resources: link }, { "l.xml": "<webLink/>" })).toMatch(
      /l\.xml: found <webLink>, expected a web link of Common Cartridge 1\.3/,
    );
    const type = "imsqti_xmlv1p2/imscc_xmlv1p3/assessment";
    const resources = `<resource identifier="l" type="${type}"><file href="l.xml"/></resource>`;
    const item = (inner: string) =>
      `<questestinterop xmlns="http://www.imsglobal.org/xsd/ims_qtiasiv1p2"><assessment><section><item ident="q"><itemmetadata><qtimetadata><qtimetadatafield><fieldlabel>cc_profile</fieldlabel><fieldentry>cc.multiple_choice.v0p1</fieldentry></qtimetadatafield></qtimetadata></itemmetadata>${inner}</item></section></assessment></questestinterop>`;
    expect(await refused({ items, resources }, { "l.xml": item("") })).toBe("l.xml: question q has no choices.");
    const labels = '<response_label ident="a"/><response_label ident="b"/>';
    expect(await refused({ items, resources }, { "l.xml": item(labels) })).toBe(
      "l.xml: question q has no right answer.",
    );
    const wrong = `${labels}<respcondition><conditionvar><varequal>c</varequal></conditionvar><setvar>100</setvar></respcondition>`;
    expect(await refused({ items, resources }, { "l.xml": item(wrong) })).toBe(
      "l.xml: question q takes c for right, which is none of its choices.",
    );
  });

  test("what another platform adds is told and left alone", async () => {
    const resources =
      '<resource identifier="l" type="webcontent" href="a%20b.html"><file href="a%20b.html"/></resource>';
    const bytes = pack({
      "imsmanifest.xml": manifest({ items: folder(leaf("l")), resources }),
      "a b.html": "<script>alert(1)</script>",
      "extra.txt": "x",
    });
    const { cartridge, besides } = await readCartridge(bytes);
    expect(cartridge.units).toEqual([{ identifier: "f", title: "Folder", links: [] }]);
    expect(besides).toEqual(["extra.txt is not listed in the manifest.", "One: webcontent."]);
  });
});
