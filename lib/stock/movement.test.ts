import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { book, countedBy, freeOf, type LotBalance, type Reservation, refusalText, release, reserve, toRelease } from "./movement";

const held = (code: string, quantity: number): Reservation => ({
  ...{ code, lot: "L", production: "LM", set: null, garments: [], quantity, state: "held" },
});

describe("what lies in a lot", () => {
  it("is never less than nothing, and never less than is promised", () => {
    const balance = { onHand: 10, reserved: 6 };
    expect(book(balance, -4)).toEqual({ ok: true, value: { onHand: 6, reserved: 6 } });
    expect(book(balance, -5)).toEqual({ ok: false, error: { kind: "promised", short: 1 } });
    expect(book(balance, -11)).toEqual({ ok: false, error: { kind: "too little", short: 1 } });
    expect(book(balance, -7, 6)).toEqual({ ok: true, value: { onHand: 3, reserved: 0 } });
    expect(reserve(balance, 5)).toEqual({ ok: false, error: { kind: "promised", short: 1 } });
    expect(release(balance, 7)).toEqual({ ok: false, error: { kind: "too little", short: 1 } });
    expect(book(balance, 0.5)).toMatchObject({ ok: false, error: { kind: "not whole" } });
  });

  it("stays so whatever is asked in whatever order, two buyers at once included", () => {
    const ask = fc.tuple(fc.constantFrom("book", "reserve", "release"), fc.integer({ min: -50, max: 50 }), fc.integer({ min: 0, max: 20 }));
    fc.assert(
      fc.property(fc.array(ask, { maxLength: 40 }), (asks) => {
        let balance: LotBalance = { onHand: 0, reserved: 0 };
        let sum = 0;
        for (const [kind, quantity, used] of asks) {
          const next =
            kind === "book" ? book(balance, quantity, used) : kind === "reserve" ? reserve(balance, quantity) : release(balance, quantity);
          if (!next.ok) continue;
          if (kind === "book") sum += quantity;
          balance = next.value;
          expect(Math.min(balance.onHand, balance.reserved, freeOf(balance))).toBeGreaterThanOrEqual(0);
        }
        expect(balance.onHand).toBe(sum);
      }),
    );
  });

  it("is what a count finds, and the newest promises are given up where that is too little", () => {
    const all = [held("old", 4), held("newer", 3), held("newest", 2)];
    expect(countedBy({ onHand: 10, reserved: 9 }, 6)).toBe(-4);
    expect(toRelease(all, 9)).toEqual([]);
    expect(toRelease(all, 8).map(({ code }) => code)).toEqual(["newest"]);
    expect(toRelease(all, 5).map(({ code }) => code)).toEqual(["newest", "newer"]);
    expect(toRelease(all, 0)).toHaveLength(3);
  });

  it("says in the reader's units what is short", () => {
    expect(refusalText({ kind: "too little", short: 73_152 }, "L-3", "length", "in")).toBe("Lot L-3 holds 1 yd too little for that.");
    expect(refusalText({ kind: "promised", short: 12 }, "L-3", "count", "cm")).toBe(
      "12 more of lot L-3 is promised than would be left: release it first.",
    );
  });
});
