import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { Worker } from "node:worker_threads";
import type { RcpspLine } from "../../published/scheduling/rcpsp";

const MODEL = `include "cumulative.mzn";
int: jobs; int: resources; int: links; int: horizon;
array[1..jobs] of int: duration;
array[1..resources] of int: capacity;
array[1..resources, 1..jobs] of int: need;
array[1..links] of int: before;
array[1..links] of int: after;
array[1..jobs] of var 0..horizon: start;
var 0..horizon: end;
constraint forall(i in 1..links)(start[before[i]] + duration[before[i]] <= start[after[i]]);
constraint forall(r in 1..resources)(let { set of int: T = {i | i in 1..jobs where need[r, i] > 0 /\\ duration[i] > 0} } in
  cumulative([start[i] | i in T], [duration[i] | i in T], [need[r, i] | i in T], capacity[r]));
constraint forall(i in 1..jobs)(start[i] + duration[i] <= end);
solve :: int_search(start, smallest, indomain_min) minimize end;
`;

interface Message {
  readonly type: string;
  readonly output?: { readonly json: { readonly start: readonly number[] } };
  readonly status?: string;
}

/** What the reference solver found in its time; `start` is null when it found nothing. */
export interface Reference {
  readonly start: readonly number[] | null;
  readonly proved: boolean;
}

/**
 * Chuffed by MiniZinc's own build for the browser, whose worker is run in a thread of Node. The time counts from the model's
 * reading to the end; loading the program does not count.
 */
export function referenceFor({ capacity, jobs }: RcpspLine, seconds: number): Promise<Reference> {
  const dist = dirname(createRequire(import.meta.url).resolve("minizinc/minizinc-worker.js"));
  const worker = new Worker(shimOf(join(dist, "minizinc-worker.js")), { eval: true, stderr: true });
  const links = jobs.flatMap(([, , successors], i) => successors.map((after) => [i + 1, after + 1] as const));
  const data = {
    jobs: jobs.length,
    resources: capacity.length,
    links: links.length,
    horizon: jobs.reduce((sum, [duration]) => sum + duration, 0),
    duration: jobs.map(([duration]) => duration),
    capacity,
    need: capacity.map((_, r) => jobs.map(([, demands]) => demands[r]!)),
    before: links.map(([before]) => before),
    after: links.map(([, after]) => after),
  };
  const limit = ["--time-limit", String(Math.round(seconds * 1000))];
  const args = ["-i", "-f", "--output-mode", "json", "--solver", "chuffed", ...limit, "model.mzn", "data.json"];
  let start: readonly number[] | null = null;
  let proved = false;
  let began = false;
  return new Promise<Reference>((done, fail) => {
    worker.on("error", fail);
    worker.on("message", (message: Message) => {
      if (message.type === "ready" && !began) {
        began = true;
        worker.postMessage({ jsonStream: true, args, files: { "model.mzn": MODEL, "data.json": JSON.stringify(data) } });
      }
      if (message.type === "solution") start = message.output!.json.start;
      if (message.type === "status") proved = message.status === "OPTIMAL_SOLUTION";
      if (message.type === "exit") done({ start, proved });
    });
    worker.postMessage({ wasmURL: join(dist, "minizinc.wasm"), dataURL: join(dist, "minizinc.data") });
  }).finally(() => worker.terminate());
}

/** The few words of a browser's worker that the program speaks. */
const shimOf = (file: string): string => `const { parentPort } = require("node:worker_threads");
globalThis.postMessage = (message) => parentPort.postMessage(message);
globalThis.addEventListener = (kind, listen) => kind === "message" && parentPort.on("message", (data) => listen({ data }));
require(${JSON.stringify(file)});`;
