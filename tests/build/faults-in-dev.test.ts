/** The check beside the server of `npm run dev`: what it tells the terminal and the page, and when. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { watchFaults } from "../../src/build/faults-in-dev.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A server that can be told of changes, and a check whose reports are given one by one. */
function writing(...reports: string[]) {
  const sent: { type: string; err?: { message: string; stack: string } }[] = [];
  const said: string[] = [];
  const seen: ((file: string) => void)[] = [];
  let connected = () => {};
  let checks = 0;
  const server = {
    watcher: { on: (_: string, change: (file: string) => void) => seen.push(change) },
    ws: {
      on: (_: string, handler: () => void) => {
        connected = handler;
      },
      send: (payload: unknown) => sent.push(payload as (typeof sent)[number]),
    },
  };
  const check = async () => {
    checks += 1;
    return reports.shift() ?? "";
  };
  watchFaults(server, check, { info: (text) => said.push(text), error: (text) => said.push(text) });
  return {
    sent,
    said,
    checks: () => checks,
    connect: () => connected(),
    change: async (...files: string[]) => {
      for (const file of files) seen[0](file);
      await vi.runAllTimersAsync();
    },
  };
}

const REPORT = "1 fault in the content\n\na.mdx:3:1  component\n  stated: <Chemm>";

test("faults stand in the terminal and over the page, whoever opens it, until they are mended", async () => {
  const { sent, said, change, connect } = writing(REPORT, "");
  await vi.runAllTimersAsync();
  expect(said).toEqual([`\n${REPORT}`]);
  expect(sent).toEqual([
    {
      type: "error",
      err: {
        name: "ContentFaults",
        title: "Not to be published as it is",
        message: "1 fault in the content",
        stack: "a.mdx:3:1  component\n  stated: <Chemm>",
      },
    },
  ]);
  connect();
  expect(sent).toHaveLength(2);
  await change("src/content/practicals/a.mdx");
  expect(said.at(-1)).toBe("The content has no faults any more.");
  expect(sent.at(-1)).toEqual({ type: "full-reload" });
  connect();
  expect(sent).toHaveLength(3);
});

test("several changes at a time are one check; what is no content is left alone", async () => {
  const { checks, change } = writing();
  await vi.runAllTimersAsync();
  await change("a.mdx", "b.mdx", "department/department.yaml", "a.mdx");
  expect(checks()).toBe(2);
  await change("src/styles/page.css", "src/pages/index.astro");
  expect(checks()).toBe(2);
});

test("a first line with tags is shown as text", async () => {
  const { sent } = writing("<img src=x onerror=alert(1)> & more");
  await vi.runAllTimersAsync();
  expect(sent[0].err?.message).toBe("&lt;img src=x onerror=alert(1)> &amp; more");
});
