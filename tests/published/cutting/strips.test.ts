import { describe, expect, it } from "vitest";
import { checkStrip } from "#lib/cutting/strip/checkStrip";
import { shortestStrip } from "#lib/cutting/strip/shortestStrip";
import { stripBound } from "#lib/cutting/strip/stripBound";
import published from "./strips.json";

const instances = published.instances.map(({ items, ...instance }) => ({
  ...instance,
  pieces: items.flatMap(([width, height, count]) => Array.from({ length: count! }, () => ({ width: width!, height: height! }))),
}));

const after = (instance: (typeof instances)[number], turned: boolean, steps: number) => {
  const { width, pieces } = instance;
  const search = shortestStrip({ width, pieces, turned }, 1);
  let step = search.next();
  for (let taken = 1; !step.done && taken < steps; taken++) step = search.next();
  expect(checkStrip({ width, pieces, turned }, step.value.placed, step.value.height)).toEqual([]);
  return step.value;
};

/** Sources and licences stand at the head of strips.json. */
describe("published strips", () => {
  it.each(instances)("$id: the bound is the optimum, since it is a plan without waste", (instance) => {
    expect(stripBound({ ...instance, turned: false })).toBe(instance.optimum);
    expect(stripBound({ ...instance, turned: true })).toBe(instance.optimum);
  });

  const STEPS = 60;

  it.each([
    { turned: false, grain: "fixed", reached: 8 },
    { turned: true, grain: "free", reached: 9 },
  ])(
    "in sixty steps, grain $grain, all but a few reach the optimum and none is more than a unit longer (our own count)",
    ({ turned, reached }) => {
      const over = instances.map((instance) => after(instance, turned, STEPS).height - instance.optimum);
      expect(Math.min(...over)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...over)).toBeLessThanOrEqual(1);
      expect(over.filter((by) => by === 0)).toHaveLength(reached);
    },
  );
});
