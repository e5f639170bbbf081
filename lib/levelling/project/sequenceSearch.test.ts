import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Sequence, tardiness } from "./sequence";
import { SequenceSearch } from "./sequenceSearch";

const jobs = fc.array(
  fc.record({ minutes: fc.integer({ min: 1, max: 30 }), weight: fc.integer({ min: 0, max: 9 }), due: fc.integer({ min: 0, max: 90 }) }),
  { minLength: 6, maxLength: 6 },
);

const sequenceWith = (list: readonly { minutes: number; weight: number; due: number }[]): Sequence => ({
  minutes: Float64Array.from(list, ({ minutes }) => minutes),
  weight: Float64Array.from(list, ({ weight }) => weight),
  due: Float64Array.from(list, ({ due }) => due),
  skill: 0,
});

function leastOfAllOrders(sequence: Sequence, begun: readonly number[] = []): number {
  const left = [...sequence.minutes.keys()].filter((job) => !begun.includes(job));
  if (left.length === 0) return tardiness(sequence, Int32Array.from(begun), 0, begun.length, 0);
  return Math.min(...left.map((job) => leastOfAllOrders(sequence, [...begun, job])));
}

describe("the search of a sequence", () => {
  it("reaches the least weighted tardiness of all orders, and says rightly what its order costs", () => {
    fc.assert(
      fc.property(jobs, (list) => {
        const sequence = sequenceWith(list);
        const search = new SequenceSearch(sequence, 1, 3000);
        while (!search.done) search.round();
        expect(search.lateness).toBe(tardiness(sequence, search.best, 0, list.length, 0));
        expect(search.lateness).toBe(leastOfAllOrders(sequence));
      }),
      { numRuns: 40 },
    );
  });
});
