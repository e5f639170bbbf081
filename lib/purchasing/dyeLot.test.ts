import { describe, expect, it } from "vitest";
import type { Lot } from "#lib/materials/material";
import { lotOf, needOf, net, offerOf, production, worksOf, yards } from "./goods.fixture";
import { purchaseList } from "./purchaseList";

const herons = ["LM 52", "LM 53", "LM 54"].map((garment) => needOf(garment, net, yards(10), { oneLotSet: "HERONS" }));
const bought = (lots: readonly Lot[], more = herons) =>
  purchaseList({ materials: [net], offers: [offerOf(net, yards(50), 9600)], lots, production }, worksOf(more), () => null).purchase;

describe("one dye lot for a set", () => {
  it("takes a lot that covers the set whole", () => {
    expect(bought([lotOf(net, "3311", yards(30))])).toMatchObject({
      lines: [],
      covered: [{ fromShelf: [{ lot: "3311", quantity: yards(30) }] }],
    });
  });

  it("takes two bolts of one dye lot together", () => {
    const lots = [lotOf(net, "A", yards(20), { dyeLot: "3311" }), lotOf(net, "B", yards(10), { dyeLot: "3311" })];
    expect(bought(lots).lines).toEqual([]);
  });

  it("leaves a lot that does not, and says who would differ", () => {
    const line = bought([lotOf(net, "3311", yards(19.6))]).lines[0]!;
    expect(line.fromShelf).toEqual([]);
    expect(line.toBuy).toBe(yards(30));
    expect(line.warnings).toEqual([
      "Dye lot 3311 is not used: it holds 19.6 yd of the 30 yd that HERONS needs in one dye lot; LM 53, LM 54 would differ.",
    ]);
  });

  it("keeps the lot it leaves for garments that need not match", () => {
    const purchase = bought([lotOf(net, "3311", yards(19.6))], [...herons, needOf("LM 60", net, yards(15))]);
    expect(purchase.covered).toMatchObject([{ oneLotSet: null, fromShelf: [{ lot: "3311", quantity: yards(15) }] }]);
    expect(purchase.lines).toMatchObject([{ oneLotSet: "HERONS", toBuy: yards(30) }]);
  });

  it("lets sets share the ends of packs, since one order is asked from one dye lot", () => {
    const reeds = ["LM 70", "LM 71"].map((garment) => needOf(garment, net, yards(10), { oneLotSet: "REEDS" }));
    const [line, ...others] = bought([], [...herons, ...reeds]).lines;
    expect(others).toEqual([]);
    expect(line).toMatchObject({ packs: 1, oneLotSet: "HERONS, REEDS", warnings: [] });
  });

  it("is bought with what the set keeps for repair, in one order and so one dye lot", () => {
    const staging = { materials: [{ ...net, spare: 100 }], offers: [offerOf(net, yards(50), 9600)], lots: [], production };
    const sets = [{ code: "HERONS", repair: 250 }] as never;
    const line = purchaseList({ ...staging, sets }, worksOf(herons), () => null).purchase.lines[0]!;
    // A tenth of 30 yd for waste, a quarter for repair.
    expect(line).toMatchObject({ spare: yards(10.5), repair: yards(7.5), toBuy: yards(40.5), packs: 1 });
    expect(line.arithmetic).toBe(
      "3 × 10 = 30 yd + 3 for 10% waste and spare + 7.5 kept of HERONS for repair = 40.5 yd to buy; 1 × 50 yd at £96.00 = £96.00",
    );
  });
});
