import { describe, expect, it } from "vitest";
import type { Interval, LevellingProblem, Placement, Plan, Visit } from "../problem";
import * as day from "../testing/smallDay";
import { checkPlan } from "./checkPlan";

const { SMALL_DAY, SMALL_DAY_PLAN } = day;
const DAY = 1440;

const withPlaced = (node: number, change: Partial<Placement> | null): Plan => ({
  ...SMALL_DAY_PLAN,
  placed: SMALL_DAY_PLAN.placed.map((placement, index) => (index === node ? change && { ...placement!, ...change } : placement)),
});
const at = (...stretches: readonly [number, number][]): Pick<Placement, "start" | "end" | "stretches"> => ({
  start: stretches[0]![0],
  end: stretches.at(-1)![1],
  stretches: stretches.map(([start, end]): Interval => ({ start, end })),
});
const withVisit = (change: Partial<Visit>, plan: Plan = SMALL_DAY_PLAN): Plan => ({ ...plan, visits: [{ ...plan.visits[0]!, ...change }] });
const withNode = (node: number, change: object): LevellingProblem => ({
  ...SMALL_DAY,
  nodes: SMALL_DAY.nodes.map((one, index) => (index === node ? { ...one, ...change } : one)),
});

describe("checkPlan", () => {
  it("accepts a legal plan", () => {
    expect(checkPlan(SMALL_DAY, SMALL_DAY_PLAN)).toEqual([]);
  });

  const refused: readonly [string, Plan, RegExp][] = [
    ["a place missing", { ...SMALL_DAY_PLAN, placed: SMALL_DAY_PLAN.placed.slice(1) }, /places for/],
    ["half a minute", withPlaced(day.DYE, at([680.5, 780.5])), /whole minute/],
    ["a maker nobody knows", withPlaced(day.CUT, { makers: [{ maker: 9, skill: 0 }] }), /not known/],
    ["a time past the horizon", withPlaced(day.DYE, at([2850, 2950])), /inside the horizon/],
    ["work before its release", withPlaced(day.MOUNT, at([720, 780])), /before its release/],
    ["a maker without the skill", withPlaced(day.SEW, { makers: [{ maker: 0, skill: 1 }] }), /does not have sew/],
    ["a skill the task does not ask for", withPlaced(day.CUT, { makers: [{ maker: 0, skill: 2 }] }), /fill the crew/],
    ["a crew with one missing", withPlaced(day.MOUNT, { makers: [{ maker: 0, skill: 0 }] }), /fill the crew/],
    [
      "one maker twice in a crew",
      withPlaced(day.MOUNT, {
        makers: [
          { maker: 1, skill: 0 },
          { maker: 1, skill: 1 },
        ],
      }),
      /serves twice/,
    ],
    ["too little work", withPlaced(day.SEW, at([960, 1019])), /hold 29.5 standard minutes/],
    ["too much work", withPlaced(day.SEW, at([960, 1021])), /before its last minute/],
    ["slow hands counted as quick ones", withPlaced(day.PINNED, { makers: [{ maker: 2, skill: 0 }] }), /hold 30 standard minutes/],
    ["work in the night", withPlaced(day.SEW, at([1060, 1120])), /not one in which it can be worked on/],
    ["overtime that is not allowed", withPlaced(day.EVENING, { overtime: false }), /not one in which it can be worked on/],
    ["work during the maker's fitting", withPlaced(day.CUT, at([540, 780], [840, 900])), /belongs to a fitting/],
    ["an end after the last stretch", withPlaced(day.DYE, { end: 800 }), /not with its last stretch/],
    ["a start before the first stretch", withPlaced(day.SEW, { start: 950 }), /not with its first stretch/],
    ["an idle hour in a task", withPlaced(day.CUT, at([540, 600], [690, 780], [840, 990])), /idle inside it/],
    ["a task that may not pause over midday", withPlaced(day.SEW, at([750, 780], [840, 870])), /may not pause/],
    ["straining work without a rest", withPlaced(day.BEAD, at([540, 660])), /without a rest/],
    ["a lag too short", withPlaced(day.SEW, at([950, 1010])), /20 minutes between them, 30 asked/],
    ["a lag too long", withPlaced(day.SEW, at([DAY + 900, DAY + 960])), /200 at most/],
    ["work before its predecessor ends", withPlaced(day.DYE, at([600, 700])), /dye after bead/],
    ["a pin at another time", withPlaced(day.PINNED, at([DAY + 661, DAY + 721])), /pinned to/],
    [
      "a pin with another maker",
      withPlaced(day.PINNED, { ...at([DAY + 660, DAY + 780]), makers: [{ maker: 2, skill: 0 }] }),
      /other makers/,
    ],
    ["a fitting too short", withPlaced(day.SECOND_FITTING, at([615, 629])), /takes 14 minutes/],
    ["a fitting off its step", withVisit({ end: 635 }, withPlaced(day.SECOND_FITTING, at([620, 635]))), /not on a step/],
    ["a fitting by somebody who cannot fit", withVisit({ fitter: 2 }), /not the one of the visit/],
    ["a visit while the performer is not free", withVisit({ start: 585, end: 615 }, movedFittings(-15)), /performer is not free/],
    ["a visit while the fitter is not there", withVisit({ start: 780, end: 810 }, movedFittings(180)), /cutter is not there/],
    ["a visit in a room that does not exist", withVisit({ room: 3 }), /not known/],
    ["a visit of another performer's", withVisit({ fittings: [day.FIRST_FITTING] }), /belongs to 0 visits/],
    ["a visit that ends after its last fitting", withVisit({ end: 645 }), /ends at 645/],
    [
      "fittings with a gap between them",
      withVisit({ end: 645 }, withPlaced(day.SECOND_FITTING, at([630, 645]))),
      /does not follow at once/,
    ],
    ["no reason for work without a place", { ...SMALL_DAY_PLAN, unplaced: SMALL_DAY_PLAN.unplaced.slice(1) }, /0 reasons/],
    [
      "a reason for work with a place",
      { ...SMALL_DAY_PLAN, unplaced: [...SMALL_DAY_PLAN.unplaced, { node: 0, reason: "no room", detail: "" }] },
      /also named as unplaced/,
    ],
    [
      "a reason that does not hold",
      { ...SMALL_DAY_PLAN, unplaced: SMALL_DAY_PLAN.unplaced.map((one) => ({ ...one, reason: "machine missing" as const })) },
      /is not so/,
    ],
    [
      "work that waits for nothing unplaced",
      { ...SMALL_DAY_PLAN, unplaced: SMALL_DAY_PLAN.unplaced.map((one) => ({ ...one, reason: "waits for an unplaced one" as const })) },
      /"waits for an unplaced one" is not so/,
    ],
    [
      "work after something without a place",
      {
        ...withPlaced(day.TRIM, { ...at([990, 1020]), makers: [{ maker: 0, skill: 0 }], overtime: false }),
        unplaced: SMALL_DAY_PLAN.unplaced.slice(0, 1),
      },
      /before it has none/,
    ],
  ];
  it("refuses more visits in a week than a performer may have, and takes them when what is fixed makes them so many", () => {
    const once: LevellingProblem = { ...SMALL_DAY, performers: [{ id: "dancer", free: [{ start: 600, end: 660 }], visitsAWeek: 1 }] };
    const [visit] = SMALL_DAY_PLAN.visits;
    const apart: Plan = {
      ...withPlaced(day.CUT, at([540, 600], [615, 630], [645, 780], [840, 930])),
      visits: [
        { ...visit!, end: 615, fittings: [day.FIRST_FITTING] },
        { ...visit!, start: 630, end: 645, fittings: [day.SECOND_FITTING] },
      ],
    };
    const placed = apart.placed.map((one, node) => (node === day.SECOND_FITTING ? { ...one!, ...at([630, 645]) } : one));
    expect(checkPlan(SMALL_DAY, { ...apart, placed })).toEqual([]);
    expect(checkPlan(once, { ...apart, placed })).toEqual(["dancer: 2 visits in week 0, 1 at most."]);
    expect(checkPlan(once, SMALL_DAY_PLAN)).toEqual([]);
    const pins = new Map([
      [day.FIRST_FITTING, 600],
      [day.SECOND_FITTING, 630],
    ]);
    const nodes = once.nodes.map((node, at) => {
      const start = pins.get(at);
      return node.kind === "fitting" && start !== undefined ? { ...node, pin: { fitter: 0, room: 0, start } } : node;
    });
    expect(checkPlan({ ...once, nodes }, { ...apart, placed })).toEqual([]);
  });

  it("refuses a machine or a room that is taken from outside", () => {
    const outside = [{ start: 630, end: 700 }];
    const machines = SMALL_DAY.machines.map((machine) => ({ ...machine, taken: outside }));
    expect(checkPlan({ ...SMALL_DAY, machines }, SMALL_DAY_PLAN)).toEqual(["overlock: 2 in use at minute 630, 1 there."]);
    const rooms = SMALL_DAY.rooms.map((room) => ({ ...room, taken: [{ start: 615, end: 630 }] }));
    expect(checkPlan({ ...SMALL_DAY, rooms }, SMALL_DAY_PLAN)).toEqual(["fitting room: 2 in use at minute 615, 1 there."]);
  });

  for (const [name, plan, fault] of refused) {
    it(`refuses ${name}`, () => {
      expect(checkPlan(SMALL_DAY, plan).join("\n")).toMatch(fault);
    });
  }

  it("refuses two tasks of one maker at once, whichever", () => {
    expect(checkPlan(SMALL_DAY, withPlaced(day.PINNED, at([560, 620]))).join("\n")).toMatch(/cut and mark overlap/);
  });

  it("refuses more of a machine than there is", () => {
    const problem = withNode(day.DYE, { machines: [{ machine: 0, count: 1 }] });
    expect(checkPlan(problem, withPlaced(day.DYE, at([660, 760]))).join("\n")).toMatch(/overlock: 2 in use/);
  });

  it("refuses work at a machine that is closed", () => {
    const problem = { ...SMALL_DAY, machines: [{ id: "overlock", count: 1, calendar: [{ start: 540, end: 1000 }] }] };
    expect(checkPlan(problem, SMALL_DAY_PLAN).join("\n")).toMatch(/sew: minute 1000 is not one/);
  });

  it("refuses a fitting inside a task that may not pause", () => {
    expect(checkPlan(withNode(day.CUT, { pauses: false }), SMALL_DAY_PLAN).join("\n")).toMatch(/which may not pause/);
  });

  it("refuses a room that is closed or full", () => {
    expect(
      checkPlan({ ...SMALL_DAY, rooms: [{ id: "room", count: 1, free: [{ start: 540, end: 620 }] }] }, SMALL_DAY_PLAN).join("\n"),
    ).toMatch(/not free for the visit/);
    expect(checkPlan({ ...SMALL_DAY, rooms: [{ ...SMALL_DAY.rooms[0]!, count: 0 }] }, SMALL_DAY_PLAN).join("\n")).toMatch(
      /1 in use at minute 600, 0 there/,
    );
  });

  it("refuses a lag of working time that is too short", () => {
    const problem = {
      ...SMALL_DAY,
      precedences: SMALL_DAY.precedences.map((link) => (link.after === day.PINNED ? { ...link, lag: 500 } : link)),
    };
    expect(checkPlan(problem, SMALL_DAY_PLAN).join("\n")).toMatch(/360 minutes between them, 500 asked/);
  });

  it("refuses two visits at once of one performer or one fitter", () => {
    const visit = SMALL_DAY_PLAN.visits[0]!;
    const twice: Plan = {
      ...withPlaced(day.SECOND_FITTING, at([600, 615])),
      visits: [
        { ...visit, end: 615, fittings: [day.FIRST_FITTING] },
        { ...visit, end: 615, fittings: [day.SECOND_FITTING] },
      ],
    };
    const faults = checkPlan({ ...SMALL_DAY, rooms: [{ ...SMALL_DAY.rooms[0]!, count: 2 }] }, twice).join("\n");
    expect(faults).toMatch(/performer has another at the same time/);
    expect(faults).toMatch(/cutter: the visit of first fitting and the visit of second fitting overlap/);
  });

  it("refuses straining tasks without a rest between them", () => {
    const problem = withNode(day.SEW, { straining: { run: 60, rest: 90 } });
    expect(checkPlan(problem, SMALL_DAY_PLAN).join("\n")).toMatch(/sew and press are straining/);
  });
});

function movedFittings(by: number): Plan {
  const moved = (node: number): Placement => {
    const { start, end, ...rest } = SMALL_DAY_PLAN.placed[node]!;
    return { ...rest, ...at([start + by, end + by]) };
  };
  return {
    ...SMALL_DAY_PLAN,
    placed: SMALL_DAY_PLAN.placed.map((placement, node) =>
      node === day.FIRST_FITTING || node === day.SECOND_FITTING ? moved(node) : placement,
    ),
  };
}
