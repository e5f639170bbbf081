import { describe, expect, it } from "vitest";
import { costumeChanges } from "#lib/running/changes";
import { dressers } from "#lib/running/dressers";
import { ask, askable, small } from "./asked";

/**
 * Oda, who is Hazel in the orchard (0 to 14), also dances a Snowflake in the first snow. Hazel is one boned bodice, the Snowflake one tutu with
 * hooks: a minute off, a minute on, 120 s alone, 60 s each with one dresser, 40 s with two.
 */
const changing = (snowfallAt: number) =>
  small(({ casting, scenes }) => ({
    casting: casting.map((row) => (row.role === "flake" && row.place === 2 ? { ...row, performer: "oda" } : row)),
    scenes: scenes.map((scene) => (scene.code === "snowfall" ? { ...scene, starts: snowfallAt } : scene)),
  }));
const tight = async (snowfallAt: number) => {
  const staging = await changing(snowfallAt);
  const { tight: found, most } = dressers(staging, costumeChanges(staging));
  return [found.map(({ performer, minutes, needs, dressers: hands }) => [performer, minutes, needs, hands]), most];
};

describe("20. Which quick changes exceed the time in the score, and how many dressers solve it?", () => {
  it("none in the small staging as it is: nobody changes", async () => {
    const asked = await askable(await small(), 0);
    expect((await ask(20, asked)).says).toEqual(["Nobody changes costume during the evening."]);
  });

  it("Oda's with no time at all, whoever helps", async () => {
    expect(await tight(14)).toEqual([[["oda", 0, 120, null]], 2]);
  });

  it("Oda's in one minute with one dresser", async () => {
    expect(await tight(15)).toEqual([[["oda", 1, 120, 1]], 1]);
  });

  it("none with two minutes: she has the time alone", async () => {
    expect(await tight(16)).toEqual([[], 0]);
  });

  it("is said in words", async () => {
    const asked = await askable(await changing(15), 0);
    expect((await ask(20, asked)).says).toEqual([
      "one change of 1 is too quick for the dancer alone; one dresser at once solves them all, the most after minute 14.",
    ]);
  });
});
