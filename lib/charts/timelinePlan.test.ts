import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { PlannedTask } from "#lib/planning/stagingPlan";
import { smallStaging } from "#lib/staging/fixtures";
import { lateNodes, numbersText, timelineSpan, timelineTasks } from "./timelinePlan";

const monday = dayNumber("2027-01-11" as PlainDate);
const at = (day: number, hour: number) => (monday + day) * 1440 + hour * 60;
const staging = smallStaging();
const [maker] = staging.makers;
const task = (stretches: readonly (readonly [number, number])[], overtimeMinutes = 0): PlannedTask => ({
  node: 0,
  key: "SM 001/cut",
  garments: ["SM 001"],
  origin: "operation",
  operation: "cut",
  name: "Cut",
  skill: "net",
  machine: null,
  minutes: 60,
  maker: maker!.code,
  start: stretches[0]![0],
  end: stretches.at(-1)![1],
  stretches: stretches.map(([start, end]) => ({ start, end })),
  overtimeMinutes,
});

describe("a plan on the timeline", () => {
  it("is drawn in whole weeks, to that of the last work", () => {
    const plan = { staging, tasks: [task([[at(9, 10), at(9, 12)]])], fittings: [] };
    expect(timelineSpan(plan, "2027-01-13" as PlainDate, null)).toMatchObject({ first: monday, last: monday + 13 });
    expect(timelineSpan(plan, "2027-01-13" as PlainDate, "2027-01-26" as PlainDate).last).toBe(monday + 20);
  });

  it("has a column for a weekend that is worked", () => {
    const { weekdays } = timelineSpan({ staging, tasks: [task([[at(5, 10), at(5, 12)]])], fittings: [] }, "2027-01-11" as PlainDate, null);
    expect(weekdays.has(6)).toBe(true);
    expect(weekdays.has(7)).toBe(false);
  });

  it("tells the part of a task outside its maker's hours", () => {
    const closes = Math.max(...maker!.hours.filter(({ weekday }) => weekday === 1).map(({ to }) => to));
    const end = monday * 1440 + closes;
    const [told] = timelineTasks({ staging, tasks: [task([[end - 60, end + 90]], 90)] });
    expect(told!.overtime).toEqual([{ start: end, end: end + 90 }]);
    expect(timelineTasks({ staging, tasks: [task([[end - 60, end]])] })[0]!.overtime).toEqual([]);
  });

  it("leaves out what nobody does", () => {
    expect(timelineTasks({ staging, tasks: [{ ...task([[at(0, 10), at(0, 11)]]), maker: null }] })).toEqual([]);
  });
});

describe("numbers of several garments", () => {
  it("run together where they follow each other", () => {
    expect(numbersText(["LM 014"])).toBe("LM 014");
    expect(numbersText(["LM 052", "LM 053", "LM 054"])).toBe("LM 052–054");
    expect(numbersText(["LM 052", "LM 054", "LM 060"])).toBe("LM 052 +2");
  });
});

describe("the late chain", () => {
  it("is that of the latest due, each node once in a row", () => {
    const link = (node: number) => ({ node, cause: "work" as const, start: 0, end: 1, on: null });
    const late = [
      { due: 0, minutesLate: 10, links: [link(1)] },
      { due: 1, minutesLate: 90, links: [link(4), link(4), link(2), link(4)] },
    ];
    const answer = { late } as unknown as Parameters<typeof lateNodes>[0]["answer"];
    expect(lateNodes({ answer })).toEqual([4, 2, 4]);
    expect(lateNodes({ answer: { ...answer, late: [] } })).toEqual([]);
  });
});
