import type { EngineMaker, EngineNode, Interval, LevellingProblem, Precedence, Stretch } from "#lib/levelling/problem";
import { Chance } from "#lib/levelling/random";

const DAY = 1440;
const SKILLS = ["net", "pattern", "boned", "tailoring", "stretch", "hand", "dye", "millinery", "fit"];
/** Steps of a made-up garment: skill, least and most hours, machine, and the steps it waits for; -1 hours is a fitting. */
const STEPS: readonly {
  skill: string;
  hours: [number, number];
  machine?: string;
  after: readonly number[];
  lag?: number;
  strains?: boolean;
}[] = [
  { skill: "pattern", hours: [2, 5], after: [] },
  { skill: "stretch", hours: [1, 4], machine: "lockstitch", after: [0] },
  { skill: "fit", hours: [-1, 0], after: [1] },
  { skill: "pattern", hours: [1, 3], after: [2] },
  { skill: "net", hours: [1, 2], after: [3] },
  { skill: "net", hours: [4, 9], machine: "gathering", after: [4] },
  { skill: "net", hours: [3, 8], after: [5], strains: true },
  { skill: "boned", hours: [3, 7], machine: "lockstitch", after: [3] },
  { skill: "dye", hours: [1, 2], machine: "vat", after: [3], lag: 720 },
  { skill: "fit", hours: [-1, 0], after: [6, 7] },
  { skill: "boned", hours: [2, 5], after: [9] },
  { skill: "hand", hours: [3, 8], after: [10, 8], strains: true },
  { skill: "hand", hours: [1, 3], after: [11] },
  { skill: "fit", hours: [-1, 0], after: [12] },
];

/** A workroom of an invented staging, grown by seed: garments of fourteen steps, makers of unequal pace, fittings in performers' free time. */
export function workroomProblem(garments: number, makerCount: number, weeks: number, seed: number): LevellingProblem {
  const chance = new Chance(seed);
  const horizon = (weeks + 6) * 7 * DAY;
  const days = Array.from({ length: horizon / DAY }, (_, day) => day).filter((day) => day % 7 < 5);
  const performers = Math.max(3, Math.ceil(garments / 3));
  const dueWeeks = Array.from({ length: garments }, () => weeks - chance.below(Math.max(1, weeks >> 1)));
  const nodes: EngineNode[] = [];
  const precedences: Precedence[] = [];
  for (let garment = 0; garment < garments; garment++) {
    const first = nodes.length;
    const group = `garment ${garment}`;
    STEPS.forEach((step, i) => {
      const id = `${group}/${i}`;
      const skill = SKILLS.indexOf(step.skill);
      const release = i === 0 ? chance.below(Math.max(1, dueWeeks[garment]! - 4)) * 7 * DAY : 0;
      if (step.hours[0] < 0) {
        nodes.push({
          kind: "fitting",
          id,
          group,
          performer: garment % performers,
          minutes: 15,
          fitterSkill: skill,
          release,
          step: 15,
          pin: null,
        });
      } else {
        nodes.push({
          kind: "task",
          id,
          group,
          minutes: 15 * Math.round(4 * (step.hours[0] + chance.next() * (step.hours[1] - step.hours[0]))),
          crew: [{ skill, count: 1 }],
          machines: step.machine === undefined ? [] : [{ machine: ["lockstitch", "gathering", "vat"].indexOf(step.machine), count: 1 }],
          release,
          pauses: step.skill !== "dye",
          straining: step.strains ? { run: 120, rest: 15 } : null,
          pin: null,
        });
      }
      for (const before of step.after) {
        precedences.push({ before: first + before, after: first + i, lag: step.lag ?? 0, lagKind: "elapsed", maxLag: null });
      }
    });
  }
  return {
    skills: SKILLS,
    makers: Array.from({ length: makerCount }, (_, index) => makerOf(index, days, chance)),
    machines: [
      { id: "lockstitch", count: Math.max(3, makerCount >> 1), calendar: null },
      { id: "gathering", count: Math.max(1, makerCount >> 2), calendar: null },
      { id: "vat", count: Math.max(1, makerCount >> 3), calendar: null },
    ],
    rooms: [
      {
        id: "fitting room",
        count: Math.max(1, makerCount >> 3),
        free: days.map((day) => ({ start: day * DAY + 540, end: day * DAY + 1080 })),
      },
    ],
    performers: Array.from({ length: performers }, (_, index) => ({ id: `performer ${index}`, free: freeTime(days, chance) })),
    nodes,
    precedences,
    dues: Array.from({ length: garments }, (_, garment) => ({
      node: (garment + 1) * STEPS.length - 1,
      at: dueWeeks[garment]! * 7 * DAY,
      weight: 1 + chance.below(3),
      label: `garment ${garment}`,
    })),
    horizon,
    week: { minutes: 7 * DAY, offset: 0 },
    current: null,
  };
}

/** The first makers cover every skill between them; further ones have two or three. */
function makerOf(index: number, days: readonly number[], chance: Chance): EngineMaker {
  const profiles = [
    ["pattern", "fit", "boned"],
    ["net", "hand", "stretch"],
    ["boned", "hand", "tailoring"],
    ["net", "dye", "hand"],
    ["stretch", "pattern", "fit"],
    ["millinery", "hand", "net"],
  ];
  const own = profiles[index % profiles.length]!;
  const speed = 800 + 50 * chance.below(4);
  return {
    id: `maker ${index}`,
    pace: SKILLS.map((skill) => (own.includes(skill) ? 800 + 100 * chance.below(5) : 0)),
    calendar: days.flatMap((day): Stretch[] => [
      { start: day * DAY + 540, end: day * DAY + 780, speed, overtime: false },
      { start: day * DAY + 825, end: day * DAY + 1050, speed, overtime: false },
      { start: day * DAY + 1050, end: day * DAY + 1140, speed, overtime: true },
    ]),
    costPerHour: 2000,
    overtimeCostPerHour: 3000,
  };
}

/** An hour and a quarter at some time on most days. */
function freeTime(days: readonly number[], chance: Chance): Interval[] {
  return days
    .filter(() => chance.next() < 0.8)
    .map((day) => {
      const start = day * DAY + 600 + 15 * chance.below(20);
      return { start, end: start + 75 };
    });
}
