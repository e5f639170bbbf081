import { describe, expect, it } from "vitest";
import { dayOf, plainDate } from "#lib/calendar/days";
import type { Garment, Wearer } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import type { Staging } from "#lib/staging/staging";
import { breakDown } from "./breakDown";

const both = (text: string) => ({ uk: text, us: text });
const cape: Construction = {
  code: "cape",
  version: 1,
  name: both("Cape"),
  source: "invented",
  cautions: [],
  medianBody: { height: "170 cm", neck: "36 cm" },
  parameters: [],
  layers: [],
  drivers: [{ code: "length", label: both("length"), unit: "length", formula: "body.height - body.neck" }],
  operations: [],
  fittings: [{ code: "fit", kind: "final", name: both("Fitting"), minutes: 15, waitsFor: [], when: "", sources: ["build"] }],
  needs: [],
};

const wearer = (performer: string | null): Wearer => ({ performer, sizeGroup: "m", cast: "1", place: 1, standing: "cast" });
const garment = (change: Partial<Garment>): Garment => ({
  number: "C 1",
  name: "Cape",
  piece: "cape",
  costume: "night",
  role: "owl",
  source: "build",
  construction: "cape",
  set: "capes",
  ordinal: 1,
  prototype: false,
  wearers: [wearer("ada"), wearer("bel")],
  parameters: {},
  materials: {},
  due: "dress",
  weight: 1,
  version: null,
  price: null,
  stock: null,
  ...change,
});

const today = plainDate(dayOf(2027, 1, 4));

const staging: Staging = {
  production: {
    code: "n",
    title: "N",
    subtitle: "",
    workroom: "w",
    starts: today,
    budget: null,
    currency: "GBP",
    zone: "Europe/London",
    words: "us",
    lengths: "cm",
    prefix: "C",
    visitsPerWeek: null,
  },
  milestones: [],
  sizeGroups: [{ code: "m", name: "M" }],
  performers: [],
  measurements: [
    { of: { performer: "ada" }, taken: today, body: "warm", values: { height: 8 * 16_500 } },
    { of: { sizeGroup: "m" }, taken: today, body: "not noted", values: { height: 8 * 16_800, neck: 8 * 3_500 } },
  ],
  roles: [],
  casting: [],
  scenes: [],
  appearances: [],
  costumes: [],
  approvals: [],
  otherWork: [],
  sets: [
    { code: "capes", name: "Capes", oneDyeLot: true, repair: 0, prototype: false, freeUntil: null, approvalDays: 0, approvedOn: null },
  ],
  pieces: [],
  makers: [],
  absences: [],
  machines: [],
  calls: [],
  materials: [],
  offers: [],
  lots: [],
  stock: [],
  constructions: [cape],
};
const one = (change: Partial<Garment> = {}) => breakDown(staging, [garment(change)])[0]!;

describe("breakDown", () => {
  it("cuts to the first wearer, takes what is missing from the size group, and says which", () => {
    expect(one().drivers[0]?.value).toBe(8 * (16_500 - 3_500));
    expect(one().notes).toContainEqual({
      garment: "C 1",
      kind: "measurement",
      text: "No neck of ada on the newest sheet; taken from size group m.",
    });
  });

  it("stands on the size group before casting, and says so", () => {
    const uncast = one({ wearers: [wearer(null)] });
    expect(uncast.drivers[0]?.value).toBe(8 * (16_800 - 3_500));
    expect(uncast.notes[0]?.text).toBe("Not cast yet: height, neck from size group m.");
  });

  it("fits the first wearer by the construction and each later one as an understudy", () => {
    expect(one().fittings.map(({ kind, wearer, waitsFor }) => [kind, wearer, waitsFor.map(({ on }) => on)])).toEqual([
      ["final", 0, []],
      ["cover", 1, ["fit"]],
    ]);
  });

  it("plans nothing for a garment without a construction, and tells one that does not exist", () => {
    expect(one({ construction: null })).toMatchObject({ construction: null, operations: [], notes: [] });
    expect(one({ construction: "cope" }).notes[0]?.text).toContain('There is no construction "cope"');
  });

  it("keeps the order of the garments", () => {
    const numbers = ["C 3", "C 1", "C 2"];
    expect(
      breakDown(
        staging,
        numbers.map((number) => garment({ number })),
      ).map(({ garment }) => garment),
    ).toEqual(numbers);
  });
});
