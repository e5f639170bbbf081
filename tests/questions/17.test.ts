import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { clockOf, workOfDay } from "#lib/questions/workOfDay";
import { ask, askable, only, TODAY } from "./asked";

/** The two Frost tunics, and Joss alone to make them (80%, Mon to Wed at this). */
const joss = async () => {
  const { makers, ...staging } = await only("frost-tunic");
  return askable({ ...staging, makers: makers.filter(({ code }) => code === "joss") }, 0);
};
const clocks = (items: readonly { readonly start: number; readonly end: number }[], day: PlainDate) =>
  items.map(({ start, end }) => [clockOf(start, day), clockOf(end, day)]);

describe("17. What should each person work on today, and what next if that stalls?", () => {
  /** A tunic's pattern takes 300 min, 300 / 0.8 = 375 of the clock: 9:00 to 13:00 and 14:00 to 16:15. Then its toile. */
  it("Joss: one pattern until 16:15, then its toile; if the pattern stalls the toile stalls with it, but the other tunic's pattern waits for nothing", async () => {
    const asked = await joss();
    const [day] = workOfDay(asked.plan, TODAY);
    expect(clocks(day!.items, TODAY)).toEqual([
      [540, 780],
      [840, 975],
      [975, 1080],
    ]);
    expect([...new Set(day!.items.map(({ node }) => asked.plan.nodes[node]!.key))]).toEqual(["WL 001/pattern", "WL 001/toile"]);
    expect(asked.plan.nodes[day!.instead!.node]!.key).toBe("WL 002/pattern");
    expect(day!.instead!.of).toBe("joss");
    expect((await ask(17, asked)).says).toEqual(["Mon 11 Jan: one person has work in the plan."]);
  });

  /** 72 min of the unitard's pattern, 72 / 0.85 = 84.7: until 10:25. All else of it waits for the pattern, and the cloth comes on Friday. */
  it("Bryn: the unitard's pattern until 10:25, and nothing else if it stalls", async () => {
    const asked = await askable(await only("wind-unitard"), 0);
    const bryn = workOfDay(asked.plan, TODAY).find(({ maker }) => maker === "bryn")!;
    expect(clocks(bryn.items, TODAY)).toEqual([[540, 625]]);
    expect(bryn.instead).toBeNull();
    expect((await ask(17, asked)).tables[0]!.rows[0]!.at(-1)).toBe("nothing else can be begun");
  });

  it("nobody on a Sunday", async () => {
    const asked = await askable(await only("wind-unitard"), 0);
    expect(workOfDay(asked.plan, "2027-01-17" as PlainDate).every(({ items }) => items.length === 0)).toBe(true);
  });
});
