import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Call } from "#lib/casting/casting";
import { freeTime } from "./freeTime";
import { DEFAULT_RULES } from "./rules";

const date = "2027-02-01" as PlainDate;
const day = dayNumber(date) * 1440;
const call = (kind: Call["kind"], from: number, to: number, performer: string | null = null): Call => ({ performer, date, from, to, kind });
const free = (calls: readonly Call[]) => freeTime("mira", calls, DEFAULT_RULES).map(({ start, end }) => [start - day, end - day] as const);

describe("a performer's free time for fittings", () => {
  it("is none on a day without a span", () => {
    expect(free([call("rehearsal", 600, 660)])).toEqual([]);
  });

  it("is the span less class, rehearsal, performance and rest, everybody's and her own", () => {
    const calls = [call("span", 600, 1080), call("class", 600, 690), call("rehearsal", 720, 780, "mira"), call("rest", 780, 840)];
    expect(free([...calls, call("rehearsal", 900, 960, "someone else")])).toEqual([
      [690, 720],
      [840, 1080],
    ]);
  });

  it("leaves the hour after three rehearsal hours free, short breaks not counted", () => {
    expect(free([call("span", 600, 1080), call("rehearsal", 600, 720), call("rehearsal", 750, 810)])).toEqual([
      [720, 750],
      [870, 1080],
    ]);
  });

  it("lies on quarters of an hour even when calls do not", () => {
    expect(free([call("span", 600, 720), call("class", 600, 641), call("rehearsal", 710, 720)])).toEqual([[645, 705]]);
  });

  it("begins the count again after a break of an hour", () => {
    expect(free([call("span", 600, 1080), call("rehearsal", 600, 720), call("rehearsal", 780, 840)])).toEqual([
      [720, 780],
      [840, 1080],
    ]);
  });

  it("ends eleven hours after the span began", () => {
    expect(free([call("span", 540, 1380)])).toEqual([[540, 1200]]);
  });

  it("lies on quarters of an hour, inside the span and outside every call", () => {
    const minute = fc.integer({ min: 0, max: 1440 });
    const kinds = fc.constantFrom<Call["kind"]>("span", "class", "rehearsal", "performance", "rest");
    fc.assert(
      fc.property(fc.array(fc.tuple(kinds, minute, minute), { maxLength: 8 }), (list) => {
        const calls = list.filter(([, from, to]) => from < to).map(([kind, from, to]) => call(kind, from, to));
        for (const [start, end] of free(calls)) {
          expect([start % 15, end % 15]).toEqual([0, 0]);
          for (let at = start; at < end; at++) {
            expect(calls.some((one) => one.kind === "span" && one.from <= at && at < one.to)).toBe(true);
            expect(calls.some((one) => one.kind !== "span" && one.from <= at && at < one.to)).toBe(false);
          }
        }
      }),
    );
  });
});
