import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainDate } from "./days";
import { readDate } from "./readDate";
import { showDate } from "./showDay";

const value = (text: string) => {
  const read = readDate(text);
  return read.ok ? read.value : read.error.problem;
};

describe("readDate", () => {
  it.each([
    "2027-03-09",
    "2027/3/9",
    "2027-03-09 00:00:00",
    "9 March 2027",
    "9th Mar 2027",
    "Tue 9 Mar 2027",
    "Tuesday, 9 March 2027",
    "March 9, 2027",
    "9-Mar-2027",
  ])("reads %s", (text) => expect(value(text)).toBe("2027-03-09"));

  it("reads days in numbers only where one of the two cannot be the month", () => {
    expect(value("13/03/2027")).toBe("2027-03-13");
    expect(value("03/13/2027")).toBe("2027-03-13");
    expect(value("3.3.2027")).toBe("2027-03-03");
    expect(value("09/03/2027")).toBe('"09/03/2027" may be one of two days.');
  });

  it("refuses serial numbers of spreadsheets", () => expect(value("46455")).toContain("spreadsheet"));

  it.each(["", "soon", "2027-02-29", "31 June 2027", "13/13/2027", "9/13/27", "9 Ma 2027", "2027-03"])("refuses %j", (text) =>
    expect(readDate(text).ok).toBe(false),
  );

  it("reads back every day it shows", () => {
    fc.assert(
      fc.property(fc.integer({ min: -300000, max: 900000 }), (day) => {
        expect(value(showDate(plainDate(day)))).toBe(plainDate(day));
      }),
    );
  });
});
