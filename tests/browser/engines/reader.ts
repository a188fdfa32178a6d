/** What a test does in a browser that Playwright does not drive. Places are CSS selectors. */
export interface Reader {
  /** The browser and its version, as it names itself. */
  name: string;
  open(address: string): Promise<void>;
  /** The value of an expression in the page. */
  ask<T>(expression: string): Promise<T>;
  click(place: string): Promise<void>;
  /** Types into a field; `\n` presses Enter. */
  type(place: string, text: string): Promise<void>;
  /** Chooses the option of a select box that reads so. */
  choose(place: string, label: string): Promise<void>;
  /** The page as it prints, a PDF; undefined where the browser's driver has no such command. */
  print(): Promise<Uint8Array | undefined>;
  /** Console errors, thrown errors and requests to other hosts so far; undefined where the driver tells nothing of them. */
  faults(): string[] | undefined;
  close(): Promise<void>;
}

/** Script that gives the value of the option of `place` with this label. @throws in the page when there is none */
export const optionValue = (place: string, label: string): string =>
  `[...document.querySelector(${JSON.stringify(place)}).options].find(({ text }) => text === ${JSON.stringify(label)}).value`;
