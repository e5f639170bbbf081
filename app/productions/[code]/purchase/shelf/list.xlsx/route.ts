import { requireProduction } from "../../../../../_data/requireProduction";
import { xlsxAnswer } from "../../../../../_data/xlsxAnswer";
import { shelfSheet } from "../shelfSheet";

/** The shelf as it stands, as a workbook. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { member, view } = await requireProduction("shelf", (await params).code);
  return xlsxAnswer(`${view.prepared.staging.production.code} shelf`, [await shelfSheet(member, view)]);
};
