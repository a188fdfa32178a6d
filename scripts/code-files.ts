/** Which modules of the pages share a file. A request weighs some 500 bytes of heads on the wire, and what is compressed together weighs less. */
import type { Plugin } from "vite";

/** Any of these modules of ours, by the end of its path below `src/`, without the extension. */
const ours = (...paths: string[]) => new RegExp(`src/(?:${paths.join("|")})\\.tsx?$`.replaceAll("/", "[\\\\/]"));

/** What every island needs: one file instead of eight keeps a first visit to few requests. */
const RUNTIME = new RegExp(
  [
    /node_modules[\\/](?:preact[\\/]|@astrojs[\\/]preact[\\/]dist[\\/](?:client|static-html))|vite[\\/]preload-helper/,
    ours(
      "components/(?:Words|awake|later|names|sentence|address-bar|capital)",
      "engine/(?:formula/typeset|deduction/something-else)",
    ),
  ]
    .map(({ source }) => source)
    .join("|"),
);

/** Files of several modules; what a module imports goes with it unless another group has it. */
const GROUPS = [
  { name: "island-runtime", test: RUNTIME },
  // The islands of a walkthrough, with what the page for a paper of one's own shares with them.
  {
    name: "walkthrough",
    test: ours("components/(?:walkthrough-islands|record/Record(?:AndConclusion|Table)|prepare/OtherTubes)"),
  },
  { name: "glass", test: ours("engine/planning/geometry"), priority: 1 },
  // A rack drawn anew: in a walkthrough when other tubes are chosen, in a paper of one's own, and in part on sheets to print.
  { name: "rack", test: ours("components/prepare/(?:BenchPlan|TubeChoice|Tube|RackPlaces)") },
  { name: "found", test: ours("components/found-text", "words/[\\w-]+/found") },
  // Whatever concludes asks for all of it.
  {
    name: "deduction",
    test: ours("engine/deduction/(?:deduce|fewest-clashes|repeats|reasons|misreading|proof|hitting-sets)"),
    alone: true,
  },
  {
    name: "conclude",
    test: ours(
      "components/conclude/(?:AfterPaint|ConclusionPanel|InSight|Matrix|MatrixRow|NextTest|Repeats|Standings|TooMuch)",
      "components/conclude/(?:evidence|finding|further-words|headline|proof-words|reason|repeat-words|side-by-side|use-after-paint)",
      "engine/deduction/(?:next-test|further-tests|to-the-end|plainly)",
      "words/[\\w-]+/(?:further-tests|next-test|repeats|conclude)",
    ),
    alone: true,
  },
  // A paper of one's own once there is something to work out.
  {
    name: "own-paper-work",
    test: ours(
      "components/paper/(?:PreparePanel|paper-desk|paper-answer)",
      "components/prepare/(?:SetOut|GasesAndWaste|gases-together|HeightsNote)",
      "words/[\\w-]+/(?:paper-desk|paper-bench|paper-parts|prepare|gas-names)",
    ),
    alone: true,
  },
].map(({ alone, ...group }: Group) => ({ ...group, ...(alone && { includeDependenciesRecursively: false }) }));

interface Group {
  name: string;
  test: RegExp;
  /** Of two groups that have a module the higher takes it. */
  priority?: number;
  /** What its modules import stays where it is. */
  alone?: boolean;
}

/**
 * Lets the file an island or a worker starts from also hold what others import of it. Astro asks for files that export nothing else, and the
 * bundler then puts a file of one line before each of them: a request of its own for fifty bytes. A worker's own file is parted likewise.
 */
export const entriesShareFiles: Plugin = {
  name: "entries-share-files",
  applyToEnvironment: ({ name }) => name === "client",
  options: (given) => ({ ...given, preserveEntrySignatures: "allow-extension" }),
};

/** Puts the modules of the pages into their files. In the browser's build alone: the one that renders pages has no visitors. */
export const modulesShareFiles: Plugin = {
  name: "modules-share-files",
  applyToEnvironment: ({ name }) => name === "client",
  outputOptions: (given) => ({ ...given, codeSplitting: { groups: GROUPS } }),
};

/** The engine and the words are pure: what nobody asks for of a module goes, also what would be worked out while it loads. */
export const PURE_ROOMS = { moduleSideEffects: [{ test: /[\\/]src[\\/](?:engine|words)[\\/]/, sideEffects: false }] };
