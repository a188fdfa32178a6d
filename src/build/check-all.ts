/**
 * Checks every practical, those that have changed since an earlier run in several threads, and of all pages their frontmatter, equations, links
 * and components.
 */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { LANGUAGE } from "#words/language.ts";
import { type ContentFault, ContentFaults } from "../authoring/faults.ts";
import { TAGS } from "../words/tags.ts";
import { openCache } from "./cache/cache.ts";
import type { CheckAnswer, CheckOrder } from "./check-worker.ts";
import { checkTheme } from "./department/check-theme.ts";
import { coursePaths } from "./department/course.ts";
import { department } from "./department/department.ts";
import { houseOf } from "./department/key.ts";
import { checkAllPages } from "./pages/check-pages.ts";
import { practicalPaths, readPage, translatedFolder } from "./practical-paths.ts";

/** More threads than this only wait for memory. Common practice, no source. */
const MOST_THREADS = 8;

/**
 * @param root folder of the project
 * @param cache where what was found in earlier runs is kept
 * @param pages whether to work out what the pages will show as well, for the build that follows
 * @returns number of practicals checked
 * @throws ContentFaults when any practical or equation must not be published
 */
export async function checkAll(root: string, pages: boolean, cache = openCache()): Promise<number> {
  const name = pages ? "worked out" : "checked";
  // At which strengths practicals are to be held is not known while the department's file cannot be read.
  const ofHouse = faultsOf(department);
  const ofTheme = checkTheme(root);
  const paths = ofHouse.length > 0 ? [] : [...coursePaths(root), ...(pages ? [] : inOtherLanguages(root))];
  const orders = paths.map((path): CheckOrder => ({ path, text: readPage(root, path), pages }));
  const input = ({ path, text }: CheckOrder) => checkedInput(path, text);
  const known = new Map(orders.map((order) => [order, cache.read<ContentFault[]>(name, input(order))]));
  const fresh = orders.filter((order) => known.get(order) === undefined);
  // One alone is checked here: a thread would first have to load the engine a second time.
  await (fresh.length > 1 ? inThreads : here)(fresh, (order, faults) => {
    known.set(order, faults);
    cache.write(name, input(order), faults);
  });
  const faults = [...ofHouse, ...ofTheme, ...orders.flatMap((order) => known.get(order) ?? []), ...checkAllPages(root)];
  if (faults.length > 0) throw new ContentFaults(faults);
  return orders.length;
}

/** A build checks what it shows; without one all languages are checked. */
const inOtherLanguages = (root: string): string[] =>
  TAGS.filter((tag) => tag !== LANGUAGE).flatMap((tag) => practicalPaths(root, translatedFolder(tag)));

/** What the faults of a practical hang on besides the program: its file, and the department that shows it. */
export const checkedInput = (path: string, text: string): string => `${path}\0${text}\0${JSON.stringify(houseOf())}`;

function faultsOf(read: () => unknown): readonly ContentFault[] {
  try {
    read();
    return [];
  } catch (error) {
    if (error instanceof ContentFaults) return error.faults;
    throw error;
  }
}

type Done = (order: CheckOrder, faults: ContentFault[]) => void;

/** The engine is loaded only when something is to be checked. */
async function here(orders: readonly CheckOrder[], done: Done): Promise<void> {
  for (const order of orders) {
    const { checkFile } = await import("./check-file.ts");
    const { keepPredictions } = await import("./predictor.ts");
    done(order, checkFile(order.path, order.text, order.pages));
    keepPredictions();
  }
}

/** Hands the orders out, one to each thread at a time; a thread keeps its solver and what it has predicted for the next. */
async function inThreads(orders: readonly CheckOrder[], done: Done): Promise<void> {
  const waiting = [...orders];
  const threads = Math.min(orders.length, availableParallelism(), MOST_THREADS);
  await Promise.all(
    Array.from({ length: threads }, async () => {
      const worker = new Worker(new URL("./check-worker.ts", import.meta.url));
      try {
        for (let order = waiting.shift(); order; order = waiting.shift()) {
          const answer = await ask(worker, order);
          if ("error" in answer) throw answer.error;
          done(order, answer.faults);
        }
        await ended(worker);
      } finally {
        await worker.terminate();
      }
    }),
  );
}

function ask(worker: Worker, order: CheckOrder): Promise<CheckAnswer> {
  return new Promise((resolve, reject) => {
    worker.once("error", reject);
    worker.once("message", (answer: CheckAnswer) => {
      worker.off("error", reject);
      resolve(answer);
    });
    worker.postMessage(order);
  });
}

/** Lets the thread write down what it has predicted. */
function ended(worker: Worker): Promise<void> {
  return new Promise((resolve, reject) => {
    worker.once("error", reject);
    worker.once("exit", () => resolve());
    worker.postMessage("end");
  });
}
