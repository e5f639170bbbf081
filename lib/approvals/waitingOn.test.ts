import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compile } from "#lib/levelling/compiled";
import { earliestEnds } from "#lib/levelling/earliestEnds";
import { set } from "#lib/planning/fixtures";
import type { Staging } from "#lib/staging/staging";
import { approval, planSkirts, prepareSkirts, skirts, task } from "./fixtures";
import { withLaterAnswer } from "./lateApproval";
import { waitingOn } from "./waitingOn";

describe("what waits on an approval", () => {
  it("is all that comes after it, with its hours: two skirts of 240 min behind the prototype", () => {
    const plan = planSkirts({ sets: [set("reeds", { name: "Reed skirts", prototype: true, approvalDays: 1 })] });
    expect(waitingOn(plan)).toEqual([
      {
        ...{ approval: "reeds", title: "Reed skirts", by: "designer", answer: plan.approvals[0]!.answer },
        ...{ garments: ["X 2", "X 3"], otherWork: [], minutes: 480 },
      },
    ]);
  });

  it("is less past the operation the set is free until: sewing and hemming are 180 min each", () => {
    const sets = [set("reeds", { prototype: true, freeUntil: "cut" })];
    expect(waitingOn(planSkirts({ sets }))[0]).toMatchObject({ garments: ["X 2", "X 3"], minutes: 360 });
  });

  it("counts other work, and is empty for an approval that holds nothing", () => {
    const approvals = [approval("ash"), approval("shape")];
    const waiting = waitingOn(planSkirts({ approvals, otherWork: [task("paint", { waitsFor: "shape" })] }));
    expect(waiting).toMatchObject([
      { approval: "ash", garments: [], otherWork: [], minutes: 0 },
      { approval: "shape", garments: [], otherWork: ["paint"], minutes: 60 },
    ]);
  });
});

describe("a later answer", () => {
  // With makers to choose from a later answer may let other work go first; what each step could do at the soonest has no such choice.
  it("never lets anything end sooner, were every maker free", () =>
    fc.assert(
      fc.property(fc.nat(4), fc.integer({ min: 1, max: 8 }), fc.constantFrom("reeds", "ash"), (days, later, code) => {
        const changes = {
          sets: [set("reeds", { prototype: true, approvalDays: days, freeUntil: "cut" })],
          approvals: [approval("ash", { days, material: "net" })],
          otherWork: [
            task("dip", { origin: "sample" as const, shownFor: "ash" }),
            task("paint", { waitsFor: "reeds", gates: "hem", set: "reeds" }),
          ],
        };
        const ends = (given: Partial<Staging>) => [...earliestEnds(compile(prepareSkirts(given).problem))];
        const [before, after] = [ends(changes), ends(withLaterAnswer(skirts(changes), code, later))];
        expect(after.every((end, node) => end >= before[node]!)).toBe(true);
        expect(Math.max(...after)).toBeGreaterThan(Math.max(...before));
      }),
    ));
});
