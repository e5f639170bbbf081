import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bySearch } from "./bySearch";
import { byTable } from "./byTable";
import { jobOf } from "./job";
import { STOCK_WORTH } from "./worth";

const lengths = fc.uniqueArray(fc.integer({ min: 5, max: 60 }), { minLength: 1, maxLength: 12 });

describe("the worthiest way to cut a stock", () => {
  it("is the same by table and by search, and every way told fits and is worth more than a stock", () => {
    fc.assert(
      fc.property(lengths, fc.infiniteStream(fc.integer({ min: 0, max: STOCK_WORTH / 2 })), (some, worths) => {
        const job = jobOf(
          101,
          some,
          some.map((_, at) => 1 + (at % 3)),
        );
        const worth = job.lengths.map(() => worths.next().value as number);
        const places = job.lengths.map((_, place) => place);
        const table = byTable(job, job.counts, worth, places, 10);
        const search = bySearch(job, job.counts, worth, places, 10);
        expect(search.most).toBe(table.most);
        for (const cuts of [...table.ways, ...search.ways]) {
          expect(cuts.reduce((sum, [place, times]) => sum + job.lengths[place]! * times, 0)).toBeLessThanOrEqual(job.stock);
          expect(cuts.every(([place, times]) => times <= job.counts[place]!)).toBe(true);
          expect(cuts.reduce((sum, [place, times]) => sum + worth[place]! * times, 0)).toBeGreaterThan(STOCK_WORTH);
        }
      }),
    );
  });
});
