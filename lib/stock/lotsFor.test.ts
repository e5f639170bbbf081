import { describe, expect, it } from "vitest";
import { lotOf, net } from "#lib/purchasing/goods.fixture";
import { lotsFor } from "./lotsFor";

describe("the lots of one production", () => {
  const lots = [lotOf(net, "L1", 900), lotOf(net, "L2", 500)];

  it("are less by what others hold, and whole in what it holds itself", () => {
    const held = [
      { lot: "L1", production: "LM", quantity: 300 },
      { lot: "L1", production: "OT", quantity: 400 },
      { lot: "L2", production: "OT", quantity: 600 },
    ];
    expect(lotsFor(lots, held, "LM").map(({ quantity }) => quantity)).toEqual([500, 0]);
    expect(lotsFor(lots, held, "OT").map(({ quantity }) => quantity)).toEqual([600, 500]);
  });

  it("are as they lie when nothing is held", () => {
    expect(lotsFor(lots, [], "LM")).toBe(lots);
  });
});
