import type { Worker } from "node:worker_threads";
import type { LevellingAnswer, LevellingProblem, Measures } from "#lib/levelling/problem";

export interface ThreadOptions {
  readonly seed: number;
  /** Rounds of the search after which it ends. */
  readonly rounds: number;
  /** Time after which it ends, at the end of its round. */
  readonly seconds: number;
  /** Told now and then, at most ten times a second. */
  readonly onProgress?: (round: number, best: Measures) => void;
  /** Threads to search in: as many as are worth it when absent. The answer is the same. */
  readonly threads?: number;
  /** Ends the search early; the best plan so far is the answer all the same. */
  readonly signal?: AbortSignal;
}

/** What the thread is given. */
export interface ThreadOrder {
  readonly problem: LevellingProblem;
  readonly seed: number;
  readonly rounds: number;
  readonly threads: number | null;
  /** One integer: 1 asks the search to stop. */
  readonly stop: SharedArrayBuffer;
}

export type ThreadMessage =
  | { readonly kind: "round"; readonly round: number; readonly best: Measures }
  | { readonly kind: "answer"; readonly answer: LevellingAnswer };

/**
 * Levels in a thread of its own, so that whoever asks stays awake, and stops on rounds, time or the signal, keeping the best plan.
 *
 * @param start starts the thread: pages find its file elsewhere than the job process
 * @throws what the thread throws: a defect
 */
export function levelInThread(
  problem: LevellingProblem,
  options: ThreadOptions,
  start: (order: ThreadOrder) => Worker,
): Promise<LevellingAnswer> {
  const stop = new SharedArrayBuffer(4);
  const ask = () => void Atomics.store(new Int32Array(stop), 0, 1);
  const order: ThreadOrder = { problem, seed: options.seed, rounds: options.rounds, threads: options.threads ?? null, stop };
  const worker = start(order);
  const timer = setTimeout(ask, options.seconds * 1000);
  options.signal?.addEventListener("abort", ask);
  if (options.signal?.aborted) ask();
  return new Promise<LevellingAnswer>((done, fail) => {
    worker.on("message", (message: ThreadMessage) => {
      if (message.kind === "answer") done(message.answer);
      else options.onProgress?.(message.round, message.best);
    });
    worker.once("error", fail);
    worker.once("exit", (code) => fail(new Error(`The levelling thread ended without an answer (exit code ${code}).`)));
  }).finally(() => {
    clearTimeout(timer);
    options.signal?.removeEventListener("abort", ask);
  });
}
