import { notFound } from "next/navigation";
import { writeCsv } from "#lib/exchange/writeCsv";
import { cuttingSheet } from "#lib/sheets/buyingSheets";
import { csvAnswer } from "../../../../../_data/csvAnswer";
import { requireProduction } from "../../../../../_data/requireProduction";

/** The cutting plans, a row a pattern, as text. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("measurements", (await params).code);
  if (!view.plan) notFound();
  const { headings, rows } = cuttingSheet(view.plan);
  return csvAnswer(`${view.plan.staging.production.code} cutting`, writeCsv(headings, rows, true));
};
