import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { hooks, lotOf, needOf, net, offerOf, production, worksOf, yards } from "#lib/purchasing/goods.fixture";
import { substitutesFor } from "./substitutes";

const TODAY = "2027-03-08" as PlainDate;
const soft = { ...net, code: "SOFT", name: "Soft net" };
const works = worksOf([needOf("LM 001", net, yards(10))]);
const staging = { production, materials: [net, soft, hooks], lots: [lotOf(soft, "L1", yards(4))] } as unknown as StagingPlan["staging"];

describe("what would do instead", () => {
  it("is of the same kind, with what it costs more or less and the day it may be cut", () => {
    const offers = [offerOf(net, yards(10), 5000), offerOf(soft, yards(10), 3500, { leadDays: 3, inspectionDays: 0 })];
    expect(substitutesFor({ staging: { ...staging, offers } }, works, "NET", TODAY)).toEqual([
      { material: soft, more: -1500, onHand: false, ready: "2027-03-11" },
    ]);
  });

  it("costs nothing when it lies on the shelf, and says so when it cannot be had", () => {
    const offers = [offerOf(net, yards(10), 5000)];
    const enough = { ...staging, offers, lots: [lotOf(soft, "L1", yards(12))] };
    expect(substitutesFor({ staging: enough }, works, "NET", TODAY)).toEqual([{ material: soft, more: -5000, onHand: true, ready: TODAY }]);
    expect(substitutesFor({ staging: { ...staging, offers } }, works, "NET", TODAY)).toEqual([
      { material: soft, more: null, onHand: false, ready: null },
    ]);
  });
});
