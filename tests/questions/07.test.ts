import { beforeAll, describe, expect, it } from "vitest";
import type { Asked } from "#lib/questions/answer";
import { goodsWaiting } from "#lib/questions/goodsWaiting";
import { ask, askable, small, TODAY } from "./asked";

let asked: Asked;
beforeAll(async () => {
  asked = await askable(await small(), 0);
});
const goods = ({ plan }: Asked, material: string) => goodsWaiting(plan, TODAY, null).find((one) => one.material === material);

describe("7. What is waiting on cloth, dye or net, and by when was it promised?", () => {
  /** 29 materials less the flat bones, 36 in of which lie in drawer 4, and the paint-free ... what is bought: 27 lines; 10 garments, as the tights come whole. */
  it("27 materials, on which every garment but the two of tights waits", () => {
    const all = goodsWaiting(asked.plan, TODAY, null);
    expect(all.length).toBe(27);
    expect(new Set(all.flatMap(({ garments }) => garments)).size).toBe(10);
    expect(all.every(({ from, promised }) => from === "to order" && promised === null)).toBe(true);
  });

  /** Ordered on 11 Jan, 7 days on the way and one of airing: 19 Jan. Order by: first cut, less eight days. */
  it("the stiff net, which nobody has promised, may be cut on Tue 19 Jan if it is ordered today", () => {
    const net = goods(asked, "net-stiff-white")!;
    expect([net.ready, net.garments]).toEqual(["2027-01-19", ["WL 001", "WL 002"]]);
    expect(new Date(net.neededBy!).getTime() - new Date(net.orderBy!).getTime()).toBe(8 * 24 * 3600 * 1000);
  });

  it("nothing waits for what is on the shelf: the flat bones", () => {
    expect(goods(asked, "flat-bone")).toBeUndefined();
  });

  /** A roll promised for 25 Jan is aired for a day. */
  it("once a roll of it is on order, it was promised for 25 Jan and may be cut on the 26th", async () => {
    const lot = {
      code: "N-1",
      material: "net-stiff-white",
      dyeLot: "7",
      quantity: 50 * 36 * 2032,
      location: "",
      breadth: null,
      arrives: "2027-01-25" as typeof TODAY,
    };
    const ordered = await askable(await small(({ lots }) => ({ lots: [...lots, lot] })), 0);
    expect(goods(ordered, "net-stiff-white")).toMatchObject({
      from: "on order",
      promised: "2027-01-25",
      ready: "2027-01-26",
      orderBy: null,
    });
    expect((await ask(7, ordered, { kind: "net" })).says[1]).toBe("On order: Stiff net (promised Mon 25 Jan).");
  });

  it("a net that nobody sells can never be cut, and is said to be so", async () => {
    const unsold = await askable(
      await small(({ offers }) => ({ offers: offers.filter(({ material }) => material !== "net-soft-white") })),
      0,
    );
    expect(goods(unsold, "net-soft-white")).toMatchObject({ from: "nowhere", ready: null });
    expect((await ask(7, unsold)).says.join(" ")).toContain("Cannot be had as things stand: Soft net.");
  });
});
