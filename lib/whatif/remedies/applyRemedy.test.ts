import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import { day, fitting, garment, maker, operation, staging, work } from "#lib/planning/fixtures";
import { outMinutes } from "#lib/planning/outwork";
import { prepareWorks } from "#lib/planning/prepare";
import { applyRemedy } from "./applyRemedy";
import type { Remedy } from "./remedy";

const from = day("2027-02-01");
const applied = (remedy: Remedy, to = staging()) => {
  const result = applyRemedy(to, remedy);
  if (!result.ok) throw new Error(result.error);
  return result.value;
};

describe("more hands", () => {
  it("come for so many working days: seven from a Monday end on the Tuesday after, one closed day later on the Wednesday", () => {
    const remedy: Remedy = { kind: "maker", skill: "net", count: 2, days: 7, from };
    const added = applied(remedy).staging.makers.slice(1);
    expect(added.map(({ starts, ends, skills }) => [starts, ends, skills])).toEqual([
      ["2027-02-01", "2027-02-09", { net: 1000 }],
      ["2027-02-01", "2027-02-09", { net: 1000 }],
    ]);
    const closed = { maker: null, from: day("2027-02-04"), to: day("2027-02-04"), fromTime: null, toTime: null, reason: "closed" };
    expect(applied(remedy, staging({ absences: [closed] })).staging.makers[1]!.ends).toBe("2027-02-10");
  });
});

describe("overtime", () => {
  it("follows the day's work, two hours at most, and comes to what is asked", () => {
    const { options } = applied({ kind: "overtime", of: { maker: "bel" }, minutes: 300, from });
    const at = (date: string, minute: number) => dayNumber(day(date)) * 1440 + minute;
    expect(options.overtime?.get("bel")).toEqual([
      { start: at("2027-02-01", 1020), end: at("2027-02-01", 1140) },
      { start: at("2027-02-02", 1020), end: at("2027-02-02", 1140) },
      { start: at("2027-02-03", 1020), end: at("2027-02-03", 1080) },
    ]);
  });

  it("is overtime in the maker's calendar, and not while she is away", () => {
    const away = { maker: "bel", from: day("2027-02-02"), to: day("2027-02-02"), fromTime: 900, toTime: 1200, reason: "" };
    const changed = staging({ absences: [away] });
    const { options } = applied({ kind: "overtime", of: { skill: "net" }, minutes: 240, from }, changed);
    const { problem } = prepareWorks(changed, [], [], { today: from, ...options });
    expect(problem.makers[0]!.calendar.filter(({ overtime }) => overtime)).toEqual([
      { start: 1020, end: 1140, overtime: true, speed: 1000 },
    ]);
  });

  it("is refused of somebody who is not there", () => {
    expect(applyRemedy(staging(), { kind: "overtime", of: { maker: "nobody" }, minutes: 60, from }).ok).toBe(false);
  });
});

describe("out of the house", () => {
  /** Ten days for 60 + 180 minutes: a quarter of them, 3600 minutes of the clock, and three quarters, 10,800. */
  it("the days are shared out by the minutes; patterns and fittings stay", () => {
    const works = [
      work(
        "X 001",
        [
          operation("pattern", { skill: "pattern" }),
          operation("cut", { minutes: [60, 60, 60] }),
          operation("sew", { minutes: [180, 180, 180], waitsFor: [{ on: "cut", lagMinutes: 0, lagKind: "elapsed" }] }),
        ],
        [fitting("final", { waitsFor: [{ on: "sew", lagMinutes: 0, lagKind: "elapsed" }] })],
      ),
    ];
    const garments = [garment("X 001")];
    const out = outMinutes(garments, works, () => 10);
    expect(["pattern", "cut", "sew", "final"].map((code) => out.minutes("X 001", code))).toEqual([null, 3600, 10_800, null]);
    const { options } = applied({ kind: "outwork", garments: ["X 001"], price: 1, days: 10 });
    const { problem } = prepareWorks(staging({ makers: [maker("bel")] }), garments, works, { today: from, ...options });
    expect(problem.nodes.map((node) => [node.minutes, node.kind === "task" ? node.crew.length : 1])).toEqual([
      [60, 1],
      [3600, 0],
      [10_800, 0],
      [30, 1],
      [0, 0],
    ]);
  });
});

describe("goods, machines, parameters", () => {
  it("an order of a week that comes ten days sooner comes at once", () => {
    const offer = {
      material: "net",
      supplier: "S",
      pack: 1,
      minimumPacks: 1,
      prices: [],
      leadDays: 7,
      inspectionDays: 1,
      orderCost: 0,
      breaks: false,
    };
    const lot = { code: "L", material: "net", dyeLot: null, quantity: 1, location: "", arrives: day("2027-02-20") };
    const material = {
      code: "net",
      name: "Net",
      kind: "net" as const,
      measure: "length" as const,
      colour: "",
      width: null,
      cuttable: null,
    };
    const changed = staging({
      materials: [{ ...material, shrinkage: 0, spare: 0, kerf: 0, keep: null, grain: "fixed" }],
      offers: [offer],
      lots: [lot],
    } as never);
    const { offers, lots } = applied({ kind: "deliver", material: "net", days: 10 }, changed).staging;
    expect([offers[0]!.leadDays, lots[0]!.arrives]).toEqual([0, "2027-02-10"]);
  });

  it("one more of a kind is one more, and of nothing is refused", () => {
    expect(applied({ kind: "machine", machine: "fitting room" }).staging.machines[0]!.count).toBe(2);
    expect(applyRemedy(staging(), { kind: "machine", machine: "loom" }).ok).toBe(false);
  });

  it("a piece or a parameter nobody knows is refused", () => {
    expect(applyRemedy(staging(), { kind: "simplify", piece: "none", parameter: "motifs", value: "0" }).ok).toBe(false);
  });
});
