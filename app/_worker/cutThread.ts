import { parentPort, workerData } from "node:worker_threads";
import loadHighs from "highs";
import { highsProgram } from "#lib/cutting/fewest/highsProgram";
import type { CutAnswer } from "#lib/cutting/question";
import { searchCuts } from "#lib/cutting/searchCuts";
import type { CutMessage, CutOrder } from "./cutInThread";

const { question, stop } = workerData as CutOrder;
const flag = new Int32Array(stop);

const tell = (answer: CutAnswer, done: boolean): void => {
  const message: CutMessage = { answer, done };
  parentPort?.postMessage(message);
};

const search = searchCuts(question, highsProgram(await loadHighs()));
let told: CutAnswer | null = null;
for (let step = search.next(); ; step = search.next()) {
  const { value: answer } = step;
  const better = told === null || answer.used < told.used || answer.bound > told.bound;
  if (better || step.done) tell(answer, step.done === true || answer.used === answer.bound);
  told = answer;
  if (step.done || answer.used === answer.bound || Atomics.load(flag, 0) === 1) break;
}
