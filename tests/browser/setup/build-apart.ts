import { spawn } from "node:child_process";
import { join, resolve } from "node:path";

const ROOT = resolve(import.meta.dirname, "../../..");

/** What the test runner sets for itself and its workers; `BASE_URL` would put its own base path into our links. */
const OF_THE_RUNNER = ["NODE_ENV", "VITEST", "BASE_URL", "MODE", "DEV", "PROD", "SSR", "TEST"];

/**
 * Builds the site in a process of its own: the test runner's environment (NODE_ENV and module hooks) must not colour the build.
 * @param dist folder to write, below the project's
 * @param settings variables of the environment, such as `IONWRIGHT_BASE`
 */
export function buildApart(dist: string, settings: Record<string, string>): Promise<void> {
  const environment = { ...process.env };
  for (const name of OF_THE_RUNNER) delete environment[name];
  const child = spawn(process.execPath, [join(ROOT, "scripts/build.ts"), "--out", dist], {
    cwd: ROOT,
    env: { ...environment, ...settings },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const said: string[] = [];
  child.stdout.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  child.stderr.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (code) => {
      if (code === 0) done();
      else fail(new Error(`The site under test could not be built.\n${said.join("")}`));
    });
  });
}
