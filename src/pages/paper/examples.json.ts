/** The papers of the course without their answers, as their authors wrote them: what a paper of one's own can be started from. */
import { readFrontmatter } from "../../build/frontmatter.ts";

const files = import.meta.glob<string>("../../content/practicals/*.mdx", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** What is not on a paper: the answer, what was seen, and what the course says of the practical. */
function paperOf(data: unknown): unknown {
  const { title, minutes, samples, paper, parts } = data as Record<string, unknown>;
  return {
    title,
    minutes,
    samples: (samples as Record<string, unknown>[]).map(({ salt: _, ...given }) => given),
    paper,
    parts,
  };
}

export function GET(): Response {
  const papers = Object.entries(files).map(([path, text]) => {
    const slug = path.replace(/^.*\/|\.mdx$/g, "");
    return [slug, paperOf(readFrontmatter(path, text).data)];
  });
  return Response.json(Object.fromEntries(papers));
}
