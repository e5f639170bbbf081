import fc from "fast-check";
import type { EngineFitting, EngineMaker, EngineNode, EngineTask, Interval, LevellingProblem, Precedence, Stretch } from "../problem";

const DAYS = 21;
const DAY = 1440;

/** Workroom days of a maker: 9 to 1, 2 to 6, weekends off, an evening that may be worked as overtime. */
function calendar(speed: number, startsAt: number, evenings: boolean): Stretch[] {
  return Array.from({ length: DAYS }, (_, day) => day)
    .filter((day) => day % 7 < 5)
    .flatMap((day): Stretch[] => {
      const at = day * DAY + startsAt;
      const hours: Stretch[] = [
        { start: at, end: at + 240, speed, overtime: false },
        { start: at + 300, end: at + 540, speed: day < 7 ? Math.ceil(speed / 2) : speed, overtime: false },
      ];
      return evenings ? [...hours, { start: at + 540, end: at + 660, speed, overtime: true }] : hours;
    });
}

const SKILLS = ["cut", "sew", "fit"];

const maker = (id: string): fc.Arbitrary<EngineMaker> =>
  fc
    .record({
      pace: fc.tuple(...SKILLS.map(() => fc.constantFrom(0, 500, 1000, 1250))),
      speed: fc.constantFrom(1000, 850),
      startsAt: fc.constantFrom(540, 600),
      evenings: fc.boolean(),
    })
    .map(({ pace, speed, startsAt, evenings }) => ({
      id,
      pace,
      calendar: calendar(speed, startsAt, evenings),
      costPerHour: 2000,
      overtimeCostPerHour: 3000,
    }));

const task = (id: string, group: string): fc.Arbitrary<EngineTask> =>
  fc
    .record({
      minutes: fc.constantFrom(0, 20, 60, 180, 300, 700),
      crew: fc.constantFrom<EngineTask["crew"]>(
        [],
        [{ skill: 0, count: 1 }],
        [{ skill: 1, count: 1 }],
        [{ skill: 1, count: 1 }],
        [
          { skill: 0, count: 1 },
          { skill: 1, count: 1 },
        ],
      ),
      machines: fc.constantFrom<EngineTask["machines"]>([], [], [{ machine: 0, count: 1 }], [{ machine: 1, count: 1 }]),
      release: fc.constantFrom(0, 0, 2000, 6000),
      pauses: fc.boolean(),
      straining: fc.constantFrom(null, null, { run: 90, rest: 20 }),
      pinned: fc.integer({ min: 0, max: 30 }),
    })
    .map(({ pinned, ...rest }) => ({
      ...rest,
      kind: "task",
      id,
      group,
      straining: rest.crew.length === 0 ? null : rest.straining,
      pin: pinned === 0 && rest.crew.length === 1 ? { makers: [0], start: 3480 } : null,
    }));

const fitting = (id: string, group: string, performers: number): fc.Arbitrary<EngineFitting> =>
  fc
    .record({ performer: fc.nat(performers - 1), minutes: fc.constantFrom(15, 20, 30), release: fc.constantFrom(0, 3000) })
    .map((rest) => ({ ...rest, kind: "fitting", id, group, fitterSkill: 2, step: 15, pin: null }));

/** A chain of work with a fitting in it, and a due. */
function garment(
  number: number,
  performers: number,
): fc.Arbitrary<{
  nodes: EngineNode[];
  links: { lag: number; kind: "elapsed" | "working"; most: boolean }[];
  due: number;
  weight: number;
}> {
  const id = `garment ${number}`;
  const node = (step: number): fc.Arbitrary<EngineNode> =>
    step === 2 ? fitting(`${id}/${step}`, id, performers) : task(`${id}/${step}`, id);
  return fc.record({
    nodes: fc.tuple(node(0), node(1), node(2), node(3)).map((nodes) => [...nodes]),
    links: fc.array(
      fc.record({
        lag: fc.constantFrom(0, 0, 30, 300),
        kind: fc.constantFrom("elapsed" as const, "working" as const),
        most: fc.nat(4).map((n) => n === 0),
      }),
      { minLength: 3, maxLength: 3 },
    ),
    due: fc.constantFrom(3 * DAY, 9 * DAY, 14 * DAY),
    weight: fc.integer({ min: 1, max: 5 }),
  });
}

const free = (days: readonly number[], from: number, to: number): Interval[] =>
  days.map((day) => ({ start: day * DAY + from, end: day * DAY + to }));

/** Small workrooms with everything a problem can hold: calendars, paces, crews, machines, fittings, lags, pins, straining work. */
export const randomProblem = (options: { garments: number; makers: number } = { garments: 4, makers: 4 }): fc.Arbitrary<LevellingProblem> =>
  fc
    .record({
      makers: fc.tuple(...Array.from({ length: options.makers }, (_, i) => maker(`maker ${i}`))),
      garments: fc.tuple(...Array.from({ length: options.garments }, (_, i) => garment(i, 2))),
      roomCount: fc.integer({ min: 1, max: 2 }),
      vatOpen: fc.boolean(),
    })
    .map(({ makers, garments, roomCount, vatOpen }) => {
      const weekdays = Array.from({ length: DAYS }, (_, day) => day).filter((day) => day % 7 < 5);
      const precedences = garments.flatMap(({ links }, g) =>
        links.map(
          (link, i): Precedence => ({
            before: g * 4 + i,
            after: g * 4 + i + 1,
            lag: link.lag,
            lagKind: link.kind,
            maxLag: link.most ? link.lag + 2000 : null,
          }),
        ),
      );
      return {
        skills: SKILLS,
        makers,
        machines: [
          { id: "overlock", count: 1, calendar: null },
          { id: "vat", count: 1, calendar: vatOpen ? null : free(weekdays, 500, 1000) },
        ],
        rooms: [{ id: "fitting room", count: roomCount, free: free(weekdays, 540, 1200) }],
        performers: [
          {
            id: "performer 0",
            free: free(weekdays, 600, 660)
              .concat(free([4, 11], 700, 800))
              .sort((a, b) => a.start - b.start),
          },
          {
            id: "performer 1",
            free: free(
              weekdays.filter((day) => day % 2 === 0),
              840,
              930,
            ),
          },
        ],
        nodes: garments.flatMap(({ nodes }) => nodes),
        precedences,
        dues: garments.map(({ due, weight }, g) => ({ node: g * 4 + 3, at: due, weight, label: `garment ${g}` })),
        horizon: DAYS * DAY,
        week: { minutes: 7 * DAY, offset: 0 },
        current: null,
      };
    });
