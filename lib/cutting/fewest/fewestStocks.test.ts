import fc from "fast-check";
import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import { firstFitDecreasing } from "../firstFit";
import { checkFewest } from "./checkFewest";
import { fewestStocks, lengthPlan, type Standing } from "./fewestStocks";
import { highsProgram } from "./highsProgram";
import { jobOf } from "./job";

const open = highsProgram(await loadHighs());
const ones = (lengths: readonly number[]) => lengths.map(() => 1);

/** Runs so many steps at most; the last standing. */
const run = (stock: number, lengths: readonly number[], steps = 3000): { readonly standing: Standing; readonly steps: number } => {
  const search = fewestStocks(jobOf(stock, lengths, ones(lengths)), open);
  let step = search.next();
  let taken = 1;
  for (; !step.done && taken < steps; taken++) step = search.next();
  search.return(step.value);
  return { standing: step.value, steps: taken };
};
const planOf = (stock: number, lengths: readonly number[], steps?: number) =>
  lengthPlan(jobOf(stock, lengths, ones(lengths)), run(stock, lengths, steps).standing);

/** Fewest stocks by trying every stock for every piece. */
const byTrying = (stock: number, pieces: readonly number[], rooms: readonly number[] = []): number => {
  const [piece, ...rest] = pieces;
  if (piece === undefined) return rooms.length;
  const into = rooms.flatMap((room, at) => (room >= piece ? [byTrying(stock, rest, rooms.with(at, room - piece))] : []));
  return Math.min(...into, byTrying(stock, rest, [...rooms, stock - piece]));
};

describe("fewest stocks", () => {
  it("are those found by trying everything", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 10, max: 60 }), { minLength: 1, maxLength: 7 }), (lengths) => {
        const plan = planOf(100, lengths);
        expect(
          checkFewest(
            plan,
            100,
            lengths.map((length) => [length, 1] as const),
          ),
        ).toEqual([]);
        expect(plan.bins).toBe(byTrying(100, lengths));
        expect(plan.bound).toBe(plan.bins);
      }),
      { numRuns: 60 },
    );
  });

  it("are planned legally and no worse than first fit after any number of steps, in short and in long units", () => {
    const lengths = fc.array(fc.integer({ min: 150, max: 600 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 6 }), fc.constantFrom(1, 104_729), (some, steps, unit) => {
        // An odd piece of one unit keeps the lengths from being told in a coarser one.
        const pieces = [...some.map((length) => length * unit), 1];
        const plan = planOf(1000 * unit, pieces, steps);
        expect(
          checkFewest(
            plan,
            1000 * unit,
            pieces.map((length) => [length, 1] as const),
          ),
        ).toEqual([]);
        expect(plan.bins).toBeLessThanOrEqual(firstFitDecreasing(pieces, 1000 * unit).length);
      }),
      { numRuns: 25 },
    );
  });

  it("need more than one step where rules of thumb miss them, and take the same steps again", () => {
    // Four triplets that fill a stock each; taking the longest first leaves gaps.
    const pieces = [491, 260, 249, 477, 262, 261, 450, 289, 261, 442, 301, 257];
    const once = run(1000, pieces);
    expect(lengthPlan(jobOf(1000, pieces, ones(pieces)), once.standing)).toMatchObject({ bins: 4, bound: 4 });
    expect(run(1000, pieces)).toEqual(once);
  });

  it("of nothing are none, and a piece longer than the stock is refused", () => {
    expect(planOf(100, [])).toEqual({ patterns: [], bins: 0, bound: 0 });
    expect(() => jobOf(100, [101], [1])).toThrow(RangeError);
  });
});

describe("a workroom's 2,000 bones", () => {
  // Four to fifteen inches by the quarter, in no order and the same each time; lengths in quarter inches.
  const bones = Array.from({ length: 2000 }, (_, at) => 16 + ((at * at * 7 + at * 13) % 45));

  it.each([
    ["rods of 36 in", 36 * 4],
    ["coils of 12 yd", 12 * 36 * 4],
    ["coils of 25 yd", 25 * 36 * 4],
  ])("are proved from %s", (_, stock) => {
    const plan = planOf(stock, bones);
    expect(
      checkFewest(
        plan,
        stock,
        bones.map((length) => [length, 1] as const),
      ),
    ).toEqual([]);
    expect(plan.bound).toBe(plan.bins);
  });
});

describe("the check of fewest stocks", () => {
  const plan = { patterns: [{ count: 2, cuts: [[40, 2] as const] }], bins: 2, bound: 2 };

  it("finds pieces left out, too many pieces, stocks overfilled and false figures", () => {
    expect(checkFewest(plan, 100, [[40, 4]])).toEqual([]);
    expect(checkFewest(plan, 100, [[40, 5]])).toEqual(["Of 40, 1 too few."]);
    expect(checkFewest(plan, 100, [[40, 3]])).toEqual(["Of 40, 1 too many."]);
    expect(checkFewest(plan, 79, [[40, 4]])).toContain("80 is cut from a stock of 79.");
    expect(checkFewest({ ...plan, bins: 1 }, 100, [[40, 4]])).toContain("2 stocks are cut, 1 are told.");
    expect(checkFewest({ ...plan, bound: 3 }, 100, [[40, 4]])).toEqual(["The bound 3 is above the 2 used."]);
  });
});
