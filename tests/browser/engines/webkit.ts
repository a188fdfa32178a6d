import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, globSync } from "node:fs";
import { Builder, By, Capabilities, Key, type WebDriver } from "selenium-webdriver";
import { optionValue, type Reader } from "./reader.ts";

/** Debian's: the driver of `webkit2gtk-driver`, the small browser that comes with the library, and a screen in memory of `xvfb`. */
const DRIVER = "/usr/bin/WebKitWebDriver";
const SCREEN = "/usr/bin/Xvfb";
const [BROWSER] = globSync("/usr/lib/*/webkit2gtk-4.*/MiniBrowser").sort();

/** Why there is no WebKit to test in; undefined when there is one. */
export const noWebKit =
  existsSync(DRIVER) && existsSync(SCREEN) && BROWSER !== undefined
    ? undefined
    : "no WebKit with its driver and a screen in memory: scripts/install-browsers.sh installs them on Debian";

/** Starts WebKit's small browser on a screen in memory, spoken to by the WebDriver protocol. */
export async function startWebKit(): Promise<Reader> {
  if (BROWSER === undefined) throw new Error(noWebKit);
  const screen = spawn(SCREEN, ["-displayfd", "3", "-screen", "0", "1280x900x24", "-nolisten", "tcp"], {
    stdio: ["ignore", "ignore", "ignore", "pipe"],
  });
  const display = await firstLine(screen, 3);
  const port = 41_000 + (process.pid % 1000);
  const driver = spawn(DRIVER, [`--port=${port}`, "--host=127.0.0.1"], {
    stdio: "ignore",
    // Its own sandbox asks for rights that a container seldom gives.
    env: { ...process.env, DISPLAY: `:${display}`, WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1" },
  });
  const stop = () => {
    driver.kill();
    screen.kill();
  };
  try {
    const page = await connect(`http://127.0.0.1:${port}`, BROWSER);
    const element = (place: string) => page.findElement(By.css(place));
    return {
      name: await page.executeScript<string>("return navigator.userAgent"),
      open: (address) => page.get(address),
      ask: <T>(expression: string) => page.executeScript<T>(`return ${expression}`),
      click: (place) => element(place).click(),
      type: (place, text) => element(place).sendKeys(text.replaceAll("\n", Key.ENTER)),
      choose: async (place, label) => {
        const value = await page.executeScript<string>(`return ${optionValue(place, label)}`);
        await element(place)
          .findElement(By.css(`option[value=${JSON.stringify(value)}]`))
          .click();
      },
      print: async () => undefined,
      faults: () => undefined,
      close: async () => {
        await page.quit();
        stop();
      },
    };
  } catch (error) {
    stop();
    throw error;
  }
}

/** The driver listens a moment after it starts. */
async function connect(address: string, binary: string): Promise<WebDriver> {
  const wanted = new Capabilities({
    browserName: "MiniBrowser",
    "webkitgtk:browserOptions": { binary, args: ["--automation"] },
  });
  for (let attempt = 1; ; attempt++) {
    try {
      return await new Builder().usingServer(address).withCapabilities(wanted).build();
    } catch (error) {
      if (attempt === 20 || !String(error).includes("ECONNREFUSED")) throw error;
      await new Promise((resolve) => setTimeout(resolve, 500));
    }
  }
}

/** What a program first writes to one of its channels. */
function firstLine(child: ChildProcess, channel: number): Promise<string> {
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => reject(new Error(`${child.spawnfile} ended with ${code} before it was ready.`)));
    child.stdio[channel]?.once("data", (chunk: Buffer) => resolve(chunk.toString().trim()));
  });
}
