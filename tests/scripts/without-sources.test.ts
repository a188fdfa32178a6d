import { join } from "node:path";
import { build, type Rolldown } from "vite";
import { describe, expect, test } from "vitest";
import { asColumns } from "../../scripts/as-columns.ts";
import { withoutSources } from "../../scripts/without-sources.ts";
import { createPredictor } from "../../src/engine/bench/predictor.ts";
import { createSolver } from "../../src/engine/equilibrium/solve.ts";

const ROOT = join(import.meta.dirname, "../..");

/** The text of a module with all it imports; what it loads only later is brought in as well. */
async function bundled(entry: string, plugins: ReturnType<typeof withoutSources>[]): Promise<string> {
  const made = await build({
    root: ROOT,
    configFile: false,
    logLevel: "error",
    plugins,
    build: {
      write: false,
      minify: false,
      lib: { entry: join(ROOT, entry), formats: ["es"] },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const [{ output }] = made as Rolldown.RolldownOutput[];
  expect(output).toHaveLength(1);
  return output[0].code;
}

const imported = (code: string) => import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`);

const sample = (label: string, given: string) => ({ label, given, concentration: "0.1 mol/dm3" });
/** What a bench does, each verb once, on salts that show redox changes, complexes, gases, flames and what heat leaves. */
const PAPER = {
  title: "Every verb",
  minutes: 60,
  samples: [sample("P", "both"), sample("Q", "solution")],
  paper: {
    cations: ["Cu^2+", "Fe^2+", "NH4+"],
    anions: ["SO4^2-", "NO3-", "CO3^2-"],
    differ: [{ samples: ["P", "Q"], ion: "cation" }],
  },
  parts: [
    {
      label: "a",
      title: "Alkali",
      from: "solution",
      tests: [
        { steps: [{ take: "1 cm3" }, { add: "NaOH(aq)", drops: 5 }] },
        { steps: [{ add: "NaOH(aq)", until: "in excess" }, { warm: true }, { testGas: "damp red litmus" }] },
        { steps: [{ cool: true }, { add: "H2O2(aq)", drops: 5 }, { stand: "2 min" }] },
      ],
    },
    {
      label: "b",
      title: "Acid",
      from: "solution",
      tests: [
        { steps: [{ take: "1 cm3" }, { add: "HCl(aq)", volume: "1 cm3" }, { leadThrough: "limewater" }] },
        { steps: [{ add: "BaCl2(aq)", volume: "1 cm3" }, { filter: "filtrate" }, { boil: "1 min" }] },
      ],
    },
    {
      label: "c",
      title: "Heat",
      from: "solid",
      samples: ["P"],
      tests: [{ steps: [{ take: "0.2 g" }, { heat: "strongly" }] }],
    },
    { label: "d", title: "Flame", from: "solid", samples: ["P"], tests: [{ steps: [{ flame: true }] }] },
    {
      label: "e",
      title: "Oxidant",
      from: "solution",
      tests: [{ steps: [{ take: "1 cm3" }, { add: "H2SO4(aq)", volume: "1 cm3" }, { add: "KMnO4(aq)", drops: 3 }] }],
    },
  ],
};

interface Worked {
  work?: object;
  faults: unknown[];
  refused?: string;
}

async function workedBy(code: string): Promise<Worked[]> {
  const { workOut } = await imported(code);
  const told: Worked[] = [];
  await workOut(
    PAPER,
    [],
    createPredictor(createSolver()),
    (one: Worked) => told.push(one),
    async () => true,
  );
  return told;
}

/** What the page shows: a tube's row goes along with its source, which it does not. */
const shownOf = (told: Worked[]) =>
  JSON.parse(JSON.stringify(told), (key, value) => (key === "source" ? undefined : value));

describe("the constants as a worker gets them", () => {
  test("tell the same of a paper as whole, and no source", async () => {
    const entry = "src/components/paper/work-out.worker.ts";
    const whole = await bundled(entry, []);
    const light = await bundled(entry, [withoutSources(), asColumns()]);
    expect(whole).toContain("from memory");
    expect(light).not.toContain('source: "minteq"');
    // Some 60 000 letters before anything is made small; the exact figure hangs on how many rows there are.
    expect(light.length).toBeLessThan(whole.length - 40_000);
    const told = await workedBy(whole);
    expect(told.map(({ faults, refused }) => ({ faults, refused }))).toEqual([
      { faults: [], refused: undefined },
      { faults: [], refused: undefined },
    ]);
    expect(told.every(({ work }) => work !== undefined)).toBe(true);
    expect(await workedBy(light)).toEqual(shownOf(told));
  }, 120_000);

  test("draw the same curve as whole", async () => {
    const entry = "src/engine/bench/changed-curve.ts";
    const curve = async (code: string) => {
      const { changedCurve } = await imported(code);
      const part = {
        label: "a",
        title: "Alkali",
        tests: [
          {
            steps: [
              { do: "take", volume: { cm3: 1 } },
              { do: "add", reagent: "NaOH(aq)", amount: { inExcess: true } },
            ],
          },
        ],
      };
      const source = { sample: "P", given: "solution", part, test: 0, ion: "Zn^2+" };
      return changedCurve(source, { salt: "ZnSO4", molPerDm3: 0.1 }, createSolver());
    };
    const whole = await curve(await bundled(entry, []));
    expect(whole).toHaveProperty("curve");
    expect(await curve(await bundled(entry, [withoutSources(), asColumns()]))).toEqual(whole);
  }, 60_000);
});
