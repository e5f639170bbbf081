import type { XlsxSheet } from "#lib/exchange/writeXlsx";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showQuantity } from "../../../_data/quantity";
import { moneyCell } from "./moneyCell";

/** The purchase list as it is seen, for the office: a row a line; costs add up to the page's total. */
export const purchaseListSheet = ({ purchase, staging }: StagingPlan): XlsxSheet => {
  const { currency, lengths } = staging.production;
  return {
    name: "purchase list",
    headings: [
      ...["supplier", "material", "name", "colour", "to_buy", "packs", "pack", "price_per_pack", "cost", "currency"],
      ...["needed_by", "order_by", "garments", "arithmetic"],
    ],
    rows: purchase.lines.map((line) => [
      ...[line.supplier, line.material, line.name, line.colour, showQuantity(line.toBuy, line.measure, lengths)],
      ...[line.packs, showQuantity(line.pack, line.measure, lengths)],
      ...[moneyCell(line.pricePerPack, currency), moneyCell(line.cost, currency), currency],
      ...[line.neededBy && { day: line.neededBy }, line.orderBy && { day: line.orderBy }],
      [...new Set(line.reasons.map((reason) => reason.garment))].join(" "),
      line.arithmetic,
    ]),
  };
};
