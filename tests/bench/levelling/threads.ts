import { Worker } from "node:worker_threads";
import type { LevellingProblem } from "#lib/levelling/problem";
import { type Landing, PROJECT_ISLANDS, type ProjectIsland } from "#lib/levelling/project/projectIslands";
import type { IslandOrder } from "./islandThread";

/** Threads that hold the islands of one project after the other. */
export class Threads {
  private readonly workers: readonly Worker[];
  private readonly waiting = new Map<number, (landing: Landing) => void>();

  constructor(count: number) {
    this.workers = Array.from({ length: Math.min(count, PROJECT_ISLANDS) }, () => {
      const worker = startThread();
      worker.on("message", ({ number, landing }: { number: number; landing: Landing }) => this.waiting.get(number)!(landing));
      worker.on("error", (error) => {
        throw error;
      });
      return worker;
    });
  }

  /** Islands spread evenly over the threads. `problem`: sorted, and a project. */
  islands(problem: LevellingProblem, seed: number, goal: number, budget: number): ProjectIsland[] {
    const numbers = Array.from({ length: PROJECT_ISLANDS }, (_, number) => number);
    const workerOf = (number: number): number => number % this.workers.length;
    this.workers.forEach((worker, w) => {
      const own = numbers.filter((number) => workerOf(number) === w);
      worker.postMessage({ kind: "begin", problem, seed, goal, budget, numbers: own } satisfies IslandOrder);
    });
    return numbers.map((number) => (from) => {
      this.workers[workerOf(number)]!.postMessage({ kind: "round", number, from } satisfies IslandOrder);
      return new Promise<Landing>((done) => this.waiting.set(number, done));
    });
  }

  async end(): Promise<void> {
    await Promise.all(this.workers.map((worker) => worker.terminate()));
  }
}

/** A loader named on a thread's command line is passed over when the parent has one already: the thread asks for it itself. */
function startThread(): Worker {
  const [loader, file] = [import.meta.resolve("tsx/esm/api"), new URL("./islandThread.ts", import.meta.url).href].map((url) =>
    JSON.stringify(url),
  );
  return new Worker(`import(${loader}).then(({ tsImport }) => tsImport(${file}, ${file}))`, { eval: true });
}
