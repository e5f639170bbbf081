import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import { inventStagings } from "#lib/invented/inventStagings";
import { loadOfWorks } from "#lib/invented/makers";
import { type Order, weeklyMinutes } from "#lib/invented/order";
import { plant } from "#lib/invented/plant";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { measuresOf } from "#lib/levelling/measures";
import { readStaging } from "#lib/staging/readStaging";
import { writeStaging } from "#lib/staging/writeStaging";
import { library } from "./constructions/library";

const ORDER: Order = { garments: 40, makers: 5, weeks: 5, tightness: 900, productions: 1, seed: 1 };
const SEEDS = [1, 2, 3];
const invented = (order: Partial<Order>) => inventStagings({ ...ORDER, ...order }, library);
const planted = (order: Partial<Order>) => {
  const { tightness, seed } = { ...ORDER, ...order };
  return plant(invented(order), tightness, seed);
};

describe("an invented staging", () => {
  it("has the garments, makers and productions ordered, whatever the seed", () => {
    for (const seed of SEEDS) {
      const stagings = invented({ seed, productions: 3 });
      expect(stagings.length).toBe(3);
      expect(stagings.reduce((sum, staging) => sum + garmentsOf(staging).length, 0)).toBe(40);
      for (const { makers } of stagings) expect(makers.length).toBe(5);
    }
  });

  it("is the same for the same seed and another for another", () => {
    expect(invented({ seed: 2 })).toEqual(invented({ seed: 2 }));
    expect(invented({ seed: 2 })).not.toEqual(invented({ seed: 3 }));
  });

  it("reads back from its files without a fault", () => {
    for (const staging of invented({ productions: 2 })) {
      const read = readStaging(writeStaging(staging));
      expect(read.ok ? read.value : read.error).toEqual(staging);
    }
  });

  it("gives the makers about as much work as ordered: within a sixth of it", () => {
    for (const seed of SEEDS)
      for (const weeks of [4, 8]) {
        const order = { ...ORDER, seed, weeks };
        const works = invented(order).flatMap((staging) => breakDown(staging, garmentsOf(staging)));
        const minutes = [...loadOfWorks(works).values()].reduce((sum, one) => sum + one, 0);
        expect(Math.abs(minutes / (weeks * weeklyMinutes(order)) - 1)).toBeLessThan(1 / 6);
      }
  });

  it("has somebody for every skill it asks for, though there be one maker", () => {
    for (const makers of [1, 2, 5]) {
      const [staging] = invented({ makers });
      const skills = new Set(staging.makers.flatMap((maker) => Object.keys(maker.skills)));
      for (const skill of loadOfWorks(breakDown(staging, garmentsOf(staging))).keys()) expect(skills).toContain(skill);
    }
  });
});

describe("a planted staging", () => {
  it("can be made with nothing late and no overtime: the hidden plan is legal and shows it", () => {
    for (const order of [{ seed: 1 }, { seed: 2, productions: 3 }, { seed: 3, tightness: 1000 }]) {
      const { problem, hidden } = planted(order);
      expect(checkPlan(problem, hidden)).toEqual([]);
      expect(hidden.unplaced).toEqual([]);
      expect(measuresOf(problem, hidden)).toMatchObject({ weightedLateness: 0, lateDues: 0, overtimeMinutes: 0 });
    }
  });

  it("is due in the minute the hidden plan finishes a piece, at a tightness of 1000", () => {
    const { stagings, prepared, problem, hidden } = planted({ tightness: 1000 });
    const pieceOf = new Map(prepared[0].garments.map(({ number, piece }) => [number, piece]));
    const latest = new Map<string, number>();
    for (const { node, at, label } of problem.dues) {
      const piece = pieceOf.get(label.slice(0, "P1 001".length))!;
      latest.set(piece, Math.max(latest.get(piece) ?? Number.NEGATIVE_INFINITY, hidden.placed[node]!.end - at));
    }
    expect([...latest.values()]).toEqual(stagings[0].pieces.map(() => 0));
  });

  it("leaves the more time the less tight it is", () => {
    const dues = (tightness: number) => plant(invented({}), tightness, 1).problem.dues.map(({ at }) => at);
    const tight = dues(1000);
    expect(dues(800).every((at, due) => Math.abs(at - tight[due]! / 0.8) <= 1)).toBe(true);
  });

  it("shares makers, rooms and dancers between productions, and keeps their work apart", () => {
    const { prepared, problem } = planted({ productions: 2 });
    expect(problem.nodes.length).toBe(prepared[0].nodes.length + prepared[1]!.nodes.length);
    expect(problem.makers.length).toBe(5);
    expect(problem.performers.length).toBe(prepared[0].staging.performers.length);
    expect(new Set(problem.nodes.map(({ id }) => id)).size).toBe(problem.nodes.length);
    for (const { before, after } of problem.precedences) expect(before < prepared[0].nodes.length).toBe(after < prepared[0].nodes.length);
  });
});
