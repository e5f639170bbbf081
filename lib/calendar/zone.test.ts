import { describe, expect, it } from "vitest";
import { wallMinute } from "./clock";
import type { PlainDate } from "./plainDate";
import { addElapsed, elapsedBetween, isZone } from "./zone";

const at = (date: string, hour: number) => wallMinute(date as PlainDate, hour * 60);
const London = "Europe/London";

// tz database: in 2027 the clocks of Europe/London go forward on 28 March at 01:00 and back on 31 October at 02:00 (last Sundays).
describe("elapsed minutes", () => {
  it("lose an hour over the night clocks go forward", () => {
    expect(elapsedBetween(at("2027-03-27", 18), at("2027-03-28", 9), London)).toBe(14 * 60);
    expect(addElapsed(at("2027-03-27", 18), 14 * 60, London)).toBe(at("2027-03-28", 9));
  });

  it("gain an hour over the night clocks go back", () => {
    expect(elapsedBetween(at("2027-10-30", 18), at("2027-10-31", 9), London)).toBe(16 * 60);
    expect(addElapsed(at("2027-10-30", 18), 16 * 60, London)).toBe(at("2027-10-31", 9));
  });

  it("are the wall minutes on every other night and where clocks never change", () => {
    expect(elapsedBetween(at("2027-03-20", 18), at("2027-03-21", 9), London)).toBe(15 * 60);
    expect(elapsedBetween(at("2027-03-27", 18), at("2027-03-28", 9), "Asia/Kathmandu")).toBe(15 * 60);
  });

  it("know which zones there are", () => {
    expect(isZone(London)).toBe(true);
    expect(isZone("Europe/Nowhere")).toBe(false);
  });
});
