import { csvAnswer } from "../../../../../_data/csvAnswer";
import { requireProduction } from "../../../../../_data/requireProduction";
import { sheetText } from "../../sheetText";
import { moneySheet } from "../moneySheet";

/** The money as it stands, as text. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { member, view } = await requireProduction("money", (await params).code);
  return csvAnswer(`${view.prepared.staging.production.code} money`, sheetText(await moneySheet(member, view)));
};
