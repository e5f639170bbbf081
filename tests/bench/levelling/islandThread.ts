import { parentPort } from "node:worker_threads";
import type { LevellingProblem } from "#lib/levelling/problem";
import { type ProjectIsland, projectIsland } from "#lib/levelling/project/projectIslands";
import { projectOf } from "#lib/levelling/project/projectOf";
import type { Migrant } from "#lib/levelling/project/projectSearch";

export type IslandOrder =
  | {
      readonly kind: "begin";
      readonly problem: LevellingProblem;
      readonly seed: number;
      readonly goal: number;
      readonly budget: number;
      readonly numbers: readonly number[];
    }
  | { readonly kind: "round"; readonly number: number; readonly from: Migrant | null };

const islands = new Map<number, ProjectIsland>();

parentPort?.on("message", async (order: IslandOrder) => {
  if (order.kind === "begin") {
    const { problem, seed, goal, budget, numbers } = order;
    const { project } = projectOf(problem)!;
    islands.clear();
    for (const number of numbers) islands.set(number, projectIsland(project, seed, goal, budget, number));
  } else parentPort?.postMessage({ number: order.number, landing: await islands.get(order.number)!(order.from) });
});
