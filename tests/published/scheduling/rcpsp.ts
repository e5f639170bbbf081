import type { LevellingProblem } from "#lib/levelling/problem";
import { bareProblem } from "./bareProblem";

/** A line of the resource-constrained project scheduling sets (Kolisch & Sprecher 1996): jobs are [duration, demands, successors]. */
export interface RcpspLine {
  readonly id: string;
  readonly capacity: readonly number[];
  readonly jobs: readonly (readonly [number, readonly number[], readonly number[]])[];
  readonly best: number;
  readonly lower: number;
  readonly optimal: boolean;
  readonly criticalPath: number;
}

export const isRcpsp = (line: object): line is RcpspLine => "capacity" in line && "jobs" in line;

/** Resources are machines with counts; the last job is due at 0, so that its lateness is the makespan. */
export function rcpspProblem({ capacity, jobs }: RcpspLine): LevellingProblem {
  return bareProblem({
    machines: capacity.map((count, i) => ({ id: `resource ${i}`, count, calendar: null })),
    tasks: jobs.map(([minutes, demands]) => ({
      minutes,
      crew: [],
      machines: demands.flatMap((count, machine) => (count > 0 ? [{ machine, count }] : [])),
    })),
    successors: jobs.map(([, , successors]) => successors),
    dues: [{ node: jobs.length - 1, at: 0, weight: 1, label: "makespan" }],
    skills: [],
    makers: [],
  });
}
