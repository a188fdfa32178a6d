import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import { type Browser, chromium } from "playwright-core";

const CACHE = resolve(import.meta.dirname, "..", ".cache");

/**
 * The packaged configuration looks for fonts in folders of a cloud function. Without any font the browser draws no text
 * at all, and every check of layout would pass on empty lines. Fonts of the machine stay out: they would make the
 * same page break its lines differently in different places.
 */
const fontConfiguration = (fonts: string) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${fonts}</dir>
  <cachedir>${join(fonts, "cache")}</cachedir>
</fontconfig>
`;

/**
 * Starts a headless Chromium: the one `CHROMIUM_PATH` names, else the one that comes as a package, which needs nothing
 * from the operating system. The caller closes it.
 * @param more arguments of the program, besides those it cannot do without
 * @throws Error that names `CHROMIUM_PATH` when there is no Chromium for this machine
 */
export async function startChromium(more: readonly string[] = []): Promise<Browser> {
  const own = process.env.CHROMIUM_PATH;
  if (own !== undefined && own !== "") {
    if (!existsSync(own)) throw new Error(`CHROMIUM_PATH is "${own}", and there is no such file.`);
    return chromium.launch({ executablePath: own, args: ["--no-sandbox", ...more] });
  }
  const folder = await unpackedChromium();
  return chromium.launch({
    executablePath: join(folder, "chromium"),
    // Only this: the package's own list of arguments makes the browser hang outside the service it was made for.
    args: ["--no-sandbox", ...more],
    env: {
      ...process.env,
      LD_LIBRARY_PATH: [join(folder, "al2023", "lib"), process.env.LD_LIBRARY_PATH].filter(Boolean).join(":"),
      FONTCONFIG_PATH: join(folder, "fonts"),
    },
  });
}

/**
 * Folder with the unpacked browser, its libraries and its fonts; unpacked on the first call, half a minute at worst.
 * Safe to call from several processes at once: each unpacks aside, and the first to finish gives the folder its name.
 */
export async function unpackedChromium(): Promise<string> {
  if (process.platform !== "linux" || process.arch !== "x64") {
    throw new Error(
      `The packaged Chromium runs on Linux x64 only; this is ${process.platform} ${process.arch}. ` +
        "Set CHROMIUM_PATH to the program file of a Chromium or Chrome on this machine.",
    );
  }
  const folder = join(CACHE, `chromium-${await packagedVersion()}`);
  if (existsSync(folder)) return folder;
  await mkdir(CACHE, { recursive: true });
  const aside = await mkdtemp(`${folder}-unpacking-`);
  await unpackInto(aside);
  await writeFile(join(aside, "fonts", "fonts.conf"), fontConfiguration(join(folder, "fonts")));
  try {
    await rename(aside, folder);
  } catch (error) {
    if (!existsSync(folder)) throw error;
    await rm(aside, { recursive: true, force: true });
  }
  return folder;
}

async function packagedVersion(): Promise<string> {
  const entry = createRequire(import.meta.url).resolve("@sparticuz/chromium");
  const manifest = join(dirname(entry), "..", "package.json");
  return (JSON.parse(await readFile(manifest, "utf8")) as { version: string }).version;
}

/** The package takes its target from TMPDIR and adds its libraries only where it believes it runs in a cloud function. */
async function unpackInto(folder: string): Promise<void> {
  const names = ["TMPDIR", "AWS_EXECUTION_ENV", "LD_LIBRARY_PATH", "FONTCONFIG_PATH"] as const;
  const before = names.map((name) => [name, process.env[name]] as const);
  process.env.TMPDIR = folder;
  process.env.AWS_EXECUTION_ENV = "AWS_Lambda_nodejs22.x";
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    await packaged.executablePath();
  } finally {
    for (const [name, value] of before) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}
