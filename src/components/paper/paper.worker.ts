/** The engine in a worker: reads papers and sentences, and works out what follows. A newer paper ends the work on the one before. */
import { createPredictor } from "../../engine/bench/predictor.ts";
import { createSolver } from "../../engine/equilibrium/solve.ts";
import type { Answer } from "./paper-answer.ts";
import { type Question, readQuestion } from "./paper-question.ts";
import { type Pause, readWritten, workOut } from "./work-out.worker.ts";

const predictor = createPredictor(createSolver());
let newest = -1;

/** Longest stretch of work between two looks at the letter box, ms. */
const STRETCH = 60;

self.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  const asked = readQuestion(data);
  if (asked.do === "work out") newest = asked.id;
  answerTo(asked).catch((error: unknown) => {
    // An error in a promise reaches nobody; thrown from a task it reaches the page.
    setTimeout(() => {
      throw error;
    });
  });
});

async function answerTo(asked: Question): Promise<void> {
  const { id } = asked;
  const reply = (rest: Omit<Answer, "id">) => self.postMessage({ id, ...rest } satisfies Answer);
  switch (asked.do) {
    case "read sentences": {
      const { readInstruction } = await import("../../engine/wording/read-instruction.ts");
      return reply({ sentences: readInstruction(asked.pasted), done: true });
    }
    case "check":
      return reply({ faults: readWritten(asked.written).faults, done: true });
    case "order": {
      const { orderOf } = await import("./order.worker.ts");
      const order = orderOf(asked.written, predictor);
      return reply({ ...(order && { order }), done: true });
    }
    case "look further": {
      const { lookFurther } = await import("./look-further.worker.ts");
      const further = lookFurther(asked.written, asked.left, asked.cautions, predictor);
      return reply({ ...(further && { further }), done: true });
    }
    case "work out": {
      await workOut(asked.written, asked.cautions, predictor, reply, pauses(id, reply));
      return reply({ done: true });
    }
  }
}

/** Lets messages in now and then; false when a newer paper has come. */
function pauses(id: number, reply: (rest: Omit<Answer, "id">) => void): Pause {
  let since = performance.now();
  return async (done, of) => {
    if (performance.now() - since < STRETCH) return true;
    reply({ progress: { done, of } });
    await new Promise((resume) => setTimeout(resume));
    since = performance.now();
    return newest === id;
  };
}
