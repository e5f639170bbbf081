import type { EngineTask, LevellingProblem, Placement, Plan, Stretch } from "../problem";

const DAY = 1440;
const hours = (evening: boolean): Stretch[] =>
  [0, DAY].flatMap((day): Stretch[] => [
    { start: day + 540, end: day + 780, speed: 1000, overtime: false },
    { start: day + 840, end: day + 1080, speed: 1000, overtime: false },
    ...(evening ? [{ start: day + 1080, end: day + 1200, speed: 1000, overtime: true }] : []),
  ]);

const task = (id: string, minutes: number, skill: number | null, rest: Partial<EngineTask> = {}): EngineTask => ({
  kind: "task",
  id,
  group: id,
  minutes,
  crew: skill === null ? [] : [{ skill, count: 1 }],
  machines: [],
  release: 0,
  pauses: true,
  straining: null,
  pin: null,
  ...rest,
});
const fitting = (id: string) => ({
  kind: "fitting" as const,
  id,
  group: id,
  performer: 0,
  minutes: 15,
  fitterSkill: 2,
  release: 0,
  step: 15,
  pin: null,
});

export const CUT = 0;
export const SEW = 1;
export const BEAD = 2;
export const DYE = 3;
export const MOUNT = 4;
export const PINNED = 5;
export const EVENING = 6;
export const FIRST_FITTING = 7;
export const SECOND_FITTING = 8;
export const HAT = 9;
export const TRIM = 10;

/** Two makers, two days, and one of everything the rules speak of. */
export const SMALL_DAY: LevellingProblem = {
  skills: ["cut", "sew", "fit", "millinery"],
  makers: [
    { id: "cutter", pace: [1000, 0, 1000, 0], calendar: hours(false), costPerHour: 2000, overtimeCostPerHour: 3000 },
    { id: "stitcher", pace: [0, 500, 0, 0], calendar: hours(true), costPerHour: 2000, overtimeCostPerHour: 3000 },
    { id: "apprentice", pace: [500, 0, 0, 0], calendar: hours(false), costPerHour: 2000, overtimeCostPerHour: 3000 },
  ],
  machines: [{ id: "overlock", count: 1, calendar: null }],
  rooms: [{ id: "fitting room", count: 1, free: [{ start: 540, end: 1080 }] }],
  performers: [{ id: "dancer", free: [{ start: 600, end: 660 }] }],
  nodes: [
    task("cut", 300, 0),
    task("sew", 30, 1, { pauses: false, machines: [{ machine: 0, count: 1 }] }),
    task("bead", 60, 1, { straining: { run: 60, rest: 20 }, machines: [{ machine: 0, count: 1 }] }),
    task("dye", 100, null),
    task("mount", 30, null, {
      crew: [
        { skill: 0, count: 1 },
        { skill: 1, count: 1 },
      ],
      release: DAY + 540,
    }),
    task("mark", 60, 0, { pin: { makers: [0], start: DAY + 660 } }),
    task("press", 30, 1, { release: 1080, straining: { run: 60, rest: 20 } }),
    fitting("first fitting"),
    fitting("second fitting"),
    task("hat", 30, 3),
    task("trim", 30, 0),
  ],
  precedences: [
    { before: CUT, after: SEW, lag: 30, lagKind: "elapsed", maxLag: 200 },
    { before: BEAD, after: DYE, lag: 0, lagKind: "working", maxLag: null },
    { before: DYE, after: PINNED, lag: 60, lagKind: "working", maxLag: null },
    { before: HAT, after: TRIM, lag: 0, lagKind: "elapsed", maxLag: null },
  ],
  dues: [{ node: SEW, at: 1000, weight: 2, label: "skirt" }],
  horizon: 2 * DAY,
  week: { minutes: 7 * DAY, offset: 0 },
  current: null,
};

const place = (makers: Placement["makers"], stretches: readonly (readonly [number, number])[], overtime = false): Placement => ({
  start: stretches[0]![0],
  end: stretches.at(-1)![1],
  makers,
  stretches: stretches.map(([start, end]) => ({ start, end })),
  overtime,
});

const cutter = [{ maker: 0, skill: 0 }];
const stitcher = [{ maker: 1, skill: 1 }];
const fitter = [{ maker: 0, skill: 2 }];

/** A legal plan of it, worked out by hand: the cut steps over both fittings and the midday break. */
export const SMALL_DAY_PLAN: Plan = {
  placed: [
    place(cutter, [
      [540, 600],
      [630, 780],
      [840, 930],
    ]),
    place(stitcher, [[960, 1020]]),
    place(stitcher, [
      [540, 600],
      [620, 680],
    ]),
    place([], [[680, 780]]),
    place([...cutter, ...stitcher], [[DAY + 540, DAY + 600]]),
    place(cutter, [[DAY + 660, DAY + 720]]),
    place(stitcher, [[1080, 1140]], true),
    place(fitter, [[600, 615]]),
    place(fitter, [[615, 630]]),
    null,
    null,
  ],
  visits: [{ performer: 0, fitter: 0, room: 0, start: 600, end: 630, fittings: [FIRST_FITTING, SECOND_FITTING] }],
  unplaced: [
    { node: HAT, reason: "no one has the skill", detail: "millinery" },
    { node: TRIM, reason: "waits for an unplaced one", detail: "hat" },
  ],
};
