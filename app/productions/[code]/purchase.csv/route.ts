import { notFound } from "next/navigation";
import { writeCsv } from "#lib/exchange/writeCsv";
import { writeMoney } from "#lib/units/money";
import { csvAnswer } from "../../../_data/csvAnswer";
import { showQuantity } from "../../../_data/quantity";
import { requireProduction } from "../../../_data/requireProduction";

const HEADINGS = [
  "supplier",
  "material",
  "name",
  "colour",
  "to_buy",
  "packs",
  "pack",
  "price_per_pack",
  "cost",
  "currency",
  "needed_by",
  "order_by",
  "garments",
  "arithmetic",
];

/** The purchase list as it is seen, for the office: a row a line; costs add up to the page's total. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("money", (await params).code);
  if (!view.plan) notFound();
  const { currency, lengths, code } = view.plan.staging.production;
  const rows = view.plan.purchase.lines.map((line) => [
    line.supplier,
    line.material,
    line.name,
    line.colour,
    showQuantity(line.toBuy, line.measure, lengths),
    String(line.packs),
    showQuantity(line.pack, line.measure, lengths),
    writeMoney(line.pricePerPack, currency),
    writeMoney(line.cost, currency),
    currency,
    line.neededBy ?? "",
    line.orderBy ?? "",
    [...new Set(line.reasons.map((reason) => reason.garment))].join(" "),
    line.arithmetic,
  ]);
  return csvAnswer(`${code} purchase list`, writeCsv(HEADINGS, rows, true));
};
