import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { CutAnswer, FoundCuts } from "#lib/cutting/question";
import type { Lot, Material, Offer } from "#lib/materials/material";
import { bone, centimetres, hooks, inches, lotOf, needOf, net, offerOf, piecesNeed, production, worksOf, yards } from "./goods.fixture";
import { purchaseList } from "./purchaseList";

const list = (materials: Material[], offers: Offer[], lots: Lot[], needs: Need[], day: string | null = "2027-03-16") =>
  purchaseList({ materials, offers, lots, production }, worksOf(needs), () => day as PlainDate | null);

describe("purchase list", () => {
  it("adds up one material over garments, with washing, spare and the shelf, and says so", () => {
    const material = { ...net, spare: 100, shrinkage: 200 };
    const needs = [needOf("LM 1", material, yards(8)), needOf("LM 2", material, yards(8)), needOf("LM 3", material, yards(4))];
    const { purchase } = list([material], [offerOf(material, yards(1), 260)], [lotOf(material, "L1", yards(12))], needs);
    expect(purchase.lines).toHaveLength(1);
    const line = purchase.lines[0]!;
    // 20 yd net are 25 yd before washing and 27.5 yd with a tenth spare; LM 1 alone takes 11 yd of the lot.
    expect([line.gross, line.shrinkage, line.spare, line.toBuy]).toEqual([yards(20), yards(5), yards(2.5), yards(16.5)]);
    expect(line.fromShelf).toEqual([{ lot: "L1", quantity: yards(11) }]);
    expect(line.packs).toBe(17);
    expect(purchase.total).toBe(17 * 260);
    expect(line.arithmetic).toBe(
      "2 × 8 + 4 = 20 yd + 5 for 20% lost in washing + 2.5 for 10% waste and spare − 11 from lot L1 = 16.5 yd to buy; 17 × 1 yd at £2.60 = £44.20",
    );
    expect(line.reasons.map((reason) => reason.garment)).toEqual(["LM 1", "LM 2", "LM 3"]);
  });

  it("orders in time for the first day it is cut, less lead time and inspection", () => {
    const { purchase } = list([net], [offerOf(net, yards(50), 9600)], [], [needOf("LM 1", net, yards(8))]);
    expect(purchase.lines[0]).toMatchObject({ neededBy: "2027-03-16", orderBy: "2027-03-07" });
    const undated = list([net], [offerOf(net, yards(50), 9600)], [], [needOf("LM 1", net, yards(8))], null);
    expect(undated.purchase.lines[0]).toMatchObject({ neededBy: null, orderBy: null });
  });

  it("buys up to a better price when that costs less in all", () => {
    const offer = offerOf(net, yards(50), 10400, {
      prices: [
        { from: 1, price: 10400 },
        { from: 5, price: 8000 },
      ],
    });
    const { purchase } = list(
      [net],
      [offer],
      [],
      [needOf("LM 1", net, yards(40)), needOf("LM 2", net, yards(150), { oneLotSet: "HERONS" })],
    );
    // Four bolts at £104 are £416; five at £80 are £400. What a set must match and what it need not are one order.
    const [line] = purchase.lines;
    expect(line).toMatchObject({ oneLotSet: "HERONS", packs: 5, cost: 40000, gross: yards(190) });
    expect(line!.arithmetic).toBe("150 + 40 = 190 yd; 5 × 50 yd at £80.00 = £400.00, less than 4 at their price");
    expect(line!.warnings).toEqual(["Ask for one dye lot: HERONS must match."]);
    expect(purchase.total).toBe(40000);
  });

  it("takes the cheapest supplier for the quantity, the first by name of equal ones, and a minimum where there is one", () => {
    const need = [needOf("LM 1", hooks, 30)];
    const offers = [
      offerOf(hooks, 100, 420, { supplier: "Wick" }),
      offerOf(hooks, 10, 140, { supplier: "Hartle" }),
      offerOf(hooks, 10, 100, { supplier: "Ordwin", minimumPacks: 5 }),
      offerOf(hooks, 10, 140, { supplier: "Ashby" }),
    ];
    expect(list([hooks], offers, [], need).purchase.lines[0]).toMatchObject({ supplier: "Ashby", packs: 3, cost: 420 });
    const [least] = list([hooks], offers.slice(2, 3), [], need).purchase.lines;
    expect(least).toMatchObject({ packs: 5, cost: 500, arithmetic: "30; 5 × 10 at £1.00 = £5.00, the least Ordwin sells" });
  });

  it("cuts bones from coils, so that the packs come from the cutting plan", () => {
    // Three 40 cm bones leave 20 cm of a 1 m coil twice: 1.2 m would be two coils by length, and two it takes; four bones take two, five three.
    const offer = offerOf(bone, centimetres(100), 500);
    const bought = (count: number, found?: FoundCuts) =>
      purchaseList(
        { materials: [bone], offers: [offer], lots: [], production },
        worksOf([piecesNeed("LM 1", bone, centimetres(40), count)]),
        () => null,
        { found },
      );
    const packs = (count: number) => {
      const { purchase, cutting } = bought(count);
      return [purchase.lines[0]!.packs, cutting[0]!.count, cutting[0]!.bound];
    };
    expect([packs(3), packs(4), packs(5)]).toEqual([
      [2, 2, 2],
      [2, 2, 2],
      [3, 3, 2],
    ]);
    const [line] = bought(5).purchase.lines;
    expect(line).toMatchObject({ cut: { stocks: 3, bound: 2, proved: false } });
    expect(line!.arithmetic).toContain("since the pieces as laid out open 3, at least 2");
    // A search proves what no rule can: two pieces a coil.
    const proof = (): CutAnswer => ({ kind: "stocks", used: 3, bound: 3, patterns: [] });
    expect(bought(5, proof).purchase.lines[0]!.arithmetic).toContain("open 3, and no plan opens fewer");
  });

  it("says when a bone is longer than any pack, and when nobody sells a thing or nobody has listed it", () => {
    const { purchase } = list(
      [bone, hooks],
      [offerOf(bone, centimetres(30), 500)],
      [],
      [piecesNeed("LM 1", bone, centimetres(40), 2), needOf("LM 1", hooks, 12), needOf("LM 1", net, yards(1))],
    );
    expect(purchase.lines).toEqual([]);
    expect(purchase.unoffered.map(({ material, toBuy, why }) => [material, toBuy, why])).toEqual([
      ["NET", yards(1), "NET is not among the materials."],
      ["BONE", centimetres(80), "No pack of Spiral steel is long enough for its longest piece."],
      ["HOOK", 12, "Nobody offers Hooks."],
    ]);
  });

  it("splits counted things between the shelf and the order, never one garment's length", () => {
    const counted = list(
      [hooks],
      [offerOf(hooks, 10, 100)],
      [lotOf(hooks, "H", 25)],
      [needOf("LM 1", hooks, 20), needOf("LM 2", hooks, 20)],
    );
    expect(counted.purchase.lines[0]).toMatchObject({ toBuy: 15, packs: 2, fromShelf: [{ lot: "H", quantity: 25 }] });
    const cloth = list(
      [net],
      [offerOf(net, yards(1), 100)],
      [lotOf(net, "N", yards(5))],
      [needOf("LM 1", net, yards(4)), needOf("LM 2", net, yards(4))],
    );
    expect(cloth.purchase.lines[0]).toMatchObject({ toBuy: yards(4), fromShelf: [{ lot: "N", quantity: yards(4) }] });
  });

  it("lists what the shelf covers whole, with nothing to buy", () => {
    const { purchase, cutting } = list([net], [], [lotOf(net, "N", yards(5))], [needOf("LM 1", net, yards(4))]);
    expect(purchase.lines).toEqual([]);
    expect(purchase.covered).toMatchObject([{ material: "NET", gross: yards(4), fromShelf: [{ lot: "N", quantity: yards(4) }] }]);
    expect(cutting).toMatchObject([{ lot: "N", used: yards(4), count: 1 }]);
  });

  it("takes a lot of soft goods as one length, however long a pack is", () => {
    const bolts = offerOf(net, yards(20), 5800);
    // Four skirts of 23 yd are 92 of 95 yd; no bolt of 20 yd would hold one.
    const needs = ["LM 1", "LM 2", "LM 3", "LM 4"].map((garment) => needOf(garment, net, yards(23)));
    const { purchase, cutting } = list([net], [bolts], [lotOf(net, "N", yards(95))], needs);
    expect(purchase.lines).toEqual([]);
    expect(cutting).toMatchObject([{ lot: "N", stock: yards(95), count: 1, used: yards(92), patterns: [{ offcut: yards(3) }] }]);
  });

  it("does not take rods together for a length that each is too short for", () => {
    const rods = offerOf(bone, inches(36), 90);
    const needs = ["LM 1", "LM 2"].map((garment) => piecesNeed(garment, bone, inches(20), 1));
    const { purchase } = list([bone], [rods], [lotOf(bone, "R", inches(36))], needs);
    expect(purchase.lines[0]).toMatchObject({ packs: 1, fromShelf: [{ lot: "R", quantity: inches(20) }] });
  });
});
