import { writeCsv } from "#lib/exchange/writeCsv";
import { cellText } from "#lib/sheets/cellText";
import { csvAnswer } from "../../../_data/csvAnswer";
import { requireProduction } from "../../../_data/requireProduction";
import { garmentSheet } from "../garments/garmentSheet";

/** The list of garments as it is seen, as text. */
export const GET = async (request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("read", (await params).code);
  const { name, sheet } = garmentSheet(request, view);
  const lines = sheet.rows.map((row) => row.map(cellText));
  return csvAnswer(name, writeCsv(sheet.headings, lines, true));
};
