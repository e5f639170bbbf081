import { beforeAll, describe, expect, it } from "vitest";
import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Answer, Asked } from "#lib/questions/answer";
import type { WhatHelps } from "#lib/whatif/remedies/whatHelps";
import { ask, askable, only } from "./asked";

/**
 * Hazel's bodice alone. Joss (80%, 22.00): pattern, toile and cutting 150 + 188 + 150, and 125 min of fittings, 613 min, 224.77. Delia (85%, 20.00):
 * 177 + 213 + 72 + 177 + 124 = 763 min, 254.33. Bryn (85%, 16.50): hooks 124, press 71, 53.63. Labour 532.73, materials 95.50: 628.23.
 */
const ALL = 62_823;
const MATERIALS = 9550;

let asked: Asked;
let answer: Answer;
let found: WhatHelps;
beforeAll(async () => {
  asked = await askable(await only("hazel-bodice"), 0);
  answer = await ask(9, asked, { piece: "hazel-bodice", price: "150", days: "10" });
  found = answer.data as WhatHelps;
});

describe("9. Two casual stitchers for three weeks, or overtime, or send eight bodices out: cost and finish date of each?", () => {
  it("costs 628.23 as it stands, and is done on Wed 20 Jan", () => {
    expect(found.unchanged).toMatchObject({ cost: ALL, lateGarments: 0 });
    expect(answer.says[0]).toMatch(/^As it stands everything is done by Wed 20 Jan .*£628\.23\.$/);
  });

  /** Two for fifteen days of eight hours, at the 16.50 of Bryn, the cheapest at 100%: 240 h, 3960.00, whether there is work for them or not. */
  it("two more hands cost 3960.00 more, and nobody waits for them", () => {
    const [hands] = found.answers;
    expect(hands?.asks).toBe("2 more pairs of hands for hand finish, 15 working days from Mon 11 Jan");
    expect(hands?.tried?.figures).toMatchObject({ cost: ALL + 396_000, finish: found.unchanged.finish });
  });

  it("overtime is paid only when it is worked: nobody needs it here", () => {
    expect(found.answers[1]?.tried?.figures).toMatchObject({ cost: ALL, overtimeMinutes: 0 });
  });

  /** 150.00, the materials, and at home 488 min of patterns and 75 of fittings at 22.00, 206.43, and 50 of fittings by Kit at 18.50, 15.42. */
  it("sent out for ten days it costs 467.35, and comes back ten days after it is cut at the soonest", () => {
    const out = found.answers[2]?.tried?.figures;
    expect(out?.cost).toBe(15_000 + MATERIALS + 20_643 + 1542);
    const cut = asked.plan.tasks.find(({ operation }) => operation === "cut")!.end!;
    expect(cut).toBe(wallMinute("2027-01-18" as PlainDate, 690));
    expect(out?.finish).toBeGreaterThan(cut + 10 * 1440);
  });

  it("names the best of them", () => {
    expect(answer.says.at(-1)).toMatch(/^Least late, then least overtime, then cheapest: WL 001 made out of the house/i);
  });
});
