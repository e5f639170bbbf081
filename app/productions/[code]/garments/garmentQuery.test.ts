import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { readQuery, SORTS, selectGarments, writeQuery } from "./garmentQuery";
import { GARMENT_STATES, type GarmentRow } from "./garmentRow";

const row = (number: string, more: Partial<GarmentRow> = {}): GarmentRow => ({
  number,
  href: `/${number}`,
  name: "Tutu",
  role: "Reed 1",
  made: "classical tutu",
  set: "",
  wearers: "",
  minutes: 600,
  ready: "2027-03-10" as PlainDate,
  due: "2027-03-12" as PlainDate,
  state: "ready",
  minutesLate: 0,
  said: "in time",
  ...more,
});

const rows = [
  row("HM 10", { minutes: 60 }),
  row("HM 9", { name: "Bodice", state: "late", minutesLate: 90, ready: "2027-03-14" as PlainDate }),
  row("HM 2", { state: "unplaced", ready: null }),
];
const numbers = (query: Parameters<typeof readQuery>[0]) => selectGarments(rows, readQuery(query)).map((each) => each.number);

describe("selectGarments", () => {
  it("counts numbers as numbers", () => expect(numbers({})).toEqual(["HM 2", "HM 9", "HM 10"]));
  it("finds garments that have every word somewhere", () => expect(numbers({ find: "reed BODICE" })).toEqual(["HM 9"]));
  it("keeps to a state", () => expect(numbers({ state: "unplaced" })).toEqual(["HM 2"]));
  it("sorts by state with the latest first", () => expect(numbers({ sort: "state" })).toEqual(["HM 9", "HM 2", "HM 10"]));
  it("puts what has no day after what has one", () => expect(numbers({ sort: "ready" })).toEqual(["HM 10", "HM 9", "HM 2"]));
  it("takes the last of several sorts, since a press stands after the one in force", () =>
    expect(numbers({ sort: ["name", "-minutes"] })).toEqual(["HM 2", "HM 9", "HM 10"]));
});

describe("the address", () => {
  it("reads back as it was written", () => {
    fc.assert(
      fc.property(
        fc.record({
          find: fc.string({ maxLength: 100 }),
          state: fc.constantFrom(...GARMENT_STATES, "" as const),
          sort: fc.constantFrom(...SORTS),
          down: fc.boolean(),
        }),
        (query) => {
          expect(readQuery(Object.fromEntries(new URLSearchParams(writeQuery(query))))).toEqual(query);
        },
      ),
    );
  });

  it("reads nonsense as nothing", () => expect(readQuery({ sort: "constructor", state: "toString" })).toEqual(readQuery({})));
});
