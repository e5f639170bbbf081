import { showQuantity } from "#lib/materials/showQuantity";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { writeMoney } from "#lib/units/money";
import { showLength } from "#lib/units/showLength";
import { listCell } from "./cells";
import type { Sheet } from "./sheet";

/** What must be bought, by supplier, with the reason of each line down to the garments. */
export const purchaseSheet = ({ purchase, staging }: StagingPlan): Sheet => {
  const { lengths, currency } = staging.production;
  return {
    name: "purchase",
    title: "Purchase list",
    headings: [
      "supplier",
      "material",
      "name",
      "colour",
      "one_dye_lot",
      "needed",
      "on_hand",
      "spare",
      "to_buy",
      "packs",
      "pack",
      `price_${currency}`,
      `cost_${currency}`,
      "needed_by",
      "order_by",
      "arithmetic",
      "garments",
      "warnings",
    ],
    rows: [
      ...purchase.lines.map((line) => {
        const shown = (quantity: number) => showQuantity(quantity, line.measure, lengths);
        return [
          line.supplier,
          line.material,
          line.name,
          line.colour,
          line.oneLotSet ?? "",
          shown(line.gross),
          listCell(line.fromShelf.map(({ lot, quantity }) => `${lot}: ${shown(quantity)}`)),
          shown(line.spare),
          shown(line.toBuy),
          String(line.packs),
          shown(line.pack),
          writeMoney(line.pricePerPack, currency),
          writeMoney(line.cost, currency),
          line.neededBy ?? "",
          line.orderBy ?? "",
          line.arithmetic,
          listCell(line.reasons.map(({ garment, quantity }) => `${garment}: ${shown(quantity)}`)),
          listCell(line.warnings),
        ];
      }),
    ],
  };
};

/** How rolls, coils and rods are cut: one row a pattern. */
export const cuttingSheet = ({ cutting, staging }: StagingPlan): Sheet => {
  const { lengths } = staging.production;
  const shown = (length: number) => showLength(length, lengths);
  return {
    name: "cutting",
    title: "Cutting plans",
    headings: ["material", "set", "lot", "stock_length", "times", "pieces", "offcut", "rests_kept", "stocks", "fewest_possible", "proved"],
    rows: cutting.flatMap((plan) =>
      plan.patterns.map(({ times, pieces, offcut, offcuts }) => [
        plan.material,
        plan.set ?? "",
        plan.lot ?? "",
        plan.stock === null ? "" : shown(plan.stock),
        String(times),
        listCell(
          pieces.map(
            ({ garment, label, length, breadth }) =>
              `${garment} ${label} ${shown(length)}${breadth === null ? "" : ` x ${shown(breadth)}`}`,
          ),
        ),
        shown(offcut),
        listCell(
          offcuts
            .filter(({ kept }) => kept)
            .map(({ length, breadth }) => (breadth === null ? shown(length) : `${shown(length)} x ${shown(breadth)}`)),
        ),
        String(plan.count),
        String(plan.bound),
        plan.proved ? "yes" : "no",
      ]),
    ),
  };
};
