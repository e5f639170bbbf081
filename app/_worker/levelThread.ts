import { parentPort, workerData } from "node:worker_threads";
import { level } from "#lib/levelling/level";
import type { Measures } from "#lib/levelling/problem";
import type { ThreadMessage, ThreadOrder } from "./levelInThread";

/** Milliseconds between two words of progress. */
const QUIET = 100;

const { problem, seed, rounds, stop } = workerData as ThreadOrder;
const flag = new Int32Array(stop);
let told = Number.NEGATIVE_INFINITY;

const tell = (message: ThreadMessage): void => parentPort?.postMessage(message);

const onRound = (round: number, best: Measures): void => {
  if (performance.now() - told < QUIET) return;
  told = performance.now();
  tell({ kind: "round", round, best });
};

tell({ kind: "answer", answer: level(problem, { seed, rounds, stop: () => Atomics.load(flag, 0) === 1, onRound }) });
