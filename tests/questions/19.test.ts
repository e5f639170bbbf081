import { describe, expect, it } from "vitest";
import { budgetAtCompletion } from "#lib/questions/budget";
import type { Staging } from "#lib/staging/staging";
import { ask, askable, only, small } from "./asked";

/** The Wind unitard, made by Bryn alone (85%, 16.50 an hour) and fitted by Vesna (22.00). */
const unitard = async (change: (staging: Staging) => Partial<Staging> = () => ({})) => {
  const staging = await only("wind-unitard");
  const makers = staging.makers.flatMap((maker) => {
    if (maker.code === "bryn") return [maker];
    return maker.code === "vesna" ? [{ ...maker, skills: { fit: 1000 } }] : [];
  });
  const alone = { ...staging, makers };
  return askable({ ...alone, ...change(alone) }, 0);
};

describe("19. Are we over budget at completion, by labour and by material?", () => {
  /**
   * Bryn takes 72, 40, 69, 15, 35, 39, 36, 20 and 20 min / 0.85, each rounded up to a minute of the clock: 85 + 48 + 82 + 18 + 42 + 46 + 43 + 24 + 24 = 412 min
   * x 16.50 / 60 = 113.30. Vesna fits for 30 + 15 = 45 min x 22.00 / 60 = 16.50. In all 129.80.
   */
  it("labour of the unitard is 129.80", async () => {
    const { labour, overtime, makers } = budgetAtCompletion((await unitard()).plan);
    expect(makers.map(({ maker, minutes, cost }) => [maker, minutes, cost])).toEqual([
      ["vesna", 45, 1650],
      ["bryn", 412, 11_330],
    ]);
    expect([labour, overtime]).toEqual([12_980, 0]);
  });

  /** One pack each: lining 27.50, elastane cloth 31.00, elastic 8.00, thread 5.25, five zips 9.00. */
  it("its materials are 80.75, so it comes to 210.55", async () => {
    const asked = await unitard();
    expect(budgetAtCompletion(asked.plan)).toMatchObject({ materials: 8075, garments: 0, total: 21_055, over: 21_055 - 2_400_000 });
  });

  it("within 24,000, over 200, and neither when no budget is set", async () => {
    const budget = (amount: number | null) => unitard(({ production }) => ({ production: { ...production, budget: amount } }));
    const says = async (amount: number | null) => (await ask(19, await budget(amount))).says[1];
    expect(await says(2_400_000)).toBe("Within the budget of £24,000.00, with £23,789.45 left.");
    expect(await says(20_000)).toBe("Over the budget of £200.00 by £10.55.");
    expect(await says(null)).toMatch(/^No budget is set/);
  });

  /** Harbour Nets 116 + 147 + 36; Fold & Selvedge 62.50 + 27.50 + 31 + 118.40 + 129 + 19; tights for two, 27.00 each. */
  it("of the whole staging: by supplier, and two prices of tights", async () => {
    const { suppliers, garments, labour, materials, total } = budgetAtCompletion((await askable(await small(), 0)).plan);
    expect(suppliers.find(({ supplier }) => supplier === "Harbour Nets")).toEqual({ supplier: "Harbour Nets", lines: 3, cost: 29_900 });
    expect(suppliers.find(({ supplier }) => supplier === "Fold & Selvedge")).toEqual({
      supplier: "Fold & Selvedge",
      lines: 6,
      cost: 38_740,
    });
    expect(garments).toBe(5400);
    expect(total).toBe(labour + materials + garments);
  });
});
