import { describe, expect, it } from "vitest";
import { MEASUREMENTS } from "#lib/measurements/measurement";
import { DISC, figureViews } from "./figure";

const views = figureViews();
const discs = views.map(({ notes }) => notes.map(({ disc }) => disc));

describe("the figure", () => {
  it("shows every measurement once, by its number in the list", () => {
    const notes = views.flatMap((view) => view.notes);
    expect(notes.map(({ measurement }) => measurement).sort()).toEqual([...MEASUREMENTS].sort());
    for (const { number, measurement } of notes) expect(MEASUREMENTS[number - 1]).toBe(measurement);
  });

  it("keeps discs a finger apart and inside the picture", () => {
    for (const [at, view] of views.entries())
      for (const [index, one] of discs[at]!.entries()) {
        expect(one.x - DISC / 2).toBeGreaterThanOrEqual(0);
        expect(one.x + DISC / 2).toBeLessThanOrEqual(view.width);
        expect(one.y - DISC / 2).toBeGreaterThanOrEqual(0);
        expect(one.y + DISC / 2).toBeLessThanOrEqual(view.height);
        for (const other of discs[at]!.slice(index + 1))
          expect(Math.max(Math.abs(one.x - other.x), Math.abs(one.y - other.y))).toBeGreaterThanOrEqual(DISC);
      }
  });

  it("shows only what is asked for", () => {
    const [front, back] = figureViews(["waist", "rise"]);
    expect([front?.notes.map(({ number }) => number), back?.notes.map(({ number }) => number)]).toEqual([[5], [19]]);
  });
});
