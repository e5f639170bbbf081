import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { advance, makeClock, NEVER, nextWorking, type Rated, sharedClock, stretchAt, unitsBefore } from "./clock";

const stretches: fc.Arbitrary<Rated[]> = fc
  .array(fc.record({ gap: fc.nat(200), length: fc.integer({ min: 1, max: 200 }), rate: fc.integer({ min: 1, max: 1500 }) }), {
    maxLength: 12,
  })
  .map((parts) => {
    let at = 0;
    return parts.map(({ gap, length, rate }) => {
      const start = at + gap;
      at = start + length;
      return { start, end: at, rate };
    });
  });

/** Units before a minute, counted one by one. */
const counted = (parts: readonly Rated[], at: number): number =>
  parts.reduce((sum, { start, end, rate }) => sum + Math.max(0, Math.min(end, at) - start) * rate, 0);

describe("clock", () => {
  it("counts the units before any minute", () => {
    fc.assert(
      fc.property(stretches, fc.nat(6000), (parts, at) => {
        expect(unitsBefore(makeClock(parts), at)).toBe(counted(parts, at));
      }),
    );
  });

  it("advances to the first minute by which the units are done", () => {
    fc.assert(
      fc.property(stretches, fc.nat(3000), fc.integer({ min: 1, max: 400_000 }), (parts, at, need) => {
        const end = advance(makeClock(parts), at, need);
        if (end === NEVER) {
          expect(counted(parts, 10_000) - counted(parts, at)).toBeLessThan(need);
          return;
        }
        expect(counted(parts, end) - counted(parts, at)).toBeGreaterThanOrEqual(need);
        expect(counted(parts, end - 1) - counted(parts, at)).toBeLessThan(need);
      }),
    );
  });

  it("finds the next working minute and the unbroken run it is in", () => {
    const clock = makeClock([
      { start: 100, end: 200, rate: 1 },
      { start: 200, end: 260, rate: 2 },
      { start: 300, end: 400, rate: 1 },
    ]);
    expect([0, 150, 260, 400].map((at) => nextWorking(clock, at))).toEqual([100, 150, 300, NEVER]);
    expect(clock.runEnds[stretchAt(clock, 150)]).toBe(260);
  });

  it("shares time at the slowest rate", () => {
    const shared = sharedClock([
      makeClock([{ start: 0, end: 100, rate: 3 }]),
      makeClock([
        { start: 50, end: 70, rate: 5 },
        { start: 80, end: 120, rate: 1 },
      ]),
    ]);
    expect([...shared.starts]).toEqual([50, 80]);
    expect([...shared.ends]).toEqual([70, 100]);
    expect([...shared.rates]).toEqual([3, 1]);
  });
});
