import { writeCsv } from "#lib/exchange/writeCsv";
import { csvAnswer } from "../../../_data/csvAnswer";
import { requireProduction } from "../../../_data/requireProduction";
import { readQuery, selectGarments } from "../garments/garmentQuery";
import { garmentRows } from "../garments/garmentRows";

const HEADINGS = ["number", "garment", "role", "wearers", "made_as", "set", "work_minutes", "ready", "wanted", "state"];

/** The list of garments as it is seen: same search, state and order. */
export const GET = async (request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("read", (await params).code);
  const query = new URL(request.url).searchParams;
  const asked = readQuery({ find: query.get("find") ?? "", state: query.get("state") ?? "", sort: query.getAll("sort") });
  const rows = selectGarments(garmentRows(view), asked);
  const lines = rows.map((row) => [
    row.number,
    row.name,
    row.role,
    row.wearers,
    row.made,
    row.set,
    String(row.minutes),
    row.ready ?? "",
    row.due ?? "",
    row.said,
  ]);
  return csvAnswer(`${view.prepared.staging.production.code} garments`, writeCsv(HEADINGS, lines, true));
};
