import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { keptOf, type Order, type OrderLine, openOf, orderedOf, shownState } from "./order";

const day = "2027-02-08" as PlainDate;
const came = (quantity: number) => ({ day, quantity, dyeLot: "77", lot: "L-9", location: "", charged: null });
const line = (receipts: readonly number[], returned = 0): OrderLine => ({
  ...{ line: 1, material: "NET", name: "Net", colour: "", measure: "length", pack: 20, packs: 5, pricePerPack: 100, promised: null },
  ...{ oneLotSet: null, inspectionDays: 0, neededBy: null, arithmetic: "", garments: [], corrections: [] },
  receipts: receipts.map(came),
  returns: returned > 0 ? [{ day, quantity: returned, lot: "L-9", why: "torn", credit: 0 }] : [],
});
const order = (state: Order["state"], ...lines: readonly OrderLine[]) => ({ state, lines }) as Order;

describe("an order", () => {
  it("is part received as soon as something came, and received when nothing is open", () => {
    expect(shownState(order("placed", line([])))).toBe("placed");
    expect(shownState(order("placed", line([100]), line([])))).toBe("part received");
    expect(shownState(order("placed", line([40, 60]), line([120])))).toBe("received");
    expect(shownState(order("closed", line([40])))).toBe("closed");
    expect(shownState(order("draft", line([])))).toBe("draft");
  });

  it("asks for no more when more came, nor again for what was sent back", () => {
    expect([orderedOf(line([])), openOf(line([])), openOf(line([40])), openOf(line([120])), openOf(line([100], 30))]).toEqual([
      100, 100, 60, 0, 0,
    ]);
    expect(keptOf(line([60, 40], 30))).toBe(70);
  });
});
