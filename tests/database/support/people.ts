import type { PlainDate } from "#lib/calendar/plainDate";
import type { Staging } from "#lib/staging/staging";

const day = (text: string) => text as PlainDate;

/** Who dances and who works, with something in every field. */
export const people: Pick<
  Staging,
  | "sizeGroups"
  | "performers"
  | "measurements"
  | "calls"
  | "makers"
  | "absences"
  | "machines"
  | "roles"
  | "casting"
  | "scenes"
  | "appearances"
> = {
  sizeGroups: [
    { code: "M", name: "Medium" },
    { code: "S", name: "Small" },
  ],
  performers: [
    { code: "vale", name: "Ansa Vale", sizeGroup: "S", minor: false },
    { code: "ost", name: "Brin Ost", sizeGroup: "M", minor: true },
  ],
  measurements: [
    { of: { sizeGroup: "M" }, taken: day("2027-01-04"), body: "not noted", values: { waist: 54_864, hip: 75_184 } },
    { of: { performer: "vale" }, taken: day("2027-01-11"), body: "cold", values: { waist: 50_800, napeToWaist: 30_988 } },
    { of: { performer: "vale" }, taken: day("2027-01-12"), body: "warm", values: { waist: 51_308 } },
  ],
  calls: [
    { performer: null, date: day("2027-01-18"), from: 600, to: 690, kind: "class" },
    { performer: "ost", date: day("2027-01-18"), from: 570, to: 1080, kind: "span" },
  ],
  makers: [
    {
      code: "iri",
      name: "Iri Maud",
      trade: "tutu maker",
      employment: "staff",
      skills: { net: 1000, hand: 900 },
      hours: [
        { weekday: 1, from: 540, to: 780 },
        { weekday: 1, from: 840, to: 1080 },
      ],
      overtime: [{ weekday: 6, from: 540, to: 780 }],
      productive: 850,
      reservedMinutesPerWeek: 120,
      paceFrom: [],
      costPerHour: 2400,
      overtimeCostPerHour: 3600,
      starts: null,
      ends: null,
    },
    {
      code: "tam",
      name: "Tam Reve",
      trade: "cutter",
      employment: "casual",
      skills: { pattern: 1000, fit: 1000 },
      hours: [{ weekday: 2, from: 540, to: 1020 }],
      overtime: [],
      productive: 1000,
      reservedMinutesPerWeek: 0,
      paceFrom: [
        { date: day("2027-01-18"), pace: 500 },
        { date: day("2027-01-25"), pace: 1000 },
      ],
      costPerHour: 3000,
      overtimeCostPerHour: 4500,
      starts: day("2027-01-18"),
      ends: day("2027-03-12"),
    },
  ],
  absences: [
    { maker: null, from: day("2027-02-01"), to: day("2027-02-01"), fromTime: null, toTime: null, reason: "closed" },
    { maker: "iri", from: day("2027-02-03"), to: day("2027-02-03"), fromTime: 540, toTime: 660, reason: "dentist" },
  ],
  machines: [
    { code: "ol", name: "Overlock", kind: "overlock", count: 2 },
    { code: "room", name: "Fitting room", kind: "fitting room", count: 1 },
  ],
  roles: [
    { code: "moth", name: "Moth", kind: "soloist", places: 1 },
    { code: "reeds", name: "Reeds", kind: "corps", places: 3 },
  ],
  casting: [
    { cast: "first", role: "moth", place: 1, performer: "vale", sizeGroup: "S", standing: "cast" },
    { cast: "first", role: "moth", place: 1, performer: "ost", sizeGroup: "M", standing: "cover" },
    { cast: "second", role: "moth", place: 1, performer: "ost", sizeGroup: "M", standing: "cast" },
    { cast: "first", role: "reeds", place: 3, performer: null, sizeGroup: "M", standing: "cast" },
  ],
  scenes: [
    { code: "lake", name: "The lake", act: 1, starts: 0, minutes: 18 },
    { code: "night", name: "Night", act: 2, starts: 65, minutes: 22 },
  ],
  appearances: [
    { role: "moth", scene: "night", costume: "moth" },
    { role: "reeds", scene: "lake", costume: "reeds" },
  ],
};
