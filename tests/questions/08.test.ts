import { describe, expect, it } from "vitest";
import { netToBuy } from "#lib/questions/netToBuy";
import { LENGTH_PER_YARD } from "#lib/units/quantities";
import { ask, askable, only, small } from "./asked";

const yards = (length: number) => Math.round((length * 100) / LENGTH_PER_YARD) / 100;

describe("8. How much net must I buy in one lot, by colour and width, with spares?", () => {
  /**
   * Stiff, 54 in: twice 15.22 yd off the roll (seed/README.md) = 30.43, and a tenth: 33.48, two packs of 20 yd at 58.00.
   * Soft, 60 in: 17.40 + 15.64 + 17.90 = 50.94, and a tenth: 56.03, three packs of 25 yd at 49.00.
   */
  it("33.48 yd of stiff net for the Larks, 56.03 yd of soft net for the Snowflakes", async () => {
    const asked = await askable(await small(), 0);
    expect(netToBuy(asked.plan).map((one) => [one.name, one.colour, one.oneLotSet, yards(one.toBuy), one.packs, one.cost])).toEqual([
      ["Soft net", "white", "flakes", 56.03, 3, 14_700],
      ["Stiff net", "white", "larks", 33.48, 2, 11_600],
    ]);
    expect((await ask(8, asked)).says[1]).toBe(
      "Stiff net, white, 54 in wide: 33.48 yd, of which 3.04 yd spare; 2 packs of 20 yd, £116.00, from Harbour Nets, in one dye lot for larks.",
    );
  });

  it("with spares of a third, 30.43 + 10.14 = 40.58 yd: a third pack", async () => {
    const materials = (await small()).materials.map((one) => (one.kind === "net" ? { ...one, spare: 333 } : one));
    const [stiff] = netToBuy((await askable({ ...(await only("lark-tutu")), materials }, 0)).plan);
    expect([yards(stiff!.toBuy), stiff!.packs]).toEqual([40.57, 3]);
  });

  it("none when two bolts of 20 yd of one dye lot lie on the shelf", async () => {
    const lot = {
      code: "N-1",
      material: "net-stiff-white",
      dyeLot: "7",
      quantity: 40 * LENGTH_PER_YARD,
      location: "",
      breadth: null,
      arrives: null,
    };
    const asked = await askable({ ...(await only("lark-tutu")), lots: [lot] }, 0);
    expect(netToBuy(asked.plan)).toEqual([]);
    expect((await ask(8, asked)).says).toEqual([
      "No net is to be bought.",
      "Stiff net: 30.43 yd are on the shelf or on order; nothing is bought.",
    ]);
  });
});
