import { describe, expect, it } from "vitest";
import { toAxis } from "./axis";
import { day, fitting, garment, maker, operation, set, staging, wall, work } from "./fixtures";
import { prepareWorks } from "./prepare";

const after = (on: string, lagMinutes = 0) => ({ on, lagMinutes, lagKind: "elapsed" as const });
const cut = operation("cut", { minutes: [80, 100, 120], setup: [20, 30, 40], batch: true });
const sew = operation("sew", { minutes: [1, 240, 300], waitsFor: [after("cut")] });
const try_ = fitting("try", { waitsFor: [after("sew")] });
const hem = operation("hem", { minutes: [1, 60, 90], skill: "hand", machine: "overlock", waitsFor: [after("try"), after("sew", 1440)] });
const today = { today: day("2027-02-01") };
const skirt = (number: string) => work(number, [cut, sew, hem], [try_]);
const keys = (prepared: ReturnType<typeof prepareWorks>) =>
  prepared.problem.precedences.map(
    ({ before, after: then, lag, lagKind }) => `${prepared.nodes[before]!.key} > ${prepared.nodes[then]!.key} ${lag} ${lagKind}`,
  );

describe("a staging as a problem for the engine", () => {
  const one = prepareWorks(staging(), [garment("X 1")], [skirt("X 1")], today);

  it("has a node for each operation, fitting and finished garment, in the order of the construction", () => {
    expect(one.nodes.map(({ key }) => key)).toEqual(["X 1/cut", "X 1/sew", "X 1/hem", "X 1/try", "X 1/finished"]);
    expect(keys(one)).toEqual([
      "X 1/cut > X 1/sew 0 elapsed",
      "X 1/try > X 1/hem 0 elapsed",
      "X 1/sew > X 1/hem 1440 elapsed",
      "X 1/sew > X 1/try 0 elapsed",
      "X 1/hem > X 1/finished 0 elapsed",
    ]);
  });

  it("asks for the likely minutes, the skill, and a machine of the kind; a kind nobody has counts none", () => {
    const engine = one.problem.nodes[2]!;
    expect(engine).toMatchObject({ minutes: 60, crew: [{ skill: 5, count: 1 }], machines: [{ machine: 0, count: 1 }] });
    expect(one.problem.machines).toEqual([{ id: "overlock", count: 0, calendar: null }]);
    expect(one.problem.skills[5]).toBe("hand");
  });

  it("is due when its milestone is, at the weight of its piece", () => {
    const heavy = prepareWorks(staging(), [garment("X 1", { weight: 3 })], [skirt("X 1")], today);
    expect(heavy.problem.dues).toEqual([
      { node: 4, at: toAxis(one.axis, wall("2027-02-12", 600)), weight: 3, label: "X 1 for Dress parade" },
    ]);
  });

  it("begins work today, or on the production's first day if that is later", () => {
    const released = (text: string) =>
      prepareWorks(staging(), [garment("X 1")], [skirt("X 1")], { today: day(text) }).problem.nodes[0]!.release;
    expect([released("2026-12-01"), released("2027-02-01"), released("2027-02-03")]).toEqual([0, 0, 2 * 1440]);
  });

  it("has calendars from the production's first day to eight weeks past the last milestone", () => {
    const later = prepareWorks(staging(), [garment("X 1")], [skirt("X 1")], { today: day("2027-02-03") });
    expect(later.problem.makers[0]!.calendar[0]!.start).toBe(540);
    expect(later.problem.horizon).toBe((18 + 56) * 1440 - 60);
  });

  it("gives late work hours after the clocks change: 09:00 is an hour earlier on the axis", () => {
    const starts = one.problem.makers[0]!.calendar.map(({ start }) => start % 1440);
    expect(new Set(starts)).toEqual(new Set([540, 480]));
  });

  it("begins no work on a hired or bought garment before it comes", () => {
    const garments = [garment("X 1"), garment("X 2", { piece: "hired" })];
    const arrives = ({ piece }: { readonly piece: string }) => (piece === "hired" ? day("2027-02-04") : null);
    const { nodes, problem } = prepareWorks(staging(), garments, [skirt("X 1"), skirt("X 2")], { ...today, arrives });
    const releases = (number: string) => nodes.flatMap(({ key }, at) => (key.startsWith(number) ? [problem.nodes[at]!.release] : []));
    expect([new Set(releases("X 1")), new Set(releases("X 2"))]).toEqual([new Set([0]), new Set([3 * 1440])]);
  });

  it("shares a batch's set-up, and all of it is waited for", () => {
    const members = [1, 2].map((ordinal) => garment(`X ${ordinal}`, { set: "reeds", ordinal }));
    const two = prepareWorks(staging({ sets: [set("reeds")] }), members, [skirt("X 1"), skirt("X 2")], today);
    expect(two.nodes[0]).toEqual({ key: "X-1+1/cut", kind: "operation", garments: ["X 1", "X 2"], operation: "cut" });
    expect(two.problem.nodes[0]!.minutes).toBe(30 + 70 + 70);
    expect(keys(two)).toContain("X-1+1/cut > X 2/sew 0 elapsed");
  });

  it("keeps the fitter's time for a fitting of a place without a performer, makes no appointment, and says so", () => {
    const unnamed = garment("X 1", { wearers: [{ performer: null, sizeGroup: "m", cast: "first", place: 1, standing: "cast" }] });
    const without = prepareWorks(staging(), [unnamed], [skirt("X 1")], today);
    expect(without.problem.nodes[3]).toMatchObject({ kind: "task", minutes: 30, crew: [{ skill: 8, count: 1 }] });
    expect(without.notes).toEqual([expect.objectContaining({ kind: "caution", about: "X 1" })]);
  });

  it("fits performers in the workroom's hours while no calls are known", () => {
    const unknown = prepareWorks(staging({ calls: [] }), [garment("X 1")], [skirt("X 1")], today);
    expect(unknown.problem.performers[0]!.free[0]).toEqual({ start: 540, end: 1020 });
    expect(unknown.notes.map(({ about }) => about)).toEqual(["calls"]);
  });

  it("warns of minors", () => {
    const minor = staging({ performers: [{ code: "mira", name: "Mira", sizeGroup: "m", minor: true }] });
    expect(prepareWorks(minor, [garment("X 1")], [skirt("X 1")], today).notes[0]!.text).toContain("chaperone");
  });
});

describe("a prototype", () => {
  const members = [1, 2, 3].map((ordinal) => garment(`X ${ordinal}`, { set: "reeds", ordinal, prototype: ordinal === 1 }));
  const works = members.map(({ number }) => skirt(number));
  const gated = (changes: Parameters<typeof set>[1]) =>
    keys(prepareWorks(staging({ sets: [set("reeds", { prototype: true, approvalDays: 2, ...changes })] }), members, works, today));

  it("is finished, then looked at for working days, before the rest is begun", () => {
    expect(gated({}).filter((text) => text.includes("approval"))).toEqual([
      "X 1/finished > reeds/approval 960 working",
      "reeds/approval > X-2+1/cut 0 elapsed",
    ]);
  });

  it("holds back only what comes after the operation named", () => {
    expect(gated({ freeUntil: "cut" }).filter((text) => text.startsWith("reeds/approval"))).toEqual([
      "reeds/approval > X 2/sew 0 elapsed",
      "reeds/approval > X 3/sew 0 elapsed",
    ]);
  });

  it("holds nothing back once approved", () => {
    expect(gated({ approvedOn: day("2027-01-20") }).filter((text) => text.includes("approval"))).toEqual([]);
  });
});

describe("goods", () => {
  const need = {
    garment: "X 1",
    role: "net",
    label: { uk: "Net", us: "Net" },
    material: "net",
    measure: "length" as const,
    quantity: 1000,
    cuts: [],
    oneLotSet: null,
    operation: "cut",
    arithmetic: "",
  };
  const material = {
    code: "net",
    name: "Net",
    kind: "net",
    measure: "length",
    colour: "",
    width: null,
    cuttable: null,
    shrinkage: 0,
    spare: 0,
    kerf: 0,
    keep: null,
    grain: "fixed",
  } as const;
  const lot = (arrives: string | null) => ({
    code: "L1",
    material: "net",
    dyeLot: "",
    quantity: 5000,
    location: "",
    breadth: null,
    arrives: arrives === null ? null : day(arrives),
  });
  const prepared = (lots: readonly ReturnType<typeof lot>[]) =>
    prepareWorks(
      staging({ materials: [material], lots, makers: [maker("bel")] }),
      [garment("X 1")],
      [{ ...skirt("X 1"), needs: [need] }],
      today,
    );

  it("on the shelf hold nothing up", () => {
    expect(prepared([lot(null)]).deliveries).toEqual([]);
  });

  it("on order release the operation that needs them on the day they may be cut", () => {
    const waiting = prepared([lot("2027-02-08")]);
    expect(waiting.problem.nodes[0]!.release).toBe(7 * 1440);
    expect(waiting.deliveries).toEqual([{ node: 0, day: "2027-02-08", text: expect.stringContaining("Lot L1 arrives Mon 8 Feb") }]);
  });

  it("nobody can supply are noted, and taken as on hand", () => {
    const nowhere = prepared([]);
    expect(nowhere.deliveries).toEqual([]);
    expect(nowhere.notes).toEqual([expect.objectContaining({ kind: "material", about: "net", text: "Nobody offers Net." })]);
  });
});
