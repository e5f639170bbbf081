import { beforeAll, describe, expect, it } from "vitest";
import { splitWall } from "#lib/calendar/clock";
import type { Asked } from "#lib/questions/answer";
import { fittingsWaiting } from "#lib/questions/fittingsWaiting";
import { freeByDay } from "#lib/questions/freeTable";
import { askable, small, TODAY } from "./asked";

let asked: Asked;
beforeAll(async () => {
  asked = await askable(await small());
});
const times = ({ plan }: Asked, performer: string) => {
  const { week, dancers } = fittingsWaiting(plan, TODAY, TODAY);
  return freeByDay(week, dancers.find((one) => one.performer === performer)!.free).map((one) => one.times.join(" "));
};
const length = (free: readonly { readonly start: number; readonly end: number }[]) =>
  free.reduce((sum, { start, end }) => sum + end - start, 0);

describe("6. What is waiting on a fitting, and which dancers are free this week inside their work span?", () => {
  /** The Larks 5 and 4 (a cover's), the Snowflakes 3 x 4, Hazel 4, the Frosts 2 x 4, the Wind 2, the headpiece 4 (two covers'), the tights 2 and 1. */
  it("42 fittings are to come", () => {
    expect(fittingsWaiting(asked.plan, TODAY, TODAY).toCome).toBe(5 + 4 + 12 + 4 + 8 + 2 + 4 + 3);
  });

  /**
   * Her span is 10:00 to 18:30, class 10:15 to 11:30. On Mon and Wed she rehearses 11:45 to 14:45, three hours, so the hour after is hers.
   * Mon and Wed: 15 + 15 + 165 = 195 min; Tue, Thu, Fri: 15 + 420 = 435. In all 28 h 15.
   */
  it("Ines is free for 28 h 15, not in class or rehearsal, nor in the free hour after three of it", () => {
    const rehearsing = "10:00-10:15 11:30-11:45 15:45-18:30";
    const calm = "10:00-10:15 11:30-18:30";
    expect(times(asked, "ines")).toEqual([rehearsing, calm, rehearsing, calm, calm, "", ""]);
    const ines = fittingsWaiting(asked.plan, TODAY, TODAY).dancers.find(({ performer }) => performer === "ines")!;
    expect(length(ines.free)).toBe(28 * 60 + 15);
    const fitted = asked.plan.fittings.filter(({ performer, start }) => performer === "ines" && splitWall(start!).date < "2027-01-18");
    expect(ines.left).toBe(28 * 60 + 15 - fitted.reduce((sum, { minutes }) => sum + minutes, 0));
  });

  it("a rehearsal more takes its hours: Tuesday 14:00 to 16:00 leaves 11:30 to 14:00 and 16:00 to 18:30", async () => {
    const call = { performer: "ines", date: "2027-01-12" as typeof TODAY, from: 14 * 60, to: 16 * 60, kind: "rehearsal" as const };
    const called = await askable(await small(({ calls }) => ({ calls: [...calls, call] })), 0);
    expect(times(called, "ines")[1]).toBe("10:00-10:15 11:30-14:00 16:00-18:30");
  });

  /** Hazel's cutting (2 h) waits for the toile fitting, and nothing else does. */
  it("the cutting of Hazel's bodice waits on her toile fitting", () => {
    const toile = asked.plan.fittings.find(({ garment, fitting }) => garment === "WL 006" && fitting === "fit-toile")!;
    const { inWeek } = fittingsWaiting(asked.plan, TODAY, splitWall(toile.start!).date);
    const { work } = inWeek.find(({ fitting }) => fitting.node === toile.node)!;
    expect(work.map((node) => [asked.plan.nodes[node]!.key, asked.plan.problem.nodes[node]!.minutes])).toEqual([["WL 006/cut", 120]]);
  });

  it("lists in a week what the plan has in it, and no more", () => {
    const weeks = ["2027-01-11", "2027-01-18", "2027-01-25", "2027-02-01", "2027-02-08", "2027-02-15", "2027-02-22"] as (typeof TODAY)[];
    const counts = weeks.map((day) => fittingsWaiting(asked.plan, TODAY, day).inWeek.length);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(42);
  });
});
