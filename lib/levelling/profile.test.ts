import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Profile } from "./profile";

const use = fc.record({ start: fc.nat(3000), length: fc.nat(2000), more: fc.integer({ min: 1, max: 3 }) });

/** No use reaches further: four days, so that uses run over the ends of days. */
const LAST = 5760;

describe("profile", () => {
  it("finds the end of the last part that is too full, as counting minute by minute does", () => {
    fc.assert(
      fc.property(fc.array(use, { maxLength: 8 }), use, (uses, asked) => {
        const count = 4;
        const profile = new Profile(count);
        const minutes = new Array<number>(LAST).fill(0);
        for (const { start, length, more } of uses) {
          profile.add(start, start + length, more);
          for (let t = start; t < start + length; t++) minutes[t] = minutes[t]! + more;
        }
        const end = asked.start + asked.length;
        let last = -1;
        for (let t = asked.start; t < end; t++) if (minutes[t]! + asked.more > count) last = t;
        const found = profile.conflict(asked.start, end, asked.more);
        if (last < 0) {
          expect(found).toBe(-1);
          return;
        }
        expect(found).toBeGreaterThan(last);
        for (let t = last; t < Math.min(found, LAST); t++) expect(minutes[t]! + asked.more).toBeGreaterThan(count);
      }),
    );
  });

  it("is as before when a use is taken away again", () => {
    const profile = new Profile(1);
    profile.add(10, 20, 1);
    profile.add(10, 20, -1);
    expect(profile.conflict(0, 30, 1)).toBe(-1);
    expect(profile.conflict(0, 30, 2)).toBeGreaterThan(30);
  });
});
