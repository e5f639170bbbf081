import { csvAnswer } from "../../../../../_data/csvAnswer";
import { requireProduction } from "../../../../../_data/requireProduction";
import { sheetText } from "../../sheetText";
import { shelfSheet } from "../shelfSheet";

/** The shelf as it stands, as text. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { member, view } = await requireProduction("shelf", (await params).code);
  return csvAnswer(`${view.prepared.staging.production.code} shelf`, sheetText(await shelfSheet(member, view)));
};
