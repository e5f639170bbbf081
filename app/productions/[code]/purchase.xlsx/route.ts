import { notFound } from "next/navigation";
import { requireProduction } from "../../../_data/requireProduction";
import { xlsxAnswer } from "../../../_data/xlsxAnswer";
import { purchaseListSheet } from "../purchase/purchaseListSheet";

/** The purchase list as it is seen, as a workbook. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("money", (await params).code);
  if (!view.plan) notFound();
  return xlsxAnswer(`${view.plan.staging.production.code} purchase list`, [purchaseListSheet(view.plan)]);
};
