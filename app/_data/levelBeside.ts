import path from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import type { LevellingAnswer, LevellingProblem } from "#lib/levelling/problem";
import { levelInThread } from "../_worker/levelInThread";

/** A page waits no longer than this. */
const LONGEST_SECONDS = 5;

/** The thread as the start bundles it. Named in a script of text, since a bundler would follow a path into what is bundled already. */
const start = (workerData: unknown): Worker => {
  const file = pathToFileURL(path.join(process.cwd(), ".build", "levelThread.mjs")).href;
  return new Worker(`import(${JSON.stringify(file)})`, { eval: true, workerData });
};

/** Levels for a page, in a thread of its own: the plan that the kept one becomes with the least changed. */
export const levelBeside = (problem: LevellingProblem, seed: number): Promise<LevellingAnswer> =>
  levelInThread(problem, { seed, rounds: 0, seconds: LONGEST_SECONDS }, start);
