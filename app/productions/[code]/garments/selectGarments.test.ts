import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { readQuery } from "./garmentQuery";
import type { GarmentRow } from "./garmentRow";
import { facetsOf, groupsOf, pageOf, selectGarments } from "./selectGarments";

const row = (number: string, more: Partial<GarmentRow> = {}): GarmentRow => ({
  number,
  href: `/${number}`,
  name: "Tutu",
  role: "Reed 1",
  made: "classical tutu",
  as: "classical tutu",
  source: "Make",
  set: "",
  wearers: "",
  shared: "each performer",
  weight: 1,
  minutes: 600,
  fittings: 3,
  ready: "2027-03-10" as PlainDate,
  due: "2027-03-12" as PlainDate,
  wantedFor: "Dress parade",
  state: "ready",
  minutesLate: 0,
  said: "in time",
  ...more,
});

const rows = [
  row("HM 10", { minutes: 60, set: "reeds" }),
  row("HM 9", { name: "Bodice", state: "late", minutesLate: 90, ready: "2027-03-14" as PlainDate }),
  row("HM 2", { state: "unplaced", ready: null, source: "Hire" }),
];
const found = (query: Parameters<typeof readQuery>[0]) => selectGarments(rows, readQuery(query));
const numbers = (query: Parameters<typeof readQuery>[0]) => found(query).map((each) => each.number);

describe("selectGarments", () => {
  it("counts numbers as numbers", () => expect(numbers({})).toEqual(["HM 2", "HM 9", "HM 10"]));
  it("finds garments that have every word somewhere", () => expect(numbers({ find: "reed BODICE" })).toEqual(["HM 9"]));
  it("keeps to a state", () => expect(numbers({ state: "unplaced" })).toEqual(["HM 2"]));
  it("keeps to a source", () => expect(numbers({ source: "Hire" })).toEqual(["HM 2"]));
  it("sorts by state with the latest first", () => expect(numbers({ sort: "state" })).toEqual(["HM 9", "HM 2", "HM 10"]));
  it("puts what has no day after what has one", () => expect(numbers({ sort: "ready" })).toEqual(["HM 10", "HM 9", "HM 2"]));
  it("keeps groups together, whatever the order within them", () =>
    expect(numbers({ group: "source", sort: "number" })).toEqual(["HM 2", "HM 9", "HM 10"]));
});

describe("groups", () => {
  it("count what stands under each heading, in the order of the list", () => {
    const list = found({ group: "set", sort: "-minutes" });
    expect(groupsOf(list, "set")).toEqual([
      { name: "none", count: 2, minutes: 1200 },
      { name: "reeds", count: 1, minutes: 60 },
    ]);
  });
});

describe("pages", () => {
  const many = Array.from({ length: 450 }, (_, at) => row(`HM ${at}`));
  it("together show every garment once", () => expect([1, 2, 3].flatMap((page) => pageOf(many, page).rows)).toEqual(many));
  it("stay on the last when fewer are found", () => expect(pageOf(many, 99)).toMatchObject({ page: 3, pages: 3, from: 401 }));
});

describe("what the list may be kept to", () => {
  it("is what there is, in order, once", () => expect(facetsOf(rows)).toMatchObject({ source: ["Hire", "Make"], set: ["reeds"] }));
});
