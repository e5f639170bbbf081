import { beforeAll, describe, expect, it } from "vitest";
import type { Asked } from "#lib/questions/answer";
import { hoursLeft } from "#lib/questions/hoursLeft";
import { ask, askable, small, TODAY } from "./asked";

let asked: Asked;
beforeAll(async () => {
  asked = await askable(await small());
});

/**
 * Seven weeks begin before the parade, Fri 26 Feb 10:00. Delia keeps 18 h of each 40 h for the repertoire, the last ones, so she has Mon, Tue and 6 h of Wed:
 * 7 x 22 h x 85% = 130 h 54, all of it net at 100%. Vesna alike at 80%: 123 h 12, at 60% in net 73 h 55. Bryn keeps 16 h: 7 x 24 h x 85% = 142 h 48, at 60%
 * 85 h 41. Kit as Bryn, but her dentist on Fri 19 Feb moves the 16 h kept back four hours forward: 164 h x 85% = 139 h 24, at 60% 83 h 38.
 */
const LEFT = [
  ["vesna", 123 * 60 + 12, 73 * 60 + 55],
  ["kit", 139 * 60 + 24, 83 * 60 + 38],
  ["delia", 130 * 60 + 54, 130 * 60 + 54],
  ["bryn", 142 * 60 + 48, 85 * 60 + 41],
];

describe("5. How many tutu-maker hours are left before parade, and how many are needed?", () => {
  it("left: 374 h 08 of net if those who have it did nothing else", () => {
    expect(hoursLeft(asked.plan, TODAY, "net", null).makers.map(({ maker, left, worth }) => [maker, left, worth])).toEqual(LEFT);
  });

  /**
   * The Larks, as two batches and alone: 439 + 907 + 442 (cut-net, gather, tack) + 479 + 132 + 419 + 126 (mount, close) = 2944. The first Snowflake:
   * 165 + 150 + 103 + 108 + 60 + 90 = 676. The other two: 282 + 268 + 174 together, 94 + 57 + 90 and 91 + 56 + 90 apart = 1202. In all 4822 min = 80 h 22.
   */
  it("needed: 80 h 22", async () => {
    expect(hoursLeft(asked.plan, TODAY, "net", "parade").needed).toBe(4822);
    const { says } = await ask(5, asked, { skill: "net", before: "parade" });
    expect(says[0]).toBe("Net and tutu: 80 h 22 are needed before Dress parade, Fri 26 Feb 10:00.");
    expect(says[1]).toBe("4 makers with the skill would have 374 h 08 of it left if they did nothing else.");
  });

  it("a fortnight later, two weeks less of them are left: Delia 5 x 22 h x 85% = 93 h 30", () => {
    const later = hoursLeft(asked.plan, "2027-01-25" as typeof TODAY, "net", null);
    expect(later.makers.find(({ maker }) => maker === "delia")!.left).toBe(93 * 60 + 30);
  });

  it("nothing is needed before a day on which nothing is due", () => {
    expect(hoursLeft(asked.plan, TODAY, "net", "first").needed).toBe(0);
  });

  it("what the plan gives to net and to other work is never more than is left", () => {
    for (const { planned, other, left } of hoursLeft(asked.plan, TODAY, "net", null).makers)
      expect(planned + other).toBeLessThanOrEqual(left);
  });
});
