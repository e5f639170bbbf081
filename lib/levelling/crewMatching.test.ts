import { describe, expect, it } from "vitest";
import { compile } from "./compiled";
import { matchCrew } from "./crewMatching";
import { tinyMaker, tinyProblem } from "./testing/tinyProblem";

const compiled = compile(
  tinyProblem({ makers: [tinyMaker("both", [1000, 1000]), tinyMaker("sews", [1000, 0]), tinyMaker("fits", [0, 1000])] }),
);
const seats = [{ skill: 0 }, { skill: 1 }];

describe("matching a crew", () => {
  it("moves somebody to another seat so that all are filled", () => {
    expect(matchCrew(compiled, seats, [0, 1])).toEqual([
      { maker: 1, skill: 0 },
      { maker: 0, skill: 1 },
    ]);
  });

  it("takes the people named first where it can", () => {
    expect(matchCrew(compiled, seats, [1, 2, 0])?.map(({ maker }) => maker)).toEqual([1, 2]);
  });

  it("gives up when a seat stays empty", () => {
    expect(matchCrew(compiled, [{ skill: 1 }, { skill: 1 }], [1, 2])).toBeNull();
  });
});
