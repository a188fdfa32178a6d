import { existsSync } from "node:fs";
import puppeteer from "puppeteer-core";
import { optionValue, type Reader } from "./reader.ts";

/** Debian's, of the package `firefox-esr`. */
const PROGRAM = process.env.FIREFOX_PATH ?? "/usr/bin/firefox-esr";

/** Why there is no Firefox to test in; undefined when there is one. */
export const noFirefox = existsSync(PROGRAM)
  ? undefined
  : `no ${PROGRAM}: scripts/install-browsers.sh installs it on Debian`;

/** Starts Firefox without a window, spoken to by the WebDriver BiDi protocol. */
export async function startFirefox(): Promise<Reader> {
  const browser = await puppeteer.launch({ browser: "firefox", executablePath: PROGRAM, headless: true });
  const page = await browser.newPage();
  const faults: string[] = [];
  let host = "";
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(`console error: ${message.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`page error: ${error}`));
  page.on("request", (request) => {
    const target = new URL(request.url());
    if (/^(https?|wss?):$/.test(target.protocol) && target.host !== host) faults.push(`request to ${request.url()}`);
  });
  return {
    name: await browser.version(),
    open: async (address) => {
      host = new URL(address).host;
      await page.goto(address);
    },
    ask: <T>(expression: string) => page.evaluate(expression) as Promise<T>,
    click: (place) => page.click(place),
    type: (place, text) => page.type(place, text),
    choose: async (place, label) => {
      await page.select(place, (await page.evaluate(optionValue(place, label))) as string);
    },
    print: () => page.pdf({ preferCSSPageSize: true }),
    faults: () => [...faults],
    close: () => browser.close(),
  };
}
