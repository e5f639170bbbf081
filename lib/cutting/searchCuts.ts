import { checkFewest } from "./fewest/checkFewest";
import type { OpenProgram } from "./fewest/coverProgram";
import { fewestStocks, lengthPlan } from "./fewest/fewestStocks";
import { jobOf } from "./fewest/job";
import type { CutAnswer, CutQuestion } from "./question";
import { checkStrip } from "./strip/checkStrip";
import { shortestStrip } from "./strip/shortestStrip";
import type { Rectangle } from "./strip/strip";

const SEED = 1;

/**
 * Better and better answers to a question, the first at once, the last proved (a strip may never come to it). Blocks while it works on a step,
 * so it runs in a worker; whoever runs it stops when there is no more time. The same question always takes the same steps.
 */
export function* searchCuts(question: CutQuestion, open: OpenProgram): Generator<CutAnswer, CutAnswer> {
  if (question.kind === "stocks") {
    const job = jobOf(
      question.stock,
      question.lengths.map(([length]) => length),
      question.lengths.map(([, count]) => count),
    );
    const search = fewestStocks(job, open);
    try {
      for (let step = search.next(); ; step = search.next()) {
        const { bins: used, bound, patterns } = lengthPlan(job, step.value);
        const answer: CutAnswer = { kind: "stocks", used, bound, patterns };
        if (step.done) return answer;
        yield answer;
      }
    } finally {
      search.return({ plan: [], bound: 0 });
    }
  }
  const search = shortestStrip({ width: question.width, turned: question.turned, pieces: rectanglesOf(question.pieces) }, SEED);
  for (let step = search.next(); ; step = search.next()) {
    const { placed, height: used, bound } = step.value;
    const answer: CutAnswer = {
      kind: "strip",
      used,
      bound,
      placed: placed.map(({ x, y, width, height }) => [x, y, width, height] as const),
    };
    if (step.done) return answer;
    yield answer;
  }
}

/** What is wrong with an answer, in words, judged from the question alone by the independent checks. */
export const checkAnswer = (question: CutQuestion, answer: CutAnswer): readonly string[] => {
  if (answer.bound > answer.used) return [`The bound ${answer.bound} is above the ${answer.used} used.`];
  if (question.kind === "stocks")
    return answer.kind === "stocks"
      ? checkFewest({ patterns: answer.patterns, bins: answer.used, bound: answer.bound }, question.stock, question.lengths)
      : ["The answer is to another question."];
  if (answer.kind === "stocks") return ["The answer is to another question."];
  const placed = answer.placed.map(([x, y, width, height]) => ({ x, y, width, height }));
  return checkStrip({ width: question.width, turned: question.turned, pieces: rectanglesOf(question.pieces) }, placed, answer.used);
};

const rectanglesOf = (pieces: readonly (readonly [number, number, number])[]): readonly Rectangle[] =>
  pieces.flatMap(([width, height, count]) => Array.from({ length: count }, () => ({ width, height })));
