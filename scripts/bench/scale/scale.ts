/** What a long course costs: `npm run -s bench -- --scale`, other sizes with `--sizes 20,200`. See the head of `../../bench.ts`. */
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createGenerator, type SyntheticPractical } from "../../../tests/scale/synthetic-practical.ts";
import { rounded, say } from "../timing.ts";
import { type OurRun, runOurs } from "./our-site.ts";
import { installStarlight, runStarlight } from "./starlight.ts";

export async function benchScale(sizes: readonly number[]) {
  const folder = mkdtempSync(join(tmpdir(), "scale-"));
  try {
    const practicals = drawn(Math.max(...sizes));
    const ours: OurRun[] = [];
    for (const size of sizes) {
      say(`scale: ${size} synthetic practicals`);
      const place = join(folder, `ours-${size}`);
      mkdirSync(place);
      ours.push(await runOurs(place, practicals.slice(0, size)));
      rmSync(place, { recursive: true });
    }
    say("scale: installing Starlight for comparison");
    const other = join(folder, "starlight");
    mkdirSync(other);
    await installStarlight(other);
    const starlight: Awaited<ReturnType<typeof runStarlight>>[] = [];
    for (const size of sizes) {
      say(`scale: ${size} plain pages in Starlight`);
      starlight.push(await runStarlight(other, size));
    }
    return { ours, marginal: marginalOf(ours), starlight };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function drawn(count: number): SyntheticPractical[] {
  say(`scale: drawing ${count} practicals`);
  const generate = createGenerator();
  return Array.from({ length: count }, (_, seed) => generate(seed));
}

/** What one more costs, from the smallest size to the largest. */
function marginalOf(runs: readonly OurRun[]) {
  const [first, last] = [runs[0], runs[runs.length - 1]];
  if (first === last) return undefined;
  const each = (of: "practicals" | "pages", time: "seconds" | "processorSeconds") =>
    rounded((1000 * ((last.cold[time] ?? Number.NaN) - (first.cold[time] ?? Number.NaN))) / (last[of] - first[of]));
  return {
    msAPage: each("pages", "seconds"),
    msAPractical: each("practicals", "seconds"),
    processorMsAPage: each("pages", "processorSeconds"),
    processorMsAPractical: each("practicals", "processorSeconds"),
  };
}
