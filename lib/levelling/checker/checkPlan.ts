import type { LevellingProblem, Plan } from "../problem";
import { machineFaults, roomFaults } from "./capacity";
import { fittingFaults } from "./fittings";
import { makerFaults } from "./makers";
import { precedenceFaults } from "./precedences";
import { shapeFaults } from "./shape";
import { taskFaults } from "./tasks";
import { unplacedFaults } from "./unplaced";
import { visitFaults } from "./visits";

/** Everything that makes a plan illegal, in words; empty when it is legal. Written apart from the engine: slow, simple, minute by minute. */
export function checkPlan(problem: LevellingProblem, plan: Plan): readonly string[] {
  const shape = shapeFaults(problem, plan);
  if (shape.length > 0) return shape;
  return [taskFaults, fittingFaults, visitFaults, makerFaults, machineFaults, roomFaults, precedenceFaults, unplacedFaults].flatMap(
    (check) => check(problem, plan),
  );
}
