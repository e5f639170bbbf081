import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import { epochOf } from "#lib/calendar/zone";
import type { Visit } from "#lib/fittings/visits";
import { smallStaging } from "#lib/staging/fixtures";
import { fittingCalendar } from "./fittingCalendar";

const staging = smallStaging();
const start = wallMinute("2027-04-02" as PlainDate, 10 * 60 + 15);
const visit: Visit = {
  visit: 1,
  date: "2027-04-02" as PlainDate,
  start,
  end: start + 45,
  performer: "ines",
  fitter: "orla",
  room: "room",
  fittings: [
    {
      node: 3,
      garment: "MG 001",
      fitting: "first",
      part: "first",
      kind: "first",
      name: "First fitting, in cloth; with a name long enough that its line has to be folded — äöü",
      performer: "ines",
      minutes: 45,
      fitter: "orla",
      room: "room",
      start,
      end: start + 45,
      visit: 1,
    },
  ],
};
const frame = {
  staging,
  levelledAt: new Date("2027-03-01T09:00:00Z"),
  moment: (wall: number) => new Date(epochOf(wall, "Europe/London")),
  address: () => "http://127.0.0.1/fitting",
};
const text = fittingCalendar([visit], frame);
const read = (of: string) => new ICAL.Event(new ICAL.Component(ICAL.parse(of)).getFirstSubcomponent("vevent")!);

/** Against RFC 5545, read by a parser of its own. */
describe("the calendar", () => {
  it("is read back as it is: one event a visit, at the moment the workroom's clock shows", () => {
    const event = read(text);
    // 2 April 2027 is after the last Sunday of March: London is an hour ahead of UTC.
    expect(event.startDate.toJSDate().toISOString()).toBe("2027-04-02T09:15:00.000Z");
    expect(event.duration.toSeconds()).toBe(45 * 60);
    expect(event.summary).toBe("Fitting: Ines Falk, MG 001");
    expect(event.location).toBe("Fitting room");
    expect(event.description).toContain("shoes, undergarments");
    expect(new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent")).toHaveLength(1);
  });

  it("ends lines with CR LF, none longer than 75 octets (3.1)", () => {
    const lines = text.split("\r\n");
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  });

  it("keeps the UID from plan to plan and raises SEQUENCE (3.8.4.7, 3.8.7.4), so that a moved visit is moved", () => {
    const moved = { ...visit, start: start + 60, end: start + 105 };
    const later = fittingCalendar([moved], { ...frame, levelledAt: new Date("2027-03-02T09:00:00Z") });
    expect(read(later).uid).toBe(read(text).uid);
    expect(read(later).sequence).toBeGreaterThan(read(text).sequence);
  });

  it("carries a stamp in UTC (3.8.7.2), and says nothing of the body", () => {
    expect(text).toMatch(/\r\nDTSTAMP:20270301T090000Z\r\n/);
    expect(text).not.toMatch(/waist|hip/i);
  });
});
