import { describe, expect, it } from "vitest";
import { garment } from "./fixtures";
import { howFar } from "./howFar";
import type { PlannedFitting, PlannedTask } from "./stagingPlan";

const task = (number: string, start: number | null, end: number | null) => ({ garments: [number], start, end }) as unknown as PlannedTask;
const plan = {
  garments: [garment("X 1"), garment("X 2"), garment("X 3")],
  tasks: [task("X 1", 100, 200), task("X 1", 400, 500), task("X 2", null, null)],
  fittings: [{ garment: "X 1", start: 300, end: 330 } as unknown as PlannedFitting],
};
const at = (now: number) => howFar(plan, now).get("X 1");

describe("how far the plan has a garment", () => {
  it("goes from not begun through being made and fitted to done, at the minute each is reached", () => {
    expect([99, 100, 329, 330, 499, 500].map(at)).toEqual(["not begun", "being made", "being made", "fitted", "fitted", "done"]);
  });

  it("counts work without a place by itself, and a garment without work as done", () => {
    expect(howFar(plan, 0).get("X 2")).toBe("no place");
    expect(howFar(plan, 0).get("X 3")).toBe("done");
  });
});
