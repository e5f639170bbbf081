import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { type TimelineTask, timelineBars } from "./timeline";
import { timelineDays } from "./timelineDays";
import { fittingPins } from "./timelinePins";
import { stopOf, thread } from "./timelineThread";

const monday = dayNumber("2027-03-08" as PlainDate);
const at = (day: number, hour: number) => (monday + day) * 1440 + hour * 60;
const axis = timelineDays({
  first: monday,
  last: monday + 20,
  weekdays: new Set([1, 2, 3, 4, 5]),
  closed: (day) => (day === monday + 9 ? "Closed" : null),
  from: 540,
  to: 1080,
  left: 196,
  width: 1196,
});
const task = (key: string, stretches: readonly (readonly [number, number])[], more: Partial<TimelineTask> = {}): TimelineTask => ({
  key,
  row: 0,
  number: "LM 1",
  short: "1",
  name: "Cut",
  overtime: [],
  stretches: stretches.map(([start, end]) => ({ start, end })),
  ...more,
});

describe("days of the timeline", () => {
  it("are working days of one width with a gap of ten at weekends", () => {
    expect(axis.days).toHaveLength(15);
    expect(axis.days[5]!.x - axis.days[4]!.x).toBeCloseTo(axis.dayWidth + 10);
    expect(axis.days[6]!.x - axis.days[5]!.x).toBeCloseTo(axis.dayWidth);
    expect(axis.days[14]!.x + axis.dayWidth).toBeCloseTo(196 + 1196);
    expect(axis.days.filter((day) => day.closed).map((day) => day.date)).toEqual(["2027-03-17"]);
  });

  it("map time to the right, never backward, inside the picture", () => {
    const minutes = fc.integer({ min: at(-3, 0), max: at(30, 0) });
    fc.assert(
      fc.property(minutes, minutes, (a, b) => {
        expect(axis.xOf(Math.min(a, b))).toBeLessThanOrEqual(axis.xOf(Math.max(a, b)));
        expect(axis.xOf(a)).toBeGreaterThanOrEqual(196);
        expect(axis.xOf(a)).toBeLessThanOrEqual(1392 + 1e-6);
      }),
    );
    expect(axis.xOf(at(0, 18))).toBeCloseTo(axis.xOf(at(1, 9)));
    expect(axis.xOf(at(4, 18))).toBeCloseTo(axis.xOf(at(7, 9)) - 10);
  });
});

describe("bars of the timeline", () => {
  it("run over breaks and nights, and are parted and basted at weekends, closed days and other work", () => {
    const night = timelineBars(
      [
        task("a", [
          [at(0, 9), at(0, 13)],
          [at(0, 14), at(0, 18)],
          [at(1, 9), at(1, 12)],
        ]),
      ],
      axis,
    );
    expect(night).toHaveLength(1);
    const weekend = timelineBars(
      [
        task("a", [
          [at(4, 14), at(4, 18)],
          [at(7, 9), at(7, 13)],
        ]),
      ],
      axis,
    );
    expect(weekend.map((bar) => [bar.first, bar.joinedFrom])).toEqual([
      [true, null],
      [false, axis.xOf(at(4, 18))],
    ]);
    expect(
      timelineBars(
        [
          task("a", [
            [at(8, 14), at(8, 18)],
            [at(10, 9), at(10, 13)],
          ]),
        ],
        axis,
      ),
    ).toHaveLength(2);
    const between = [
      task("a", [
        [at(0, 9), at(0, 11)],
        [at(0, 12), at(0, 18)],
      ]),
      task("b", [[at(0, 11), at(0, 12)]]),
    ];
    expect(timelineBars(between, axis).map((bar) => bar.key)).toEqual(["a", "b", "a"]);
  });

  it("of one maker never overlap", () => {
    const cuts = fc
      .uniqueArray(fc.integer({ min: 0, max: 20 * 24 }), { minLength: 2, maxLength: 30 })
      .map((hours) => hours.sort((a, b) => a - b));
    fc.assert(
      fc.property(cuts, (hours) => {
        const stretches = hours.slice(1).map((hour, index) => [at(0, hours[index]!), at(0, hour)] as const);
        const tasks = ["a", "b", "c"].map((key, which) =>
          task(
            key,
            stretches.filter((_, index) => index % 3 === which),
          ),
        );
        const bars = timelineBars(tasks, axis);
        for (const [index, bar] of bars.entries()) {
          const next = bars[index + 1];
          if (next) expect(bar.x + bar.width).toBeLessThanOrEqual(next.x + 1e-6);
        }
      }),
    );
  });

  it("drop the name before the number, and the number before it is cut", () => {
    const long = { name: "Mount twelve layers" };
    const labels = (hours: number) =>
      timelineBars([task("a", [[at(0, 9), at(0, 9 + hours)]], long)], axis).map((bar) => [bar.number, bar.name])[0];
    expect(labels(1)).toEqual([null, null]);
    expect(labels(5)).toEqual(["LM 1", null]);
    const days = timelineBars(
      [
        task(
          "a",
          [
            [at(0, 9), at(0, 18)],
            [at(1, 9), at(1, 18)],
          ],
          long,
        ),
      ],
      axis,
    );
    expect(days[0]).toMatchObject({ number: "LM 1", name: "Mount twelve layers" });
  });

  it("carry the overtime that lies within them", () => {
    const [bar] = timelineBars([task("a", [[at(0, 9), at(0, 18)]], { overtime: [{ start: at(0, 17), end: at(0, 18) }] })], axis);
    expect(bar!.overtime).toEqual([{ x: axis.xOf(at(0, 17)), width: axis.xOf(at(0, 18)) - axis.xOf(at(0, 17)) }]);
  });
});

describe("fitting pins and the red thread", () => {
  it("a pin's name gives way to the next pin", () => {
    expect(
      fittingPins(
        [
          { x: 100, name: "Ysolt" },
          { x: 130, name: "Corin" },
          { x: 380, name: "Emmelin" },
        ],
        400,
      ).map((pin) => pin.label),
    ).toEqual([null, "Corin", null]);
  });

  it("ties a knot where it enters each task after the first", () => {
    const bars = timelineBars([task("a", [[at(0, 9), at(0, 12)]]), task("b", [[at(1, 9), at(1, 12)]], { row: 1 })], axis);
    const stops = ["a", "b"].map((key) => stopOf(bars, key, (row) => 100 + 46 * row)!);
    expect(thread(stops).knots).toEqual([{ x: axis.xOf(at(1, 9)), y: 146 }]);
    expect(thread(stops).path).toMatch(/^M[\d.]+ 100C.* 146$/);
    expect(stopOf(bars, "c", () => 0)).toBeNull();
  });
});
