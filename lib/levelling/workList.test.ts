import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeClock, unitsBefore } from "./clock";
import { officeHours } from "./testing/tinyProblem";
import { WorkList } from "./workList";

const clocks = [false, true].map((evening) =>
  makeClock(officeHours(20, evening).map(({ start, end, speed }) => ({ start, end, rate: speed }))),
) as [ReturnType<typeof makeClock>, ReturnType<typeof makeClock>];
const change = fc.record({ start: fc.nat(27_000), length: fc.integer({ min: 1, max: 1800 }), drop: fc.boolean() });

describe("the list of a maker's work", () => {
  it("finds the first gap that is long enough, as looking at each does, whatever was added and taken away before", () => {
    fc.assert(
      fc.property(fc.array(change, { maxLength: 60 }), fc.array(fc.nat(500_000), { minLength: 1, maxLength: 8 }), (changes, needs) => {
        const list = new WorkList(...clocks, 28_800);
        changes.forEach(({ start, length, drop }, id) => {
          if (drop && list.starts.length > 0) list.remove(list.starts[start % list.starts.length]!);
          else if (list.isFree(start, start + length)) list.add(start, start + length, id);
        });
        for (const need of needs) {
          for (const overtime of [false, true]) {
            const clock = clocks[overtime ? 1 : 0];
            const fits = (i: number): boolean => unitsBefore(clock, list.starts[i]!) - unitsBefore(clock, list.ends[i - 1]!) >= need;
            let first = 1;
            while (first < list.starts.length && !fits(first)) first++;
            if (list.starts.length > 0) expect(list.firstGap(1, need, overtime, 2 ** 30)).toBe(first);
          }
        }
      }),
    );
  });

  it("stops looking where the gaps begin too late", () => {
    const list = new WorkList(...clocks, 28_800);
    for (let day = 0; day < 10; day++) list.add(day * 1440 + 540, day * 1440 + 1020, day);
    expect(list.firstGap(1, 60_001, true, 5000)).toBe(-1);
    expect(list.firstGap(1, 60_001, true, 500_000)).toBe(10);
  });
});
