import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import { checkCutting } from "./checkCutting";
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
const cloth: Goods = { material: "NET", set: null, lot: null, cuttable: 54, stock: 100 };
const rods: Goods = { ...cloth, cuttable: null };
const planOf = (one: Need, goods: Goods) => layOut(piecesOf(one, goods.cuttable, goods.stock), goods);

describe("cutting plans", () => {
  it("pass the independent check, on the roll, in bolts and from rods", () => {
    fc.assert(
      fc.property(cuts, fc.constantFrom(cloth, { ...cloth, stock: null }, rods), (some, goods) => {
        const own = { ...need, cuts: goods.cuttable === null ? some.map((cut) => ({ ...cut, breadth: null })) : some };
        const plan = planOf(own, goods)!;
        expect(checkCutting(plan, [own], goods.cuttable)).toEqual([]);
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

  it("finds a piece left out, and one too many", () => {
    expect(checkCutting(plan, [{ ...own, cuts: [{ ...own.cuts[0]!, count: 5 }] }], 54)).toEqual(["LM 1, panel, 36: 1 too few."]);
    expect(checkCutting(plan, [{ ...own, cuts: [{ ...own.cuts[0]!, count: 3 }] }], 54)).toEqual(["LM 1, panel, 36: -1 too few."]);
  });

  it("finds a row broader than the cloth, a stock too short and false figures", () => {
    expect(checkCutting(plan, [own], 53)).toEqual(["A row is broader than the 53 of the cloth."]);
    expect(checkCutting({ ...plan, stock: 60, waste: -12 }, [own], 54)).toEqual([
      "Pieces of 72 and an offcut of 28 are not a stock of 60.",
    ]);
    expect(checkCutting({ ...plan, used: 70 }, [own], 54)).toEqual(["72 is used, 70 is told."]);
    expect(checkCutting({ ...plan, waste: 0 }, [own], 54)).toEqual(["The waste is not 0."]);
    expect(checkCutting({ ...plan, bound: 2 }, [own], 54)).toEqual(["The bound 2 is above the 1 used."]);
    expect(checkCutting({ ...plan, patterns: [pattern!, { ...pattern!, pieces: [] }] }, [own], 54)).toContain(
      "2 stocks are cut, 1 are told.",
    );
  });
});
