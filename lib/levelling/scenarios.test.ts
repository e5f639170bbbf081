import { describe, expect, it } from "vitest";
import { checkPlan } from "./checker/checkPlan";
import { level } from "./level";
import type { LevellingAnswer, LevellingProblem } from "./problem";
import { follows, officeHours, tinyFitting, tinyMaker, tinyProblem, tinyTask } from "./testing/tinyProblem";

const DAY = 1440;

function levelled(problem: LevellingProblem, rounds = 3): LevellingAnswer {
  const answer = level(problem, { seed: 1, rounds, stop: () => false });
  expect(checkPlan(problem, answer.plan)).toEqual([]);
  return answer;
}
const startOf = ({ plan }: LevellingAnswer, node: number): number | undefined => plan.placed[node]?.start;

describe("levelling", () => {
  it("uses overtime only to take lateness away", () => {
    const made = (at: number) =>
      tinyProblem({
        makers: [tinyMaker("stitcher", [1000, 0], 10, true)],
        nodes: [tinyTask("a/sew", 540)],
        dues: [{ node: 0, at, weight: 1, label: "a" }],
      });
    expect(levelled(made(1080)).measures).toMatchObject({ weightedLateness: 0, overtimeMinutes: 60 });
    expect(levelled(made(1080)).bounds.overtimeMinutes).toBe(60);
    expect(levelled(made(2 * DAY)).measures).toMatchObject({ weightedLateness: 0, overtimeMinutes: 0 });
  });

  it("gives work to the quicker maker, and to the slower when the quicker is busy", () => {
    const answer = levelled(
      tinyProblem({
        makers: [tinyMaker("quick", [1000, 0]), tinyMaker("slow", [500, 0])],
        nodes: [tinyTask("a/sew", 120), tinyTask("b/sew", 120)],
      }),
      0,
    );
    expect(answer.plan.placed.map((placement) => placement!.end)).toEqual([660, 780]);
  });

  it("lets a fitting interrupt a cut, which goes on afterwards", () => {
    const answer = levelled(
      tinyProblem({
        performers: [{ id: "dancer", free: [{ start: 600, end: 630 }] }],
        nodes: [tinyTask("a/cut", 240), tinyFitting("b/fit")],
        dues: [{ node: 0, at: 700, weight: 1, label: "a" }],
      }),
      0,
    );
    expect(answer.plan.placed[0]!.stretches).toEqual([
      { start: 540, end: 600 },
      { start: 615, end: 795 },
    ]);
  });

  it("bundles the fittings of one performer in one visit when none waits for it", () => {
    const answer = levelled(tinyProblem({ nodes: ["a/fit", "b/fit", "c/fit"].map((id) => tinyFitting(id)) }));
    expect(answer.measures.visits).toBe(1);
    expect(answer.plan.visits[0]!.fittings).toHaveLength(3);
  });

  it("moves the first step so that the next can follow closely enough", () => {
    const answer = levelled(
      tinyProblem({
        performers: [{ id: "dancer", free: [{ start: 3 * DAY + 600, end: 3 * DAY + 630 }] }],
        nodes: [tinyTask("a/cut", 60), tinyFitting("a/fit")],
        precedences: [follows(0, 1, { maxLag: 300 })],
      }),
    );
    expect(answer.plan.unplaced).toEqual([]);
    expect(startOf(answer, 1)! - answer.plan.placed[0]!.end).toBeLessThanOrEqual(300);
  });

  it("keeps pins, and gives one up only where an earlier step cannot be done by then", () => {
    const made = (start: number) =>
      tinyProblem({
        nodes: [tinyTask("a/cut", 120), tinyTask("a/sew", 60, { pin: { makers: [0], start } })],
        precedences: [follows(0, 1)],
      });
    expect(startOf(levelled(made(900)), 1)).toBe(900);
    expect(levelled(made(600)).plan.unplaced).toMatchObject([{ node: 1, reason: "no time left in the calendars" }]);
  });

  it("says what has no place and why, and plans the rest", () => {
    const answer = levelled(
      tinyProblem({
        skills: ["sew", "fit", "millinery"],
        machines: [{ id: "blocker", count: 0, calendar: null }],
        nodes: [
          tinyTask("a/hat", 60, { crew: [{ skill: 2, count: 1 }] }),
          tinyTask("a/trim", 60),
          tinyTask("b/block", 60, { machines: [{ machine: 0, count: 1 }] }),
          tinyTask("c/sew", 6000),
          tinyTask("d/sew", 60, { release: 10 * DAY }),
          tinyTask("e/sew", 60),
        ],
        precedences: [follows(0, 1)],
      }),
    );
    expect(answer.plan.unplaced.map(({ node, reason }) => [node, reason])).toEqual([
      [0, "no one has the skill"],
      [1, "waits for an unplaced one"],
      [2, "machine missing"],
      [3, "no time left in the calendars"],
      [4, "no time left in the calendars"],
    ]);
    expect(startOf(answer, 5)).toBe(540);
  });

  it("says so when performer or room are never free", () => {
    const reason = (rest: Partial<LevellingProblem>) =>
      levelled(tinyProblem({ nodes: [tinyFitting("a/fit")], ...rest })).plan.unplaced[0]?.reason;
    expect(reason({ performers: [{ id: "dancer", free: [] }] })).toBe("performer never free");
    expect(reason({ rooms: [] })).toBe("no room");
    expect(reason({ performers: [{ id: "dancer", free: [{ start: 0, end: 500 }] }] })).toBe("no time left in the calendars");
  });

  it("rests between and within straining work", () => {
    const straining = { run: 120, rest: 30 };
    const answer = levelled(tinyProblem({ nodes: [tinyTask("a/bead", 180, { straining }), tinyTask("b/bead", 60, { straining })] }), 0);
    expect(answer.plan.placed.map((placement) => [placement!.start, placement!.end])).toEqual([
      [540, 750],
      [780, 840],
    ]);
  });

  it("keeps at machines with opening hours", () => {
    const answer = levelled(
      tinyProblem({
        machines: [
          {
            id: "vat",
            count: 1,
            calendar: [
              { start: 600, end: 700 },
              { start: DAY + 600, end: DAY + 900 },
            ],
          },
        ],
        nodes: [
          tinyTask("a/dye", 120, { pauses: false, machines: [{ machine: 0, count: 1 }] }),
          tinyTask("b/dye", 120, { machines: [{ machine: 0, count: 1 }] }),
        ],
        dues: [{ node: 0, at: DAY, weight: 1, label: "a" }],
      }),
      0,
    );
    expect(startOf(answer, 0)).toBe(DAY + 600);
  });

  it("beats the plain rule where the earliest date goes to the lightest garment", () => {
    const problem = tinyProblem({
      nodes: [tinyTask("a/sew", 480), tinyTask("b/sew", 480)],
      dues: [
        { node: 0, at: 1000, weight: 1, label: "a" },
        { node: 1, at: 1010, weight: 9, label: "b" },
      ],
    });
    expect(levelled(problem, 0)).toMatchObject({ rule: "plain", rounds: 0, schedules: 1 });
    expect(levelled(problem).measures.weightedLateness).toBeLessThan(levelled(problem, 0).measures.weightedLateness);
  });

  it("stops between rounds when told", () => {
    let asked = 0;
    const answer = level(tinyProblem({ nodes: [tinyTask("a/sew", 60)] }), { seed: 1, rounds: 100, stop: () => ++asked > 4 });
    expect(answer.rounds).toBe(4);
  });

  it("crosses a crew's calendars and seats each person once", () => {
    const answer = levelled(
      tinyProblem({
        makers: [tinyMaker("both", [1000, 1000]), { ...tinyMaker("sewer", [500, 0]), calendar: officeHours(3).slice(1) }],
        nodes: [
          tinyTask("a/mount", 60, {
            crew: [
              { skill: 0, count: 1 },
              { skill: 1, count: 1 },
            ],
          }),
        ],
      }),
    );
    expect(answer.plan.placed[0]).toMatchObject({
      start: DAY + 540,
      end: DAY + 660,
      makers: [
        { maker: 1, skill: 0 },
        { maker: 0, skill: 1 },
      ],
    });
  });
});
