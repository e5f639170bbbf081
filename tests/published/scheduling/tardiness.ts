import type { LevellingProblem } from "#lib/levelling/problem";
import { bareProblem } from "./bareProblem";

/** A line of the single-machine weighted tardiness sets of the OR-Library (Beasley; Crauwels, Potts & Van Wassenhove 1998). */
export interface TardinessLine {
  readonly id: string;
  readonly processing: readonly number[];
  readonly weight: readonly number[];
  readonly due: readonly number[];
  readonly optimum: number;
}

export const isTardiness = (line: object): line is TardinessLine => "processing" in line && "due" in line;

/** One maker with one skill does everything. */
export function tardinessProblem({ processing, weight, due }: TardinessLine): LevellingProblem {
  return bareProblem({
    skills: ["work"],
    makers: [{ id: "machine", pace: [1000] }],
    machines: [],
    tasks: processing.map((minutes) => ({ minutes, crew: [{ skill: 0, count: 1 }], machines: [] })),
    successors: processing.map(() => []),
    dues: due.map((at, node) => ({ node, at, weight: weight[node]!, label: `job ${node}` })),
  });
}
