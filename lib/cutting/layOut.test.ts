import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import { checkCutting } from "./checkCutting";
import type { CutPiece } from "./cuttingPlan";
import { type Goods, layOut } from "./layOut";
import { piecesOf } from "./pieces";

const need: Need = {
  garment: "LM 1",
  role: "net",
  label: { uk: "net", us: "net" },
  material: "NET",
  measure: "length",
  quantity: 1,
  cuts: [],
  oneLotSet: null,
  operation: "cut",
  arithmetic: "",
};
const cuts = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.option(fc.integer({ min: 1, max: 130 })), fc.integer({ min: 1, max: 9 })), {
    minLength: 1,
    maxLength: 12,
  })
  .map((many) => many.map(([length, breadth, count], at) => ({ label: `piece ${at}`, length, breadth, count })));
const cloth: Goods = { material: "NET", set: null, lot: null, cuttable: 54, stock: 100, kerf: 0, keep: null, turned: false };
const rods: Goods = { ...cloth, cuttable: null };
const stuff = fc.constantFrom(cloth, { ...cloth, stock: null }, rods);
const planOf = (one: Need, goods: Goods) => layOut(piecesOf(one, goods.cuttable, goods.stock, goods.turned), goods);

describe("cutting plans", () => {
  it("pass the independent check, on the roll, in bolts and from rods", () => {
    fc.assert(
      fc.property(cuts, stuff, fc.integer({ min: 0, max: 3 }), fc.boolean(), (some, goods, kerf, turned) => {
        const own = { ...need, cuts: goods.cuttable === null ? some.map((cut) => ({ ...cut, breadth: null })) : some };
        const plan = planOf(own, { ...goods, kerf, turned, keep: 10 });
        if (plan) expect(checkCutting(plan, [own], goods.cuttable, turned)).toEqual([]);
        else expect(turned && goods.stock !== null).toBe(true);
      }),
    );
  });

  it("split a length without pieces only where it is longer than the stock", () => {
    expect(planOf({ ...need, quantity: 250 }, rods)).toMatchObject({ used: 250, count: 3, bound: 3, waste: 50 });
    expect(planOf({ ...need, quantity: 90 }, rods)).toMatchObject({ used: 90, count: 1 });
  });

  it("are none when a piece is longer than the stock", () => {
    expect(planOf({ ...need, cuts: [{ label: "bone", length: 101, breadth: null, count: 1 }] }, rods)).toBeNull();
  });
});

describe("the check of a cutting plan", () => {
  const own = { ...need, cuts: [{ label: "panel", length: 36, breadth: 27, count: 4 }] };
  const plan = planOf(own, cloth)!;
  const [pattern] = plan.patterns;
  const moved = (at: number, change: Partial<CutPiece>) => ({
    ...plan,
    patterns: [{ ...pattern!, pieces: pattern!.pieces.map((piece, index) => (index === at ? { ...piece, ...change } : piece)) }],
  });

  it("finds a piece left out, and one too many", () => {
    expect(checkCutting(plan, [{ ...own, cuts: [{ ...own.cuts[0]!, count: 5 }] }], 54)).toEqual(["LM 1, panel, 36 x 27: 1 too few."]);
    expect(checkCutting(plan, [{ ...own, cuts: [{ ...own.cuts[0]!, count: 3 }] }], 54)).toEqual(["LM 1, panel, 36 x 27: -1 too few."]);
  });

  it("finds pieces over each other, off the width, off the stock, nearer than a cut, and turned against the grain", () => {
    expect(checkCutting(moved(1, { x: 26 }), [own], 54)).toContain("LM 1 panel and LM 1 panel lie over each other, or nearer than a cut.");
    expect(checkCutting(moved(1, { x: 28 }), [own], 54)).toContain("LM 1 panel lies off the width.");
    expect(checkCutting(moved(3, { y: 65 }), [own], 54)).toContain("LM 1 panel lies off the stock.");
    expect(checkCutting({ ...plan, kerf: 1 }, [own], 54)).toContain("LM 1 panel and LM 1 panel lie over each other, or nearer than a cut.");
    expect(checkCutting(moved(0, { turned: true }), [own], 54)).toContain("A piece is turned, and the grain is fixed.");
  });

  it("finds false figures, a false proof and an off-cut that is none", () => {
    expect(checkCutting({ ...plan, used: 70 }, [own], 54)).toEqual(["72 is used, 70 is told."]);
    expect(checkCutting({ ...plan, waste: 0 }, [own], 54)).toEqual(["The waste is not 0."]);
    expect(checkCutting({ ...plan, bound: 2, proved: false }, [own], 54)).toEqual(["The bound 2 is above the 1 used."]);
    expect(checkCutting({ ...plan, proved: false }, [own], 54)).toEqual(["It is proved, and not told so."]);
    expect(checkCutting({ ...plan, patterns: [{ ...pattern!, offcut: 27 }] }, [own], 54)).toEqual(["28 is left of a stock, 27 is told."]);
    const rest = { x: 0, y: 70, length: 30, breadth: null, kept: false };
    expect(checkCutting({ ...plan, patterns: [{ ...pattern!, offcuts: [rest] }] }, [own], 54)).toEqual(["A piece lies on an off-cut."]);
    expect(checkCutting({ ...plan, patterns: [pattern!, { ...pattern!, pieces: [], offcuts: [], offcut: 99 }] }, [own], 54)).toContain(
      "2 stocks are cut, 1 are told.",
    );
  });
});
