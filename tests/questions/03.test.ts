import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { slips } from "#lib/questions/slips";
import type { Staging } from "#lib/staging/staging";
import { ask, askable, only } from "./asked";

/**
 * The Wind unitard alone. Its zip is ordered on Mon 11 Jan and comes in 8 days, so the closing begins on Tue 19 Jan at 9:00. Bryn (85%) takes
 * 20 / 0.85 = 23.5, so 24 min for the closing and as many for the press: done at 9:48. Sil is free from 10:00 to 10:15 (class from 10:15), which
 * is the final fitting: finished Tue 19 Jan 10:15, and no plan is sooner.
 */
const withParade = async (day: string) => {
  const staging = await only("wind-unitard");
  const milestones = staging.milestones.map((one) => (one.code === "parade" ? { ...one, date: day as PlainDate, at: 10 * 60 + 15 } : one));
  return askable({ ...staging, milestones } satisfies Staging, 0);
};
const effects = async (day: string, days: number, tries = 12) => {
  const asked = await withParade(day);
  return slips(asked.plan, asked, days, tries).map(({ garment, effect, proved }) => [garment, effect, proved]);
};

describe("3. Which garment, if it slips one day, moves dress?", () => {
  it("finishes the unitard when worked by hand", async () => {
    const { plan } = await withParade("2027-01-19");
    expect(plan.garmentStates.map(({ finish, due, minutesLate }) => [finish! - due, minutesLate])).toEqual([[0, 0]]);
  });

  it("is the unitard, with the parade at the very minute it is finished: its zip is sewn in on the 20th, and the parade was on the 19th", async () => {
    expect(await effects("2027-01-19", 1)).toEqual([["WL 001", "moves", true]]);
  });

  it("is none with the parade a day later: the 20th goes as the 19th would have", async () => {
    expect(await effects("2027-01-20", 1)).toEqual([["WL 001", "absorbed", false]]);
  });

  it("is the unitard again when it slips two days", async () => {
    expect(await effects("2027-01-20", 2)).toEqual([["WL 001", "moves", true]]);
  });

  it("says so when it has not looked", async () => {
    expect(await effects("2027-01-19", 1, 0)).toEqual([["WL 001", "not looked at", false]]);
  });

  /** Hazel's bodice is finished a month before the parade, so a day is nothing to it; the unitard still moves the date it is given. */
  it("tells one garment from another", async () => {
    const staging = await only("wind-unitard", "hazel-bodice");
    const early = {
      ...staging.milestones.find(({ code }) => code === "parade")!,
      code: "early",
      date: "2027-01-19" as PlainDate,
      at: 10 * 60 + 15,
    };
    const pieces = staging.pieces.map((one) => (one.code === "wind-unitard" ? { ...one, due: "early", weight: 9 } : one));
    const asked = await askable({ ...staging, pieces, milestones: [...staging.milestones, early] }, 0);
    expect(asked.plan.summary.lateGarments).toBe(0);
    expect(slips(asked.plan, asked, 1, 12).map(({ garment, effect }) => [garment, effect])).toEqual([
      ["WL 001", "moves"],
      ["WL 002", "absorbed"],
    ]);
  });

  it("is said in words", async () => {
    const asked = await withParade("2027-01-19");
    expect((await ask(3, asked)).says).toEqual(["If it slips by one working day, the date moves: WL 001."]);
  });
});
