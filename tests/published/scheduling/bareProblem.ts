import type { Due, EngineMachine, EngineMaker, EngineTask, LevellingProblem } from "#lib/levelling/problem";

interface Bare {
  readonly skills: readonly string[];
  readonly makers: readonly Pick<EngineMaker, "id" | "pace">[];
  readonly machines: readonly EngineMachine[];
  readonly tasks: readonly Pick<EngineTask, "minutes" | "crew" | "machines">[];
  readonly successors: readonly (readonly number[])[];
  readonly dues: readonly Due[];
}

/** A problem of the literature: no calendars, releases or fittings, time without breaks, nothing paused. */
export function bareProblem({ skills, makers, machines, tasks, successors, dues }: Bare): LevellingProblem {
  const horizon = tasks.reduce((sum, { minutes }) => sum + minutes, 1);
  const digits = String(tasks.length).length;
  return {
    skills,
    machines,
    rooms: [],
    performers: [],
    makers: makers.map((maker) => ({
      ...maker,
      calendar: [{ start: 0, end: horizon, speed: 1000, overtime: false }],
      costPerHour: 0,
      overtimeCostPerHour: 0,
    })),
    nodes: tasks.map((task, i) => ({
      ...task,
      kind: "task",
      id: String(i).padStart(digits, "0"),
      group: String(i),
      release: 0,
      pauses: false,
      straining: null,
      pin: null,
    })),
    precedences: successors.flatMap((list, before) =>
      list.map((after) => ({ before, after, lag: 0, lagKind: "elapsed" as const, maxLag: null })),
    ),
    dues,
    horizon,
    week: { minutes: horizon, offset: 0 },
    current: null,
  };
}
