import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { day, garment, operation, set, wall } from "#lib/planning/fixtures";
import { prepareWorks } from "#lib/planning/prepare";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { approval, members, planSkirts, skirts, TODAY, task, works } from "./fixtures";

const timesOf = ({ tasks }: StagingPlan, key: string) => {
  const { start, end } = tasks.find((one) => one.key === key)!;
  return [start, end];
};
const answerOf = ({ approvals }: StagingPlan, code: string) => approvals.find((one) => one.code === code)!.answer;

describe("other work", () => {
  it("of a garment with no day of its own is done before the garment is finished", () => {
    const plan = planSkirts({ otherWork: [task("label", { garment: "X 3", minutes: [600, 600, 600] })] });
    expect(plan.garmentStates[2]!.finish).toBeGreaterThanOrEqual(timesOf(plan, "other/label")[1]!);
    expect(plan.garmentStates[2]!.minutes).toBe(240 + 600);
  });

  it("with a day of its own follows the finished garment, is due by itself, and is late by itself", () => {
    const note = task("note", { origin: "parade note", garment: "X 1", due: "parade", minutes: [30, 30, 30] });
    const plan = planSkirts({ otherWork: [note] });
    expect(timesOf(plan, "other/note")[0]).toBeGreaterThanOrEqual(plan.garmentStates[0]!.finish!);
    expect(plan.problem.dues.map(({ label }) => label)).toContain("Do note for Dress parade");
    const milestones = [{ code: "parade", kind: "dress parade" as const, name: "Dress parade", date: day("2027-02-01"), at: 780 }];
    const late = planSkirts({ otherWork: [note], milestones }).notes.filter(
      ({ kind, text }) => kind === "late" && text.startsWith("Do note"),
    );
    expect(late).toEqual([expect.objectContaining({ about: "X 1", text: expect.stringContaining("due Mon 1 Feb 13:00") })]);
  });

  it("on a pulled garment that needs no other makes it finished, by the garment's own day", () => {
    const pulled = task("row of bars", { origin: "alteration", garment: "X 9", minutes: [45, 45, 45] });
    const prepared = prepareWorks(skirts({ otherWork: [pulled] }), [...members, garment("X 9")], works, { today: TODAY });
    const node = (key: string) => prepared.nodes.findIndex((one) => one.key === key);
    expect(prepared.problem.dues).toContainEqual(expect.objectContaining({ node: node("X 9/finished"), label: "X 9 for Dress parade" }));
    expect(prepared.problem.precedences).toContainEqual(
      expect.objectContaining({ before: node("other/row of bars"), after: node("X 9/finished") }),
    );
  });

  it("is not worked before the day it was asked for", () => {
    const plan = planSkirts({ otherWork: [task("notes", { askedOn: day("2027-02-04") })] });
    expect(timesOf(plan, "other/notes")[0]).toBe(wall("2027-02-04", 540));
  });

  it("goes before the operation it gates, and before its material is cut", () => {
    const otherWork = [task("stamp", { set: "reeds", gates: "hem" }), task("dye", { material: "net", minutes: [500, 500, 500] })];
    const plan = planSkirts({ otherWork });
    const begins = (operation: string) => plan.tasks.filter((one) => one.operation === operation).map(({ start }) => start!);
    expect(Math.min(...begins("hem"))).toBeGreaterThanOrEqual(timesOf(plan, "other/stamp")[1]!);
    expect(Math.min(...begins("cut"))).toBeGreaterThanOrEqual(timesOf(plan, "other/dye")[1]!);
  });

  it("of an important kind goes before what may wait", () => {
    const note = (code: string, priority: number) => task(code, { due: "parade", priority, minutes: [400, 400, 400] });
    const milestones = [{ code: "parade", kind: "dress parade" as const, name: "Dress parade", date: day("2027-02-01"), at: 1020 }];
    const plan = planSkirts({ otherWork: [note("late", 3), note("first", 1)], milestones });
    expect(timesOf(plan, "other/first")[1]).toBeLessThanOrEqual(timesOf(plan, "other/late")[0]!);
  });

  it("that is done is not planned again", () => {
    const done = planSkirts({ otherWork: [task("dye", { material: "net", doneOn: day("2027-01-30") })] });
    const none = planSkirts();
    expect({ ...done, staging: null }).toEqual({ ...none, staging: null });
  });
});

describe("an approval", () => {
  // The sample takes Monday 09:00 to 10:00; two working days of eight hours later it is Wednesday 10:00.
  const sample = task("dip", { origin: "sample", material: "net", shownFor: "ash" });

  it("takes its working days from the end of its samples, and its material is cut after it", () => {
    const plan = planSkirts({ approvals: [approval("ash", { days: 2, material: "net" })], otherWork: [sample] });
    expect(timesOf(plan, "other/dip")).toEqual([wall("2027-02-01", 540), wall("2027-02-01", 600)]);
    expect(answerOf(plan, "ash")).toBe(wall("2027-02-03", 600));
    expect(Math.min(...plan.tasks.filter((one) => one.operation === "cut").map(({ start }) => start!))).toBe(wall("2027-02-03", 600));
  });

  it("of a material keeps it from being dyed too", () => {
    const dyed = works.map((one) => {
      const [cut, ...others] = one.operations;
      const dye = operation("dye", { skill: "dye", minutes: [60, 60, 60] });
      return { ...one, operations: [dye, { ...cut!, waitsFor: [{ on: "dye", lagMinutes: 720, lagKind: "elapsed" as const }] }, ...others] };
    });
    const prepared = prepareWorks(skirts({ approvals: [approval("ash", { material: "net" })] }), members, dyed, { today: TODAY });
    const at = (key: string) => prepared.nodes.findIndex((node) => node.key === key);
    for (const key of ["X 1/dye", "X 2/dye", "X 3/cut"])
      expect(prepared.problem.precedences).toContainEqual(expect.objectContaining({ before: at("approval/ash"), after: at(key) }));
  });

  it("asked for already is answered by the end of its working days: work goes on the next morning", () => {
    const asked = (changes: object) => planSkirts({ approvals: [approval("ash", { material: "net", ...changes })] });
    expect(timesOf(asked({ askedOn: day("2027-02-01"), days: 1 }), "X 1/cut")[0]).toBe(wall("2027-02-03", 540));
    expect(timesOf(asked({ askedOn: day("2027-02-01"), days: 9, expectedOn: day("2027-02-01") }), "X 1/cut")[0]).toBe(
      wall("2027-02-02", 540),
    );
  });

  it("promised for a day that is past is taken to come today, and says so", () => {
    const plan = planSkirts({ approvals: [approval("ash", { material: "net", expectedOn: day("2027-01-29") })] });
    expect(timesOf(plan, "X 1/cut")[0]).toBe(wall("2027-02-02", 540));
    expect(plan.notes.filter(({ kind }) => kind === "approval").map(({ text }) => text)).toContain(
      "The ash: the answer (designer) was promised for Fri 29 Jan and has not come. The plan takes it to come today.",
    );
  });

  it("that is given holds nothing up", () => {
    const given = planSkirts({ approvals: [approval("ash", { material: "net", days: 9, approvedOn: day("2027-01-29") })] });
    expect({ ...given, staging: null }).toEqual({ ...planSkirts(), staging: null });
  });

  it("of a prototype lets dyeing for the others wait for it, and the prototype go on", () => {
    const sets = [set("reeds", { prototype: true, approvalDays: 1 })];
    const plan = planSkirts({ sets, otherWork: [task("dye", { material: "net", waitsFor: "reeds" })] });
    expect(timesOf(plan, "X 1/cut")[0]).toBe(wall("2027-02-01", 540));
    expect(timesOf(plan, "other/dye")[0]).toBe(answerOf(plan, "reeds"));
    expect(timesOf(plan, "X 2/cut")[0]).toBeGreaterThanOrEqual(timesOf(plan, "other/dye")[1]!);
  });
});

const anyDays = fc.nat(4);
const anyStaging: fc.Arbitrary<Partial<Staging>> = fc
  .record({
    prototype: fc.boolean(),
    ...{
      approvalDays: anyDays,
      freeUntil: fc.constantFrom(null, "cut", "sew"),
      ashDays: anyDays,
      waits: fc.constantFrom(null, "ash", "shape"),
    },
    ...{
      minutes: fc.integer({ min: 1, max: 900 }),
      expectedOn: fc.constantFrom(null, day("2027-02-04")),
      gates: fc.constantFrom(null, "hem"),
    },
  })
  .map(({ prototype, approvalDays, freeUntil, ashDays, waits, minutes, expectedOn, gates }) => ({
    sets: [set("reeds", { prototype, approvalDays, freeUntil })],
    approvals: [approval("ash", { days: ashDays, material: "net" }), approval("shape", { set: "reeds", freeUntil: "cut", expectedOn })],
    otherWork: [
      task("dip", { origin: "sample", material: "net", shownFor: "ash", minutes: [minutes, minutes, minutes] }),
      task("block", { origin: "sample", set: "reeds", shownFor: "shape", waitsFor: waits === "ash" ? "ash" : null }),
      task("paint", { set: "reeds", gates, waitsFor: waits, due: "parade" }),
    ],
  }));

describe("work that waits for an approval", () => {
  it("never begins before the answer, which never comes before the days it takes", () =>
    fc.assert(
      fc.property(anyStaging, (changes) => {
        const plan = planSkirts(changes);
        expect(checkPlan(plan.problem, plan.answer.plan)).toEqual([]);
        const begins = (of: (task: PlannedTask) => boolean) => Math.min(...plan.tasks.filter(of).map(({ start }) => start!));
        expect(begins(({ operation }) => operation === "cut")).toBeGreaterThanOrEqual(answerOf(plan, "ash")!);
        expect(begins(({ operation }) => operation === "sew")).toBeGreaterThanOrEqual(answerOf(plan, "shape")!);
        expect(answerOf(plan, "ash")).toBeGreaterThanOrEqual(timesOf(plan, "other/dip")[1]! + 480 * changes.approvals![0]!.days);
        const { waitsFor } = changes.otherWork![2]!;
        if (waitsFor) expect(timesOf(plan, "other/paint")[0]).toBeGreaterThanOrEqual(answerOf(plan, waitsFor)!);
        const [reeds] = changes.sets!;
        if (reeds!.prototype) {
          const held = reeds!.freeUntil === null ? "cut" : reeds!.freeUntil === "cut" ? "sew" : "hem";
          expect(begins(({ operation, garments }) => operation === held && !garments.includes("X 1"))).toBeGreaterThanOrEqual(
            answerOf(plan, "reeds")!,
          );
        }
      }),
      { numRuns: 60 },
    ));
});
