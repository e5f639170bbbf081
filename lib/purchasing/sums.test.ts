import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkCutting } from "#lib/cutting/checkCutting";
import type { Material } from "#lib/materials/material";
import { bone, centimetres, hooks, lotOf, needOf, net, offerOf, piecesNeed, production, worksOf, yards } from "./goods.fixture";
import { cheapestOrder } from "./packs";
import { purchaseList } from "./purchaseList";

const materials: readonly Material[] = [
  { ...net, spare: 100, shrinkage: 30 },
  { ...bone, spare: 20 },
  { ...hooks, spare: 50 },
];
const offers = [
  offerOf(net, yards(50), 9600),
  offerOf(net, yards(1), 260, { supplier: "Ordwin" }),
  offerOf(bone, centimetres(1000), 1140),
  offerOf(hooks, 100, 420, { minimumPacks: 2 }),
];
const set = fc.constantFrom(null, "HERONS", "REEDS");
const need = fc
  .tuple(
    fc.integer({ min: 1, max: 30 }),
    fc.integer({ min: 0, max: 2 }),
    fc.integer({ min: 1, max: 900 }),
    fc.integer({ min: 1, max: 12 }),
    set,
  )
  .map(([garment, which, size, count, oneLotSet]) => {
    const name = `LM ${String(garment).padStart(3, "0")}`;
    const material = materials[which]!;
    return which === 2 ? needOf(name, material, size, { oneLotSet }) : piecesNeed(name, material, centimetres(size), count, { oneLotSet });
  });
const needs = fc.array(need, { maxLength: 25 });
const lots = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 5000 })), { maxLength: 6 })
  .map((many) => many.map(([which, size], at) => lotOf(materials[which]!, `L${at}`, which === 2 ? size : centimetres(size))));

describe("purchase sums", () => {
  it("every need is a reason once, and reasons add up to gross, gross to shelf and order", () => {
    fc.assert(
      fc.property(needs, lots, (many, shelf) => {
        const { purchase, cutting } = purchaseList({ materials, offers, lots: shelf, production }, worksOf(many), () => null);
        const groups = [...purchase.lines, ...purchase.covered];
        const reasons = [...groups, ...purchase.unoffered].flatMap((group) => group.reasons);
        expect(reasons.length).toBe(many.length);
        for (const group of groups) expect(group.reasons.reduce((sum, reason) => sum + reason.quantity, 0)).toBe(group.gross);
        for (const line of purchase.lines) {
          const fromShelf = line.fromShelf.reduce((sum, lot) => sum + lot.quantity, 0);
          expect(line.toBuy).toBe(line.gross + line.shrinkage + line.spare - fromShelf);
          expect(line.packs * line.pack).toBeGreaterThanOrEqual(line.toBuy);
          expect(
            Math.min(line.toBuy, line.shrinkage, line.spare, line.cost, ...line.fromShelf.map((lot) => lot.quantity)),
          ).toBeGreaterThanOrEqual(0);
        }
        expect(purchase.lines.reduce((sum, line) => sum + line.cost, 0)).toBe(purchase.materials);
        for (const { code, quantity } of shelf) {
          const taken = groups.flatMap((group) => group.fromShelf).filter((lot) => lot.lot === code);
          expect(taken.reduce((sum, lot) => sum + lot.quantity, 0)).toBeLessThanOrEqual(quantity);
        }
        // All pieces of a material lie in its cutting plans, each once.
        for (const material of materials.slice(0, 2)) {
          const plans = cutting.filter((plan) => plan.material === material.code);
          const laid = plans.flatMap((plan) => plan.patterns.flatMap((pattern) => pattern.pieces)).length;
          const sold = purchase.unoffered.some((one) => one.material === material.code);
          if (!sold)
            expect(laid).toBe(many.filter((one) => one.material === material.code).reduce((sum, one) => sum + one.cuts[0]!.count, 0));
        }
      }),
    );
  });

  it("the figures of a line's arithmetic add up as they stand", () => {
    const figures = (text: string) => [...text.matchAll(/([+−] )?(?:(\d+) × )?(\d+(?:\.\d+)?)(?! ×|%|\d)/g)];
    const added = (text: string) =>
      figures(text.replace(/\d+(\.\d+)?%|lot L\d/g, "")).reduce(
        (sum, [, sign, times, figure]) => sum + (sign === "− " ? -1 : 1) * Number(times ?? 1) * Math.round(100 * Number(figure)),
        0,
      );
    fc.assert(
      fc.property(needs, lots, (many, shelf) => {
        const { purchase } = purchaseList({ materials, offers, lots: shelf, production }, worksOf(many), () => null);
        for (const line of purchase.lines) {
          const sides = line.arithmetic.split(";")[0]!.split(" = ");
          const gross = line.reasons.length > 1 ? sides.shift()! : sides[0]!.split(" + ")[0]!;
          expect(added(gross)).toBe(added(sides[0]!.split(/ [+−] /)[0]!));
          if (sides.length > 1) expect(added(sides[0]!)).toBe(added(sides[1]!));
        }
      }),
    );
  });

  it("cutting plans without a shelf pass the independent check", () => {
    fc.assert(
      fc.property(needs, (many) => {
        const { cutting } = purchaseList({ materials, offers, lots: [], production }, worksOf(many), () => null);
        for (const plan of cutting) {
          const own = many.filter((one) => one.material === plan.material);
          expect(checkCutting(plan, own, materials.find((material) => material.code === plan.material)!.cuttable)).toEqual([]);
        }
      }),
    );
  });

  it("a greater need never takes fewer packs or less money", () => {
    const steps = fc.array(fc.tuple(fc.integer({ min: 2, max: 40 }), fc.integer({ min: 1, max: 999 })), { maxLength: 4 });
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 60 }), (many, minimumPacks, least) => {
        const breaks = [...new Map(many)].sort((a, b) => a[0] - b[0]).map(([from, price]) => ({ from, price }));
        const offer = offerOf(hooks, 100, 500, { minimumPacks, prices: [{ from: 1, price: 500 }, ...breaks] });
        const one = cheapestOrder(offer, least);
        const more = cheapestOrder(offer, least + 1);
        expect(more.packs).toBeGreaterThanOrEqual(one.packs);
        expect(more.cost).toBeGreaterThanOrEqual(one.cost);
        expect(one.packs).toBeGreaterThanOrEqual(least);
      }),
    );
  });
});
