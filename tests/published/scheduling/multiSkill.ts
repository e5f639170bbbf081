import type { LevellingProblem } from "#lib/levelling/problem";
import { bareProblem } from "./bareProblem";

/** A line of the multi-skill sets (Young, Feydy & Schutt 2017): jobs are [duration, workers needed per skill, successors]. */
export interface MultiSkillLine {
  readonly id: string;
  readonly skills: number;
  readonly jobs: readonly (readonly [number, readonly number[], readonly number[]])[];
  /** The skills each worker has. */
  readonly workers: readonly (readonly number[])[];
  readonly best: number;
  readonly lower: number;
  readonly optimal: boolean;
}

export const isMultiSkill = (line: object): line is MultiSkillLine => "workers" in line && "jobs" in line;

/** Jobs are tasks with a crew, all workers alike in pace; the last job is due at 0, so that its lateness is the makespan. */
export function multiSkillProblem({ skills, jobs, workers }: MultiSkillLine): LevellingProblem {
  const names = Array.from({ length: skills }, (_, i) => `skill ${i}`);
  return bareProblem({
    skills: names,
    makers: workers.map((own, i) => ({
      id: `worker ${String(i).padStart(2, "0")}`,
      pace: names.map((_, skill) => (own.includes(skill) ? 1000 : 0)),
    })),
    machines: [],
    tasks: jobs.map(([minutes, needs]) => ({
      minutes,
      crew: minutes === 0 ? [] : needs.flatMap((count, skill) => (count > 0 ? [{ skill, count }] : [])),
      machines: [],
    })),
    successors: jobs.map(([, , successors]) => successors),
    dues: [{ node: jobs.length - 1, at: 0, weight: 1, label: "makespan" }],
  });
}
