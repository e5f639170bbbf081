import { describe, expect, it } from "vitest";
import { lessDecoration, SECOND_PASS } from "#lib/questions/lessDecoration";
import { ask, askable, only } from "./asked";

describe("10. What does dropping the second decoration pass save?", () => {
  /**
   * A Lark: 1000 stones x 18 s glued and 50 x 90 s sewn, 375 min; the second of the set takes 90%, 1026 with them and 689 (688.5) without: 337 less.
   * The headpiece loses its gluing whole: 30 + 150 x 18 s = 75 min. In all 375 + 337 + 75 = 787 min, hand work.
   * Stones: 2 x 1050 + 150 = 2250, and 5%: 2363, five packs of 500 at 19.50, 97.50.
   */
  it("13 h 07 of hand work and 97.50 of stones", async () => {
    const asked = await askable(await only("lark-tutu", "lark-headpiece", "wind-unitard"), 0);
    const data = await lessDecoration(asked, null, SECOND_PASS);
    expect(data.pieces).toEqual([
      { piece: "lark-tutu", parameters: ["gluedStones", "sewnStones"] },
      { piece: "lark-headpiece", parameters: ["stones"] },
    ]);
    expect(data.skills).toEqual([{ skill: "hand", saves: 787 }]);
    expect(data.materials).toBe(9750);
    expect((await ask(10, asked)).says[0]).toMatch(/^13 h 07 of work, £[\d.]+ of labour and £97\.50 of materials\.$/);
  });

  /**
   * 24 motifs x 30 min = 720 of the first Lark; of the second 1026 less 0.9 x 420 = 378: 648. What is left, 420 + 378 min, now fits into one batch of two days
   * at most, which saves the second set-up, 0.9 x 45: 41.
   */
  it("23 h 29 when it is the motifs of the Larks that go", async () => {
    const asked = await askable(await only("lark-tutu"), 0);
    expect((await lessDecoration(asked, "lark-tutu", ["motifs"])).skills).toEqual([{ skill: "hand", saves: 720 + 648 + 41 }]);
  });

  it("nothing on a piece without any", async () => {
    const asked = await askable(await only("wind-unitard"), 0);
    expect((await ask(10, asked)).says).toEqual(["Nothing: no piece that is made has any of gluedStones, sewnStones, stones."]);
  });
});
