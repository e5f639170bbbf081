import { requireProduction } from "../../../../../_data/requireProduction";
import { xlsxAnswer } from "../../../../../_data/xlsxAnswer";
import { moneySheet } from "../moneySheet";

/** The money as it stands, as a workbook. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { member, view } = await requireProduction("money", (await params).code);
  return xlsxAnswer(`${view.prepared.staging.production.code} money`, [await moneySheet(member, view)]);
};
