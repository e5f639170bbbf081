import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkStrip } from "./checkStrip";
import { shortestStrip } from "./shortestStrip";
import type { StripJob, StripPlan } from "./strip";

const pieces = fc.array(fc.record({ width: fc.integer({ min: 1, max: 30 }), height: fc.integer({ min: 1, max: 40 }) }), { maxLength: 25 });

/** Runs so many steps at most; every plan on the way. */
const run = (job: StripJob, steps: number): readonly StripPlan[] => {
  const search = shortestStrip(job, 1);
  const plans: StripPlan[] = [];
  for (let step = search.next(); plans.length < steps; step = search.next()) {
    plans.push(step.value);
    if (step.done) break;
  }
  return plans;
};

describe("pieces on the roll", () => {
  it("lie apart and on the roll in every plan, each no longer than the last and no shorter than the bound, grain fixed or free", () => {
    fc.assert(
      fc.property(pieces, fc.boolean(), (some, turned) => {
        const job = { width: 30, pieces: some, turned };
        const plans = run(job, 6);
        for (const [at, { placed, height, bound }] of plans.entries()) {
          expect(checkStrip(job, placed, height)).toEqual([]);
          expect(height).toBeGreaterThanOrEqual(bound);
          expect(height).toBeLessThanOrEqual(plans[at - 1]?.height ?? height);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("lie the same way again for the same seed", () => {
    const job = {
      width: 30,
      pieces: Array.from({ length: 20 }, (_, at) => ({ width: 3 + (at % 7), height: 2 + (at % 11) })),
      turned: false,
    };
    expect(run(job, 8)).toEqual(run(job, 8));
  });

  it("are turned only where the grain is free", () => {
    const two = [
      { width: 10, height: 20 },
      { width: 20, height: 10 },
    ];
    expect(run({ width: 20, pieces: two, turned: false }, 5).at(-1)).toMatchObject({ height: 30, bound: 20 });
    expect(run({ width: 20, pieces: two, turned: true }, 5).at(-1)).toMatchObject({ height: 20, bound: 20 });
    expect(() => run({ width: 15, pieces: two, turned: false }, 1)).toThrow(RangeError);
  });
});

describe("the check of pieces on the roll", () => {
  const job: StripJob = {
    width: 30,
    pieces: [
      { width: 20, height: 10 },
      { width: 10, height: 10 },
    ],
    turned: false,
  };
  const first = { x: 0, y: 0, width: 20, height: 10 };
  const second = { x: 20, y: 0, width: 10, height: 10 };

  it("finds pieces over each other, off the roll, left out, turned or of another size", () => {
    expect(checkStrip(job, [first, second], 10)).toEqual([]);
    expect(checkStrip(job, [first, { ...second, x: 19 }], 10)).toEqual(["Pieces 0 and 1 lie over each other."]);
    expect(checkStrip(job, [first, { ...second, x: 21 }], 10)).toEqual(["Piece 1 lies off the roll."]);
    expect(checkStrip(job, [first, second], 9)).toHaveLength(2);
    expect(checkStrip(job, [first], 10)).toEqual(["1 of 2 pieces are placed."]);
    expect(checkStrip(job, [{ ...first, width: 10, height: 20 }, second], 20)).toContain("Piece 0 lies as 10 x 20.");
  });
});
