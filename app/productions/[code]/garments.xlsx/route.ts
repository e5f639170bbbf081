import { xlsxAnswer } from "../../../_data/xlsxAnswer";
import { garmentSheet } from "../garments/garmentSheet";

/** The list of garments as it is seen, as a workbook: figures and days as such. */
export const GET = async (request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { name, sheet } = await garmentSheet(request, (await params).code);
  return xlsxAnswer(name, [sheet]);
};
