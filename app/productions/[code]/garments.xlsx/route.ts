import { requireProduction } from "../../../_data/requireProduction";
import { xlsxAnswer } from "../../../_data/xlsxAnswer";
import { garmentSheet } from "../garments/garmentSheet";

/** The list of garments as it is seen, as a workbook: figures and days as such. */
export const GET = async (request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("read", (await params).code);
  const { name, sheet } = garmentSheet(request, view);
  return xlsxAnswer(name, [sheet]);
};
