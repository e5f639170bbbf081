import { describe, expect, it } from "vitest";
import { hooks, lotOf, needOf, net, offerOf, production, worksOf, yards } from "#lib/purchasing/goods.fixture";
import type { Staging } from "#lib/staging/staging";
import { goodsEffect } from "./goodsEffect";

const staging = {
  ...{ production, materials: [net, hooks], lots: [lotOf(net, "N", yards(12))] },
  offers: [offerOf(net, yards(20), 5800), offerOf(hooks, 10, 100)],
} as unknown as Staging;
const made = (skirts: number, each = 10) => ({
  staging,
  garments: [],
  works: worksOf(Array.from({ length: skirts }, (_, at) => [needOf(`LM ${at}`, net, yards(each)), needOf(`LM ${at}`, hooks, 5)]).flat()),
});

describe("what a change does to cloth and buying", () => {
  it("is the needs and the lines that change, with the money", () => {
    // One skirt comes from the lot; three take a roll more, and ten hooks.
    expect(goodsEffect(made(1), made(3))).toEqual({
      materials: [
        { material: "HOOK", measure: "count", before: 5, after: 15 },
        { material: "NET", measure: "length", before: yards(10), after: yards(30) },
      ],
      lines: [
        {
          ...{ material: "HOOK", name: "Hooks", measure: "count" },
          before: { supplier: "Pellow & Sile", packs: 1, pack: 10 },
          after: { supplier: "Pellow & Sile", packs: 2, pack: 10 },
        },
        {
          ...{ material: "NET", name: "Stiff net", measure: "length" },
          before: null,
          after: { supplier: "Pellow & Sile", packs: 1, pack: yards(20) },
        },
      ],
      cost: { before: 100, after: 6000 },
    });
  });

  it("is nothing where nothing changes, and no line where the shelf still does", () => {
    expect(goodsEffect(made(2), made(2))).toMatchObject({ materials: [], lines: [] });
    expect(goodsEffect(made(1), made(1, 11))).toMatchObject({
      materials: [{ material: "NET" }],
      lines: [],
      cost: { before: 100, after: 100 },
    });
  });
});
