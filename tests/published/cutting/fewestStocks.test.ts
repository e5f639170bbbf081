import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import { checkFewest } from "#lib/cutting/fewest/checkFewest";
import { fewestStocks, lengthPlan } from "#lib/cutting/fewest/fewestStocks";
import { highsProgram } from "#lib/cutting/fewest/highsProgram";
import { jobOf } from "#lib/cutting/fewest/job";
import published from "./binPacking.json";

const open = highsProgram(await loadHighs());

/** Steps of the hardest of them (HARD0) are some hundred and fifty. */
const STEPS = 600;

/** Sources and licences stand at the head of binPacking.json; every optimum there is proved. */
describe("published cutting-stock instances", () => {
  it.each(published.instances)("$id: the optimum is reached and proved", ({ lengths, counts, capacity, optimum }) => {
    const job = jobOf(capacity, lengths, counts);
    const search = fewestStocks(job, open);
    let step = search.next();
    for (let taken = 1; !step.done && taken < STEPS; taken++) step = search.next();
    search.return(step.value);
    const plan = lengthPlan(job, step.value);
    expect(
      checkFewest(
        plan,
        capacity,
        lengths.map((length, at) => [length, counts[at]!] as const),
      ),
    ).toEqual([]);
    expect({ bins: plan.bins, bound: plan.bound }).toEqual({ bins: optimum, bound: optimum });
  });
});
