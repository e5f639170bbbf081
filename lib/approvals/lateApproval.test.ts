import { describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import { day } from "#lib/planning/fixtures";
import { smallStaging } from "#lib/staging/fixtures";
import { lateApproval, withLaterAnswer } from "./lateApproval";

const APPROVALS =
  "code,title,days,set,free_until,material,asked_on,expected_on,approved_on\nash,Ash grey,2,,,net-54,,,\ngold,Gold,1,,,,,2027-02-05,\npast,Past,0,,,,,,2027-01-15";
const WORK =
  "code,origin,title,garment,set,material,gates,skill,likely,due,waits_for,shown_for\ndip,sample,Dip three greys,,,net-54,,net,2 h,,,ash\nbows,by hand,Gold bows,,,,,hand,3 h,dress,gold,";
const LOTS = "code,material,quantity\nL1,net-54,60 yd\nL2,hooks,400";
const written = smallStaging({ "approvals.csv": APPROVALS, "other_work.csv": WORK, "lots.csv": LOTS });
// Somebody who can fit, whenever the workroom is open.
const staging = { ...written, calls: [], makers: written.makers.map((one) => ({ ...one, skills: { ...one.skills, fit: 1000 } })) };
const options = {
  today: day("2027-01-11"),
  level: (problem: Parameters<typeof level>[0]) => level(problem, { seed: 1, rounds: 0, stop: () => false }),
};

const late = async (approval: string, days: number) => {
  const answer = await lateApproval(staging, approval, days, options);
  if (!answer.ok) throw new Error(answer.error);
  return answer.value;
};

describe("a late answer", () => {
  it("that is not late moves nothing", async () => {
    expect((await late("ash", 0)).moved).toEqual([]);
  });

  it("moves what waits for it, and dress is made while there is room", async () => {
    const { moved, dressBefore, dressAfter, after } = await late("ash", 3);
    expect([dressBefore, dressAfter]).toEqual([true, true]);
    expect(moved.length).toBeGreaterThan(0);
    const cut = after.tasks.filter(({ operation }) => operation === "gather");
    for (const { start } of cut) expect(start).toBeGreaterThanOrEqual(after.approvals.find(({ code }) => code === "ash")!.answer!);
  });

  it("does not make dress when it comes after it", async () => {
    const { moved, dressBefore, dressAfter } = await late("ash", 50);
    expect([dressBefore, dressAfter]).toEqual([true, false]);
    expect(moved.some(({ kind, minutes }) => kind === "garment" && minutes !== null && minutes > 0)).toBe(true);
  });

  it("of other work moves only that when nobody else waits: the bows, from Monday to Wednesday", async () => {
    const { moved } = await late("gold", 2);
    expect(moved.filter(({ of }) => of === "bows")).toEqual([expect.objectContaining({ kind: "other", minutes: 2 * 1440 })]);
    expect(withLaterAnswer(staging, "gold", 2).approvals[1]).toMatchObject({ days: 3, expectedOn: "2027-02-09" });
  });

  it("is asked only of an approval still to be given", async () => {
    expect(await lateApproval(staging, "past", 2, options)).toEqual({ ok: false, error: 'Nothing waits for an approval "past".' });
  });

  it("of a prototype is looked at for longer", () => {
    expect(withLaterAnswer(staging, "skirts", 4).sets[0]).toMatchObject({ approvalDays: 6 });
  });
});
