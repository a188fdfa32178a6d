/** Runs a program in a process of its own and says what it cost. */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";

export interface Cost {
  /** By the clock. */
  seconds: number;
  /** Of the processor, all threads, where the system tells (Linux): what else the machine did meanwhile does not count. */
  processorSeconds?: number;
  /** The most memory held at a time, MB, where the system tells. The search indexer is a process of its own and not counted. */
  peakMb?: number;
}

/** How often the system is asked, ms. */
const EVERY = 200;
/** Ticks of the processor's account in a second; Linux has had 100 on every usual platform. From memory. */
const TICKS = 100;

/** @throws Error with all it said when the program fails */
export function measuredRun(command: string, args: readonly string[], cwd: string, environment = {}): Promise<Cost> {
  const begun = performance.now();
  const { IONWRIGHT_CACHE_OF: _, ...inherited } = process.env;
  const child = spawn(command, args, { cwd, env: { ...inherited, ...environment }, stdio: ["ignore", "pipe", "pipe"] });
  const said: string[] = [];
  child.stdout.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  child.stderr.on("data", (chunk: Buffer) => said.push(chunk.toString()));
  let account: Partial<Cost> = {};
  const asking = setInterval(() => {
    account = accountOf(child.pid) ?? account;
  }, EVERY);
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (code) => {
      clearInterval(asking);
      if (code !== 0) fail(new Error(`${command} ${args.join(" ")} failed in ${cwd}:\n${said.join("")}`));
      else done({ seconds: (performance.now() - begun) / 1000, ...account });
    });
  });
}

function accountOf(pid: number | undefined): Partial<Cost> | undefined {
  try {
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    // After the name in brackets: state, then numbers; user and system time are the 14th and 15th of all.
    const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
      .replace(/^.*\) /, "")
      .split(" ");
    const peak = /^VmHWM:\s+(\d+) kB/m.exec(status)?.[1];
    return {
      processorSeconds: (Number(fields[11]) + Number(fields[12])) / TICKS,
      ...(peak && { peakMb: Number(peak) / 1000 }),
    };
  } catch {
    return undefined;
  }
}
