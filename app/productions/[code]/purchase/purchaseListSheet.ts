import type { XlsxCell, XlsxSheet } from "#lib/exchange/writeXlsx";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showQuantity } from "../../../_data/quantity";
import { moneyCell } from "./moneyCell";

/**
 * The purchase list as it is seen, for the office: a row for each price of each order of a line, for carriage, and for what is bought whole; costs
 * add up to the page's total.
 */
export const purchaseListSheet = ({ purchase, staging }: StagingPlan): XlsxSheet => {
  const { currency, lengths } = staging.production;
  const money = (amount: number) => moneyCell(amount, currency);
  const whole = (supplier: string, name: string, cost: number, garments: string): readonly XlsxCell[] => [
    ...[supplier, null, name, null, null, 1, null, money(cost), money(cost), currency, null, null, garments, ""],
  ];
  return {
    name: "purchase list",
    headings: [
      ...["supplier", "material", "name", "colour", "to_buy", "packs", "pack", "price_per_pack", "cost", "currency"],
      ...["needed_by", "order_by", "garments", "arithmetic"],
    ],
    rows: [
      ...purchase.lines.flatMap((line) =>
        line.deliveries.flatMap(({ parts, neededBy, orderBy }) =>
          parts.map(({ packs, price }) => [
            ...[line.supplier, line.material, line.name, line.colour, showQuantity(line.toBuy, line.measure, lengths)],
            ...[packs, showQuantity(line.pack, line.measure, lengths), money(price), money(packs * price), currency],
            ...[neededBy && { day: neededBy }, orderBy && { day: orderBy }],
            [...new Set(line.reasons.map((reason) => reason.garment))].join(" "),
            line.arithmetic,
          ]),
        ),
      ),
      ...purchase.carriage.map(({ supplier, cost }) => whole(supplier, "Carriage", cost, "")),
      ...purchase.garments.map(({ garment, name, source, price }) => whole("", `${name}, ${source}`, price, garment)),
    ],
  };
};
