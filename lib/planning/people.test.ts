import { expect, it } from "vitest";
import { day, staging } from "./fixtures";
import { prepareWorks } from "./prepare";

it("a performer has five visits in a week at most, or as many as the production says", () => {
  const most = (visitsPerWeek: number | null) => {
    const { production } = staging();
    const given = staging({ production: { ...production, visitsPerWeek } });
    return prepareWorks(given, [], [], { today: day("2027-02-01") }).problem.performers.map(({ visitsAWeek }) => visitsAWeek);
  };
  expect([most(null), most(3)]).toEqual([[5], [3]]);
});
