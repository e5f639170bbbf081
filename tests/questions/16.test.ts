import { beforeAll, describe, expect, it } from "vitest";
import { splitWall } from "#lib/calendar/clock";
import type { Call } from "#lib/casting/casting";
import type { Asked } from "#lib/questions/answer";
import { fittingClashes } from "#lib/questions/fittingClashes";
import { ask, askable, only } from "./asked";

let asked: Asked;
beforeAll(async () => {
  asked = await askable(await only("lark-tutu", "wind-unitard"), 0);
});
const first = () => asked.plan.fittings.find(({ performer, fitting }) => performer === "sil" && fitting === "fit-first")!;
/** The plan kept, and the calls changed under it. */
const withCalls = (change: (calls: readonly Call[]) => readonly Call[]) =>
  fittingClashes({ ...asked.plan, staging: { ...asked.plan.staging, calls: change(asked.plan.staging.calls) } });
const call = (kind: Call["kind"], from: number, to: number): Call => ({
  performer: "sil",
  date: splitWall(first().start!).date,
  from,
  to,
  kind,
});

describe("16. Which fittings clash with class, rehearsal, rest or the one fitting room?", () => {
  /** Five fittings of the first Lark, four of the second, two of the unitard. */
  it("none of eleven in a plan", async () => {
    expect(fittingClashes(asked.plan)).toEqual([]);
    expect((await ask(16, asked)).says).toEqual(["None of the 11 fittings in the plan."]);
  });

  it("Sil's first, once a rehearsal is called over it", () => {
    const { minute } = splitWall(first().start!);
    const clashes = withCalls((calls) => [...calls, call("rehearsal", minute - 30, minute + 10)]);
    expect(clashes).toEqual([{ garment: "WL 003", name: first().name, performer: "sil", start: first().start, with: "rehearsal" }]);
  });

  it("none with one that ends as the fitting begins", () => {
    const { minute } = splitWall(first().start!);
    expect(withCalls((calls) => [...calls, call("rehearsal", minute - 30, minute)])).toEqual([]);
  });

  it("hers again when three hours of rehearsal end as it begins: the hour after is free time", () => {
    const { minute } = splitWall(first().start!);
    const long = withCalls((calls) => [...calls.filter(({ kind }) => kind === "span"), call("rehearsal", minute - 180, minute)]);
    expect(long.filter(({ performer }) => performer === "sil").map((clash) => clash.with)).toEqual(["rest after rehearsal"]);
  });

  it("all of a day whose span is taken away", () => {
    const { date } = splitWall(first().start!);
    const there = asked.plan.fittings.filter(({ start }) => splitWall(start!).date === date);
    const clashes = withCalls((calls) => calls.filter((one) => one.kind !== "span" || one.date !== date));
    expect(clashes.map((clash) => clash.with)).toEqual(there.map(() => "outside the work span"));
  });

  it("two at one time in the one room", () => {
    const { start, end } = first();
    const lark = asked.plan.fittings.find(({ performer }) => performer === "mira")!;
    const moved = asked.plan.fittings.map((one) => (one === lark ? { ...one, start, end } : one));
    const { calls: _, ...staging } = asked.plan.staging;
    expect(fittingClashes({ staging: { ...staging, calls: [] }, fittings: moved }).map((clash) => [clash.performer, clash.with])).toEqual([
      ["mira", "room"],
      ["sil", "room"],
    ]);
  });
});
