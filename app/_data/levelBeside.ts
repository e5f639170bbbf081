import path from "node:path";
import { Worker } from "node:worker_threads";
import type { LevellingAnswer, LevellingProblem } from "#lib/levelling/problem";
import { levelInThread } from "../_worker/levelInThread";

/** A page waits no longer than this. */
const LONGEST_SECONDS = 5;

/** The thread as the start bundles it: a page is bundled elsewhere and finds it by this name. */
const FILE = path.join(".build", "levelThread.mjs");

/** Levels for a page, in a thread of its own: the plan that the kept one becomes with the least changed. */
export const levelBeside = (problem: LevellingProblem, seed: number): Promise<LevellingAnswer> =>
  levelInThread(
    problem,
    { seed, rounds: 0, seconds: LONGEST_SECONDS },
    (workerData) => new Worker(path.join(process.cwd(), FILE), { workerData }),
  );
