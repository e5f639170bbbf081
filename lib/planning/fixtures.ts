import type { GarmentWork, WorkFitting, WorkOperation } from "#lib/breakdown/work";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Garment, GarmentSet } from "#lib/casting/wardrobe";
import type { Maker } from "#lib/labour/workroom";
import type { Staging } from "#lib/staging/staging";

/** Small hand-made values for the tests of this room. */

export const day = (text: string): PlainDate => text as PlainDate;
export const wall = (text: string, minute: number): number => dayNumber(day(text)) * 1440 + minute;
const both = (text: string) => ({ uk: text, us: text });

export const garment = (number: string, changes: Partial<Garment> = {}): Garment => ({
  number,
  name: `Garment ${number}`,
  piece: "piece",
  costume: "costume",
  role: "role",
  source: "build",
  construction: "skirt",
  version: null,
  set: null,
  ordinal: 1,
  prototype: false,
  wearers: [{ performer: "mira", sizeGroup: "m", cast: "first", place: 1, standing: "cast" }],
  parameters: {},
  materials: {},
  due: "parade",
  weight: 1,
  price: null,
  stock: null,
  ...changes,
});

export const set = (code: string, changes: Partial<GarmentSet> = {}): GarmentSet => ({
  code,
  name: code,
  oneDyeLot: false,
  repair: 0,
  prototype: false,
  freeUntil: null,
  approvalDays: 1,
  approvedOn: null,
  ...changes,
});

export const operation = (code: string, changes: Partial<WorkOperation> = {}): WorkOperation => ({
  code,
  name: both(code),
  part: "skirt",
  skill: "net",
  machine: null,
  minutes: [60, 60, 60],
  setup: [0, 0, 0],
  learningFactor: 1000,
  arithmetic: "",
  waitsFor: [],
  batch: false,
  pauses: true,
  straining: null,
  ...changes,
});

export const fitting = (code: string, changes: Partial<WorkFitting> = {}): WorkFitting => ({
  code,
  kind: "first",
  name: both(`${code} fitting`),
  minutes: 30,
  wearer: 0,
  waitsFor: [],
  ...changes,
});

export const work = (number: string, operations: readonly WorkOperation[], fittings: readonly WorkFitting[] = []): GarmentWork => ({
  garment: number,
  construction: { code: "skirt", version: 1 },
  drivers: [],
  operations,
  fittings,
  needs: [],
  layers: [],
  notes: [],
});

const weekdays = [1, 2, 3, 4, 5];

export const maker = (code: string, changes: Partial<Maker> = {}): Maker => ({
  code,
  name: code,
  trade: "tutu maker",
  employment: "staff",
  skills: { net: 1000, fit: 1000 },
  hours: weekdays.map((weekday) => ({ weekday, from: 540, to: 1020 })),
  overtime: [],
  productive: 1000,
  reservedMinutesPerWeek: 0,
  paceFrom: [],
  costPerHour: 2000,
  overtimeCostPerHour: 3000,
  starts: null,
  ends: null,
  ...changes,
});

/** One maker, one performer called on weekdays 10:00 to 18:00 from 1 to 26 February 2027, one fitting room, parade on Friday 12 February. */
export const staging = (changes: Partial<Staging> = {}): Staging => ({
  production: {
    code: "x",
    title: "X",
    subtitle: "",
    workroom: "Workroom",
    starts: day("2027-02-01"),
    budget: null,
    currency: "GBP",
    zone: "Europe/London",
    words: "uk",
    lengths: "in",
    prefix: "X",
    visitsPerWeek: null,
  },
  milestones: [
    { code: "parade", kind: "dress parade", name: "Dress parade", date: day("2027-02-12"), at: 600 },
    { code: "opening", kind: "opening", name: "Opening", date: day("2027-02-19"), at: 1170 },
  ],
  sizeGroups: [{ code: "m", name: "Medium" }],
  performers: [{ code: "mira", name: "Mira", sizeGroup: "m", minor: false }],
  measurements: [],
  roles: [{ code: "role", name: "Role", kind: "soloist", places: 1 }],
  casting: [],
  scenes: [],
  appearances: [],
  costumes: [{ code: "costume", name: "Costume", role: "role" }],
  sets: [],
  pieces: [],
  makers: [maker("bel")],
  absences: [],
  machines: [{ code: "room", name: "Fitting room", kind: "fitting room", count: 1 }],
  calls: Array.from({ length: 26 }, (_, at) => ({
    performer: null,
    date: day(`2027-02-${String(at + 1).padStart(2, "0")}`),
    from: 600,
    to: 1080,
    kind: "span" as const,
  })).filter((_, at) => at % 7 < 5),
  materials: [],
  offers: [],
  lots: [],
  stock: [],
  approvals: [],
  otherWork: [],
  constructions: [],
  ...changes,
});
