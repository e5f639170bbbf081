import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Material, Offer } from "#lib/materials/material";
import { hooks, needOf, offerOf, production, worksOf } from "./goods.fixture";
import { purchaseList } from "./purchaseList";

const buttons: Material = { ...hooks, code: "BUTTON", name: "Buttons", kind: "fixing" };
const bars: Material = { ...hooks, code: "BAR", name: "Bars", kind: "bar" };
const materials = [hooks, buttons, bars];
const list = (offers: readonly Offer[]) =>
  purchaseList({ materials, offers, lots: [], production }, worksOf(materials.map((material) => needOf("LM 1", material, 10))), () => null)
    .purchase;

describe("carriage", () => {
  it("is charged once a supplier, and a supplier a little dearer is taken where that saves an order", () => {
    const near = { supplier: "Ashby", orderCost: 900 };
    const far = { supplier: "Wick", orderCost: 700 };
    const offers = [
      offerOf(hooks, 10, 500, near),
      offerOf(buttons, 10, 400, near),
      offerOf(hooks, 10, 450, far),
      offerOf(bars, 10, 300, far),
    ];
    // Bars come from Wick only. Buttons come from Ashby only, so both are asked, and hooks come from the cheaper.
    expect(list(offers).lines.map(({ supplier, material }) => [supplier, material])).toEqual([
      ["Ashby", "BUTTON"],
      ["Wick", "BAR"],
      ["Wick", "HOOK"],
    ]);
    expect(list(offers)).toMatchObject({
      carriage: [
        { supplier: "Ashby", cost: 900 },
        { supplier: "Wick", cost: 700 },
      ],
      materials: 400 + 300 + 450 + 900 + 700,
    });
    // Wick sells buttons too, a pound dearer: nine pounds of carriage are saved for one.
    expect(list([...offers, offerOf(buttons, 10, 500, far)])).toMatchObject({
      carriage: [{ supplier: "Wick", cost: 700 }],
      total: 450 + 300 + 500 + 700,
    });
  });

  it("never makes a list dearer than buying each thing where it is cheapest", () => {
    const offer = fc.tuple(fc.constantFrom(...materials), fc.constantFrom("Ashby", "Hartle", "Wick"), fc.integer({ min: 1, max: 900 }));
    fc.assert(
      fc.property(
        fc.array(offer, { maxLength: 9 }),
        fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 3, maxLength: 3 }),
        (some, costs) => {
          const names = ["Ashby", "Hartle", "Wick"];
          const offers = some.map(([material, supplier, price]) =>
            offerOf(material, 10, price, { supplier, orderCost: costs[names.indexOf(supplier)]! }),
          );
          const cheapest = materials.flatMap(({ code }) => {
            const own = offers.filter((one) => one.material === code);
            return own.length === 0 ? [] : [own.reduce((a, b) => (b.prices[0]!.price < a.prices[0]!.price ? b : a))];
          });
          const asked = new Set(cheapest.map(({ supplier }) => supplier));
          const plain =
            cheapest.reduce((sum, { prices }) => sum + prices[0]!.price, 0) +
            [...asked].reduce((sum, name) => sum + costs[names.indexOf(name)]!, 0);
          expect(list(offers).materials).toBeLessThanOrEqual(plain);
          expect(list(offers).lines.length).toBe(cheapest.length);
        },
      ),
    );
  });
});

describe("incremental price breaks", () => {
  it("leave each pack the price of its own step, and say so", () => {
    const steps = [
      { from: 1, price: 500 },
      { from: 3, price: 400 },
      { from: 5, price: 250 },
    ];
    const line = (breaks: "all" | "incremental", need: number) =>
      purchaseList(
        { materials: [hooks], offers: [offerOf(hooks, 10, 0, { prices: steps, breaks })], lots: [], production },
        worksOf([needOf("LM 1", hooks, need)]),
        () => null,
      ).purchase.lines[0]!;
    // Six packs: two at 5.00, two at 4.00, two at 2.50.
    expect(line("incremental", 60)).toMatchObject({ packs: 6, cost: 2300, pricePerPack: 250 });
    expect(line("incremental", 60).arithmetic).toBe("60; 2 × 10 at £5.00 + 2 at £4.00 + 2 at £2.50 = £23.00");
    // All units: four packs at 4.00 are 16.00, five at 2.50 are 12.50. With incremental breaks a fifth costs more.
    expect(line("all", 40)).toMatchObject({ packs: 5, cost: 1250 });
    expect(line("incremental", 40)).toMatchObject({ packs: 4, cost: 1800 });
  });
});

describe("bought and hired garments", () => {
  it("count with their price in the total, beside the materials", () => {
    const garment = { number: "LM 9", name: "Boots", source: "buy", price: 4500 };
    const made = { number: "LM 1", name: "Tunic", source: "build", price: null };
    const { purchase } = purchaseList(
      { materials: [hooks], offers: [offerOf(hooks, 10, 500)], lots: [], production },
      worksOf([needOf("LM 1", hooks, 10)]),
      () => null,
      { garments: [garment, made] as never },
    );
    expect(purchase).toMatchObject({ materials: 500, total: 5000, garments: [{ garment: "LM 9", price: 4500 }] });
  });
});
