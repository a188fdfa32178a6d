import { afterAll, afterEach } from "vitest";
import { closeBrowser, closePages } from "./open-page.ts";

afterEach(async () => {
  const faults = await closePages();
  if (faults.length > 0) throw new Error(`The page had faults that a reader would meet:\n- ${faults.join("\n- ")}`);
});

afterAll(closeBrowser);
