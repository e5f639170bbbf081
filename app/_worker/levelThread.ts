import { availableParallelism } from "node:os";
import { parentPort, workerData } from "node:worker_threads";
import { type Elsewhere, level } from "#lib/levelling/level";
import type { Measures } from "#lib/levelling/problem";
import { IslandElsewhere, type IslandOrder } from "./islandElsewhere";
import { runIsland } from "./islandThread";
import type { ThreadMessage, ThreadOrder } from "./levelInThread";
import { startIslandThread } from "./startThread";

/** Milliseconds between two words of progress. */
const QUIET = 100;
/** Nodes from which a further thread is worth its start. */
const WORTH_A_THREAD = 1000;

function answerOrder({ problem, seed, rounds, stop, threads }: ThreadOrder): void {
  const flag = new Int32Array(stop);
  let told = Number.NEGATIVE_INFINITY;
  const tell = (message: ThreadMessage): void => parentPort?.postMessage(message);
  const onRound = (round: number, best: Measures): void => {
    if (performance.now() - told < QUIET) return;
    told = performance.now();
    tell({ kind: "round", round, best });
  };
  const elsewhere: Elsewhere = (island, first) => new IslandElsewhere({ problem, seed, island, first }, startIslandThread);
  const several = (threads ?? (problem.nodes.length < WORTH_A_THREAD ? 1 : availableParallelism())) > 1;
  const options = { seed, rounds, stop: () => Atomics.load(flag, 0) === 1, onRound };
  tell({ kind: "answer", answer: level(problem, options, several ? elsewhere : undefined) });
}

const order = workerData as ThreadOrder | IslandOrder;
if ("island" in order) runIsland(order);
else answerOrder(order);
