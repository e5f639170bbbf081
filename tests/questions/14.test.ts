import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { measuredAges } from "#lib/questions/oldMeasurements";
import { ask, askable, only, small } from "./asked";

const usual = { days: null, minorDays: null };
const old = async (today: string, change = small(), allowed: { days: number | null; minorDays: number | null } = usual) =>
  measuredAges(await change, today as PlainDate, allowed)
    .filter(({ tooOld }) => tooOld)
    .map(({ performer }) => performer);

describe("14. Whose measurements are older than the allowed age?", () => {
  /** All nine were measured on Fri 8 Jan: three days before. */
  it("nobody's on 11 Jan: all are three days old", async () => {
    expect(await old("2027-01-11")).toEqual([]);
    const asked = await askable(await only("wind-unitard"), 0);
    expect((await ask(14, asked)).says).toEqual([
      "Nobody's: all 9 performers were measured within the allowed age on 2027-01-11.",
      "The oldest sheet is that of Ines Varro: Fri 8 Jan, 3 days old.",
    ]);
  });

  /** 8 Jan and 182 days: 23 + 28 + 31 + 30 + 31 + 30 + 9, so 9 July. */
  it("everybody's from 10 July", async () => {
    expect((await old("2027-07-09")).length).toBe(0);
    expect((await old("2027-07-10")).length).toBe(9);
  });

  it("everybody's today when two days are allowed", async () => {
    expect((await old("2027-01-11", small(), { days: 2, minorDays: null })).length).toBe(9);
  });

  /** 91 days for who still grows: 23 + 28 + 31 + 9, so 9 April. */
  it("a minor's from 10 April", async () => {
    const young = () =>
      small(({ performers }) => ({ performers: performers.map((one) => (one.code === "wren" ? { ...one, minor: true } : one)) }));
    expect(await old("2027-04-09", young())).toEqual([]);
    expect(await old("2027-04-10", young())).toEqual(["wren"]);
  });

  it("hers who was never measured, first of all, and the newest sheet counts", async () => {
    const changed = small(({ measurements }) => ({
      measurements: [
        ...measurements.filter(({ of }) => !("performer" in of && of.performer === "suri")),
        { of: { performer: "ines" }, taken: "2026-01-08" as PlainDate, body: "warm", values: {} },
      ],
    }));
    expect(await old("2027-01-11", changed)).toEqual(["suri"]);
  });
});
