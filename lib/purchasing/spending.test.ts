import { describe, expect, it } from "vitest";
import type { Order, OrderLine } from "./order";
import { awaitedOf, costOf, receivedOf, spendingOf } from "./spending";

const line: OrderLine = {
  ...{ line: 1, material: "NET", name: "Net", colour: "", measure: "length", pack: 100, packs: 5, pricePerPack: 9000, promised: null },
  ...{ oneLotSet: null, inspectionDays: 0, neededBy: null, arithmetic: "", garments: [], receipts: [], returns: [], corrections: [] },
};
const came = (quantity: number, charged: number | null = null): OrderLine["receipts"][number] => ({
  ...{ day: "2027-02-01" as OrderLine["promised"] & string, quantity, charged, dyeLot: "", lot: "O1-1a", location: "" },
});
const order: Order = {
  ...{ number: "1", supplier: "Ghyll", production: "RM", currency: "GBP", state: "placed", approvedOn: null, placedOn: null },
  ...{ freight: 1500, note: "", lines: [line] },
};
const kindOf = () => "net" as const;

describe("the money of an order", () => {
  it("is its price before it is placed, and what came and is to come afterwards", () => {
    expect(costOf({ ...order, state: "draft" })).toBe(5 * 9000 + 1500);
    expect(costOf(order)).toBe(5 * 9000 + 1500);
    expect(costOf({ ...order, state: "cancelled" })).toBe(0);
    const short = { ...line, receipts: [came(300)] };
    expect(costOf({ ...order, state: "closed", lines: [short] })).toBe(3 * 9000 + 1500);
  });

  it("counts what was charged instead of the price, and takes off what was given back", () => {
    const back = { day: came(0).day, quantity: 100, lot: "O1-1a", why: "A hole.", credit: 9000 };
    expect(receivedOf({ ...line, receipts: [came(150), came(100, 8000)], returns: [back] })).toBe(13_500 + 8000 - 9000);
  });

  it("awaits nothing more when more came than was ordered", () => {
    expect(awaitedOf(order, { ...line, receipts: [came(600)] })).toBe(0);
  });
});

describe("spending by category", () => {
  const received = { ...line, receipts: [came(200)] };
  const toBuy = { lines: [{ material: "NET", cost: 4000 }], carriage: 300, garments: 7000 };
  const rows = spendingOf([{ ...order, lines: [received] }], toBuy, kindOf, new Map([["dye", 500]]));

  it("adds up to the forecast: received, committed, yet to buy", () => {
    expect(rows).toEqual([
      { category: "net", budget: null, received: 18_000, committed: 27_000, toBuy: 4000, forecast: 49_000 },
      { category: "garments", budget: null, received: 0, committed: 0, toBuy: 7000, forecast: 7000 },
      { category: "carriage", budget: null, received: 1500, committed: 0, toBuy: 300, forecast: 1800 },
      { category: "dye", budget: 500, received: 0, committed: 0, toBuy: 0, forecast: 0 },
    ]);
  });

  it("leaves out what is not placed: the purchase list still has it", () => {
    const nothing = { lines: [], carriage: 0, garments: 0 };
    expect(spendingOf([{ ...order, state: "approved" }], nothing, kindOf, new Map())).toEqual([]);
  });
});
