import type { CutAnswer, CutQuestion } from "#lib/cutting/question";
import { startCutThread } from "./startThread";

/** What the thread is given. */
export interface CutOrder {
  readonly question: CutQuestion;
  /** One integer: 1 asks the search to stop. */
  readonly stop: SharedArrayBuffer;
}

export interface CutMessage {
  readonly answer: CutAnswer;
  /** The search has come to its end: proved, or nothing more to try. */
  readonly done: boolean;
}

interface CutOptions {
  readonly seconds: number;
  readonly signal: AbortSignal;
  /** Told each better answer, and the last. */
  readonly onAnswer: (message: CutMessage) => void;
}

/** How long a step of a search may take after it was asked to stop. */
const GRACE_MS = 5000;

/**
 * Searches for a better cutting plan in a thread of its own, so that whoever asks stays awake, until it is proved, the time is up, or the
 * signal. A step that takes too long after that is broken off: the answers told before stand.
 * @throws what the thread throws: a defect
 */
export function cutInThread(question: CutQuestion, { seconds, signal, onAnswer }: CutOptions): Promise<void> {
  const stop = new SharedArrayBuffer(4);
  const worker = startCutThread({ question, stop });
  let late: NodeJS.Timeout | undefined;
  return new Promise<void>((done, fail) => {
    const ask = () => {
      Atomics.store(new Int32Array(stop), 0, 1);
      late = setTimeout(done, GRACE_MS);
    };
    const timer = setTimeout(ask, seconds * 1000);
    signal.addEventListener("abort", ask);
    if (signal.aborted) ask();
    worker.on("message", onAnswer);
    worker.once("error", fail);
    worker.once("exit", (code) => (code === 0 ? done() : fail(new Error(`The cutting thread ended with exit code ${code}.`))));
    worker.once("exit", () => {
      clearTimeout(timer);
      signal.removeEventListener("abort", ask);
    });
  }).finally(async () => {
    clearTimeout(late);
    await worker.terminate();
  });
}
