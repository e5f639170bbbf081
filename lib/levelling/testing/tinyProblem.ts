import type { EngineFitting, EngineMaker, EngineTask, LevellingProblem, Stretch } from "../problem";

const DAY = 1440;

/** Days of eight hours from nine to five without a break; an evening hour is overtime. */
export const officeHours = (days: number, evening = false): Stretch[] =>
  Array.from({ length: days }, (_, day) => day).flatMap((day): Stretch[] => [
    { start: day * DAY + 540, end: day * DAY + 1020, speed: 1000, overtime: false },
    ...(evening ? [{ start: day * DAY + 1020, end: day * DAY + 1080, speed: 1000, overtime: true }] : []),
  ]);

export const tinyMaker = (id: string, pace: readonly number[], days = 10, evening = false): EngineMaker => ({
  id,
  pace,
  calendar: officeHours(days, evening),
  costPerHour: 2000,
  overtimeCostPerHour: 3000,
});

export const tinyTask = (id: string, minutes: number, rest: Partial<EngineTask> = {}): EngineTask => ({
  kind: "task",
  id,
  group: id.split("/")[0]!,
  minutes,
  crew: [{ skill: 0, count: 1 }],
  machines: [],
  release: 0,
  pauses: true,
  straining: null,
  pin: null,
  ...rest,
});

export const tinyFitting = (id: string, rest: Partial<EngineFitting> = {}): EngineFitting => ({
  kind: "fitting",
  id,
  group: id.split("/")[0]!,
  performer: 0,
  minutes: 15,
  fitterSkill: 1,
  release: 0,
  step: 15,
  pin: null,
  ...rest,
});

/** A problem of ten days with what is given and nothing else. */
export const tinyProblem = (rest: Partial<LevellingProblem>): LevellingProblem => ({
  skills: ["sew", "fit"],
  makers: [tinyMaker("stitcher", [1000, 1000])],
  machines: [],
  rooms: [{ id: "room", count: 1, free: officeHours(10) }],
  performers: [{ id: "dancer", free: officeHours(10) }],
  nodes: [],
  precedences: [],
  dues: [],
  horizon: 10 * DAY,
  week: { minutes: 7 * DAY, offset: 0 },
  current: null,
  ...rest,
});

export const follows = (
  before: number,
  after: number,
  rest: Partial<LevellingProblem["precedences"][number]> = {},
): LevellingProblem["precedences"][number] => ({
  before,
  after,
  lag: 0,
  lagKind: "elapsed",
  maxLag: null,
  ...rest,
});
