import { describe, expect, it } from "vitest";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { planStaging } from "#lib/planning/planStaging";
import { edited, smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import { compareSources } from "./compareSources";
import { PLAINLY } from "./fixtures";
import { standardHourCost, standardLabour } from "./labourRate";
import type { Quotes } from "./sourceVariant";

/** Orla gives fittings too, or nothing would ever be finished. */
const fitting = edited("makers.csv", "net=100%; hand=80%", "net=100%; hand=80%; fit=100%");
const staging = smallStaging(fitting);
const rows = async (code: string, quotes: Quotes = {}, of: Staging = staging) => {
  const piece = of.pieces.find((one) => one.code === code)!;
  const all = await compareSources(of, piece, quotes, PLAINLY);
  return Object.fromEntries(all.map((row) => [row.source, row]));
};
const wall = (day: string, minute = 0) => dayNumber(day as PlainDate) * 1440 + minute;

describe("the sources of a piece", () => {
  it("are told with what each takes, or why it cannot be had so", async () => {
    const { build, pull, alter, hire, buy } = await rows("queen-skirt", { hire: { price: 6000, days: 22 } });
    // Of 6 layers: 2 + 6 x 2 min to gather, 60 to mount, 15 to fit the second dancer; 60 in of net from the lot on the shelf.
    expect(build!.figures).toMatchObject({ garments: 1, minutes: [37, 74, 117], fittingMinutes: 15, materials: 0, price: 0 });
    expect(pull).toMatchObject({ figures: null, why: ["Nothing of the kind is in stock."] });
    expect(alter).toMatchObject({ current: true, why: ["As it is planned now."] });
    expect(hire!.figures).toMatchObject({ minutes: [0, 0, 0], labour: 488, price: 6000, total: 6488 });
    // It comes on the one day on which anybody may be fitted.
    expect(Math.floor(hire!.figures!.finish! / 1440)).toBe(wall("2027-02-02") / 1440);
    expect(buy).toMatchObject({ figures: null, why: ["No price is known."] });
  });

  it("cost labour by the makers who have the skill, at their pace and productive share", async () => {
    // Orla at 19.51 an hour, 85% productive: 74 min x 19.51 / 60 / 0.85 = 28.309 for the net; 15 min x 19.51 / 60 = 4.878 for the fitting.
    expect((await rows("queen-skirt")).build!.figures!.labour).toBe(3319);
  });

  it("that need no work are there when they come", async () => {
    const { hire, buy } = await rows("shoes", { hire: { price: 500, days: 30 } });
    expect(hire).toMatchObject({
      figures: { finish: wall("2027-02-10") },
      why: ["At the price given.", "The workroom has nothing to do on it."],
    });
    expect(buy).toMatchObject({ current: true, figures: { finish: wall("2027-01-11") } });
    expect(buy!.why).toContain("No delivery time is known: taken as there at once.");
  });

  it("add up: labour, materials and price are the total, and the price is of all its garments", async () => {
    const { buy, hire } = await rows("shoes", { hire: { price: 500, days: null } });
    expect(buy!.figures).toMatchObject({ garments: 4, price: 4 * 1850 });
    expect(hire!.figures).toMatchObject({ price: 4 * 500 });
    for (const row of Object.values(await rows("snow-skirt", { buy: { price: 9000, days: 3 } })))
      if (row.figures) expect(row.figures.total).toBe(row.figures.labour + row.figures.materials + row.figures.price);
  });

  it("finish as the plan of that staging does", async () => {
    const { build } = await rows("snow-skirt");
    const plan = await planStaging(staging, PLAINLY);
    const states = plan.garmentStates.filter(({ garment }) => ["MG 001", "MG 002"].includes(garment));
    expect(build!.figures!.finish).toBe(Math.max(...states.map(({ finish }) => finish!)));
    expect(build!.figures!.lateGarments).toBe(plan.summary.lateGarments);
  });

  it("buy whole packs: materials are what the purchase list grows by", async () => {
    // 160 in for two of 8 layers and a tenth to spare come off the 12 yd on the shelf; 352 in for two of 16 do not come off 1 yd.
    expect((await rows("snow-skirt")).build!.figures!.materials).toBe(0);
    const wide = smallStaging({
      ...edited("pieces.csv", "layers=8", "layers=16"),
      ...edited("lots.csv", "12 yd", "1 yd"),
      ...fitting,
    });
    expect((await rows("snow-skirt", {}, wide)).build!.figures!.materials).toBe(4800);
  });

  it("count what is planned already without a price as nothing, and say so", async () => {
    const { buy, hire } = await rows("shoes", {}, smallStaging({ ...fitting, ...edited("pieces.csv", "18.50", "") }));
    expect(buy).toMatchObject({
      figures: { price: 0 },
      why: [expect.stringContaining("no price is known"), expect.anything(), expect.anything()],
    });
    expect(hire!.figures).toBeNull();
  });

  it("count what is on the shelf against what is needed, and take nothing another piece takes", async () => {
    const one = await rows("snow-skirt");
    expect(one.pull!.why).toEqual(["Nothing of the kind is in stock."]);
    const worn = edited(
      "stock.csv",
      "ST 3,Old skirt,skirt,rail 2,worn,",
      "ST 4,New skirt,skirt,rail 2,good,\nST 3,Old skirt,skirt,rail 2,worn,",
    );
    const more = await rows("snow-skirt", {}, smallStaging({ ...fitting, ...worn }));
    expect(more.pull!.why).toEqual(["2 are needed; in stock is ST 4, New skirt, good."]);
    expect(more.alter!.why).toEqual(["2 are needed; in stock is ST 4, New skirt, good."]);
    const queen = await rows("queen-skirt", {}, smallStaging({ ...fitting, ...worn }));
    expect(queen.pull).toMatchObject({
      why: ["In stock: ST 4, New skirt, good."],
      figures: { minutes: [0, 0, 0], labour: 488, materials: 0 },
    });
  });

  it("take the stock that the piece list gives them for enough, and say when a construction does not know the work", async () => {
    const stock = edited("stock.csv", "rail 2,worn", "rail 2,good");
    const pieces = edited("pieces.csv", "dress,2,,", "dress,2,,ST 3")["pieces.csv"]!.replace("dress,,,ST 3", "dress,,,");
    const given = smallStaging({ ...stock, "pieces.csv": pieces, ...fitting });
    const { pull, alter } = await rows("snow-skirt", {}, given);
    expect(pull!.why[0]).toBe("In stock: ST 3, Old skirt, good, =two rows of bars.");
    expect(alter).toMatchObject({ figures: null, why: ["skirt has no work for a garment that is altered."] });
    expect((await rows("shoes")).build).toMatchObject({ figures: null, why: ["Nothing says how it is built."] });
  });

  it("say when nobody has a skill rather than cost it nothing silently", async () => {
    const without = smallStaging(edited("makers.csv", "net=100%; hand=80%", "hand=80%"));
    expect((await rows("snow-skirt", {}, without)).build!.why).toContain("Nobody has the skill net: its minutes cost nothing here.");
    expect((await rows("snow-skirt", {}, without)).build!.figures!.finish).toBeNull();
  });
});

describe("an hour of standard work", () => {
  const [orla] = staging.makers;
  const slow = { ...orla!, code: "slow", skills: { net: 500, fit: 500 }, productive: 500, costPerHour: 1000 };

  it("costs more of whoever is slower, and is the mean of all who have the skill", () => {
    // 1000 an hour at half the pace and half productive: 4000. Orla: 1951 / 0.85.
    expect(standardHourCost([slow], "net")).toBe(4000);
    expect(standardHourCost([slow, orla!], "net")).toBeCloseTo((4000 + 1951 / 0.85) / 2, 6);
    expect(standardHourCost([slow, orla!], "hand")).toBeCloseTo(1951 / 0.85 / 0.8, 6);
    expect(standardHourCost([slow, orla!], "dye")).toBeNull();
  });

  it("of a fitting is an hour on the clock", () => {
    expect(standardHourCost([slow], "fit")).toBe(1000);
    expect(standardLabour([slow], [])).toEqual({ cost: 0, nobody: [] });
  });
});
