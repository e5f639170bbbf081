import { notFound } from "next/navigation";
import { csvAnswer } from "../../../_data/csvAnswer";
import { requireProduction } from "../../../_data/requireProduction";
import { purchaseListSheet } from "../purchase/purchaseListSheet";
import { sheetText } from "../purchase/sheetText";

/** The purchase list as it is seen, as text. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("money", (await params).code);
  if (!view.plan) notFound();
  return csvAnswer(`${view.plan.staging.production.code} purchase list`, sheetText(purchaseListSheet(view.plan)));
};
