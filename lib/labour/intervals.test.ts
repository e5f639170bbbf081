import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inSteps, merged, minutesWithin, shared, totalMinutes, without } from "./intervals";

const intervals = fc.array(
  fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 20 })).map(([start, length]) => ({ start, end: start + length })),
  { maxLength: 8 },
);
const holds = (list: readonly { start: number; end: number }[], minute: number) =>
  list.some((one) => one.start <= minute && minute < one.end);
const minutes = Array.from({ length: 90 }, (_, minute) => minute);

describe("intervals", () => {
  it("hold the same minutes once merged, sorted and apart", () => {
    fc.assert(
      fc.property(intervals, (list) => {
        const result = merged(list);
        for (const minute of minutes) expect(holds(result, minute)).toBe(holds(list, minute));
        for (let at = 1; at < result.length; at++) expect(result[at]!.start).toBeGreaterThan(result[at - 1]!.end);
      }),
    );
  });

  it("taken away leave what is in the first and not in the second", () => {
    fc.assert(
      fc.property(intervals, intervals, (a, b) => {
        const result = without(a, b);
        for (const minute of minutes) expect(holds(result, minute)).toBe(holds(a, minute) && !holds(b, minute));
      }),
    );
  });

  it("shared are what is in both", () => {
    fc.assert(
      fc.property(intervals, intervals, (a, b) => {
        const result = shared(a, b);
        for (const minute of minutes) expect(holds(result, minute)).toBe(holds(a, minute) && holds(b, minute));
      }),
    );
  });

  it("count what one has within others as what the two share", () => {
    fc.assert(
      fc.property(intervals, intervals, (a, b) => {
        for (const one of a) expect(minutesWithin(one, merged(b))).toBe(totalMinutes(shared([one], b)));
      }),
    );
  });

  it("in steps of fifteen start no earlier and end no later", () => {
    expect(inSteps([{ start: 1, end: 44 }], 15)).toEqual([{ start: 15, end: 30 }]);
    expect(inSteps([{ start: 31, end: 44 }], 15)).toEqual([]);
    expect(totalMinutes(inSteps([{ start: 0, end: 61 }], 15))).toBe(60);
  });
});
