import { beforeAll, describe, expect, it } from "vitest";
import { lateApproval } from "#lib/approvals/lateApproval";
import { minutesByPriority, undoneNotes } from "#lib/approvals/undoneNotes";
import { waitingOn } from "#lib/approvals/waitingOn";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { level } from "#lib/levelling/level";
import type { LevellingProblem } from "#lib/levelling/problem";
import { planStaging } from "#lib/planning/planStaging";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { notesSheet, planSheet, tasksSheet } from "#lib/sheets/workSheets";
import { readStaging } from "#lib/staging/readStaging";
import type { Staging } from "#lib/staging/staging";
import { writeStaging } from "#lib/staging/writeStaging";
import { seedStaging, TODAY } from "./plannedFolder";

/** The small staging with a dye sample, what the choreographer wants to see, notes from the parade, and odd jobs: all of it invented. */
const APPROVALS = [
  "code,title,by,days,set,free_until,material,expected_on",
  "moonlight,Moonlight blue of the flake net,,3,,,net-soft-white,",
  "lift,Lark bodice in the lift,choreographer,1,larks,mount,,2027-01-22",
];
const WORK = [
  "code,origin,title,garment,set,material,gates,skill,likely,low,high,priority,due,waits_for,shown_for,asked_by,asked_on,done_on",
  "dip,sample,Dip three blues,,,net-soft-white,,dye,45 min,30 min,2 h,1,,,moonlight,designer,,",
  "mock-up,sample,Mock up the lark bodice,,larks,,,boned,2 h,,,1,,,lift,choreographer,,",
  "vat,by hand,Dye the flake net,,,net-soft-white,,dye,3 h,,,1,,moonlight,,,,",
  "tape,alteration,Tape the neck,WL 006,,,,hand,40 min,,,,,,,,,",
  "n-1,parade note,Shorten the straps,WL 001,,,,hand,45 min,,,1,dress,,,designer,2027-02-26,",
  "n-2,parade note,Lower the top layer,WL 003,,,,net,1 h 30,1 h,3 h,2,dress,,,designer,2027-02-26,",
  "n-3,parade note,Trim the threads,WL 004,,,,hand,20 min,,,3,dress,,,,2027-02-26,",
  "n-4,parade note,Steam the hem,WL 005,,,,hand,30 min,,,2,dress,,,,2027-01-08,2027-01-08",
  "tins,by hand,Sort the button tins,,,,,hand,2 h,,,3,,,,,,",
];

const options = { today: TODAY, level: (problem: LevellingProblem) => level(problem, { seed: 1, rounds: 2, stop: () => false }) };
const wall = (day: string, minute: number) => dayNumber(day as PlainDate) * 1440 + minute;

let staging: Staging;
let plan: StagingPlan;
beforeAll(async () => {
  const files = new Map(writeStaging(await seedStaging("small")));
  const read = readStaging(files.set("approvals.csv", APPROVALS.join("\n")).set("other_work.csv", WORK.join("\n")));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  staging = read.value;
  plan = await planStaging(staging, options);
}, 60_000);

const others = () => plan.tasks.filter(({ origin }) => origin !== "operation");
const other = (code: string) => others().find(({ operation }) => operation === code)!;
const finishOf = (garment: string) => plan.garmentStates.find((state) => state.garment === garment)!.finish!;
const firstCut = (garments: readonly string[], operation: string) =>
  Math.min(
    ...plan.tasks
      .filter((task) => task.operation === operation && garments.some((one) => task.garments.includes(one)))
      .map(({ start }) => start!),
  );

describe("samples, notes and odd jobs in the small staging", () => {
  it("are levelled with everything else, the done one no more: 660 min beside the 21,415 of the constructions", () => {
    const minutes = { dip: 45, "mock-up": 120, vat: 180, tape: 40, "n-1": 45, "n-2": 90, "n-3": 20, tins: 120 };
    expect(Object.fromEntries(others().map((task) => [task.operation, task.minutes]))).toEqual(minutes);
    expect(plan.tasks.reduce((sum, task) => sum + task.minutes, 0)).toBe(21_415 + 660);
    expect(others().every(({ maker, start }) => maker !== null && start !== null)).toBe(true);
    expect(plan.summary.lateGarments).toBe(0);
  });

  it("take their maker as long as her pace says: 45 min of dyeing are 89 at 60% of 85%", () => {
    const { maker, stretches } = other("dip");
    expect([maker, stretches.reduce((sum, { start, end }) => sum + end - start, 0)]).toEqual(["ilka", 89]);
  });

  it("follow the finished garment from the parade on, and are done by the dress rehearsal", () => {
    for (const [note, garment] of [
      ["n-1", "WL 001"],
      ["n-2", "WL 003"],
      ["n-3", "WL 004"],
    ] as const) {
      expect(other(note).start).toBeGreaterThanOrEqual(Math.max(finishOf(garment), wall("2027-02-26", 0)));
      expect(other(note).end).toBeLessThanOrEqual(wall("2027-03-03", 14 * 60));
    }
  });

  it("stand in the tables with what they are about", () => {
    const rows = tasksSheet(plan).rows.filter((row) => others().some(({ key }) => row.includes(key)));
    expect(rows.find((row) => row.includes("n-1"))).toEqual([
      ...["WL 001", "Lark tutu (1 of 2)", "n-1", "Shorten the straps", "hand", "", "45", "45", "45", "", "other/n-1"],
      "parade note, asked by designer",
    ]);
    expect(planSheet(plan).rows.filter((row) => row[3]!.startsWith("other/"))).toHaveLength(8);
    expect(
      notesSheet(plan)
        .rows.filter(([kind]) => kind === "approval")
        .map(([, about]) => about),
    ).toEqual(["flakes", "moonlight", "lift"]);
  });
});

describe("approvals in the small staging", () => {
  it("hold back the net, the dyeing and the larks' later work until the answer", () => {
    const answer = new Map(plan.approvals.map((one) => [one.code, one.answer!]));
    expect(other("vat").start).toBeGreaterThanOrEqual(answer.get("moonlight")!);
    expect(firstCut(["WL 003", "WL 004", "WL 005"], "cut-net")).toBeGreaterThanOrEqual(other("vat").end!);
    // Promised for Friday the 22nd: work goes on when that day is over.
    expect(answer.get("lift")).toBe(wall("2027-01-23", 0));
    expect(firstCut(["WL 001", "WL 002"], "close")).toBeGreaterThanOrEqual(answer.get("lift")!);
    expect(firstCut(["WL 004", "WL 005"], "cut-net")).toBeGreaterThanOrEqual(answer.get("flakes")!);
  });

  it("are waited for by garments and notes", () => {
    expect(waitingOn(plan).map(({ approval, garments, otherWork }) => [approval, garments, otherWork])).toEqual([
      ["flakes", ["WL 004", "WL 005"], ["n-3"]],
      ["moonlight", ["WL 003", "WL 004", "WL 005"], ["vat", "n-2", "n-3"]],
      ["lift", ["WL 001", "WL 002"], ["n-1"]],
    ]);
  });

  it("given five days later leave dress as it was, twenty-five days later not", async () => {
    const late = async (days: number) => {
      const answer = await lateApproval(staging, "flakes", days, options);
      return answer.ok ? answer.value : null;
    };
    expect(await late(5)).toMatchObject({ dressBefore: true, dressAfter: true });
    const far = await late(25);
    expect(far).toMatchObject({ dressBefore: true, dressAfter: false });
    expect(far!.moved.filter(({ waits }) => waits).map(({ of }) => of)).toEqual(["WL 004", "WL 005", "n-3"]);
  }, 120_000);
});

describe("notes from the parade", () => {
  it("that are undone are told by priority with their hours", () => {
    expect(undoneNotes(plan).map(({ task }) => task.code)).toEqual(["n-1", "n-2", "n-3"]);
    expect(minutesByPriority(undoneNotes(plan))).toEqual([
      { priority: 1, notes: 1, minutes: 45 },
      { priority: 2, notes: 1, minutes: 90 },
      { priority: 3, notes: 1, minutes: 20 },
    ]);
  });
});
