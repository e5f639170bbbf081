import { notFound } from "next/navigation";
import { cuttingSheet } from "#lib/sheets/buyingSheets";
import { requireProduction } from "../../../../../_data/requireProduction";
import { xlsxAnswer } from "../../../../../_data/xlsxAnswer";

/** The cutting plans, a row a pattern, as a workbook. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("measurements", (await params).code);
  if (!view.plan) notFound();
  return xlsxAnswer(`${view.plan.staging.production.code} cutting`, [cuttingSheet(view.plan)]);
};
