import type { XlsxSheet } from "#lib/exchange/writeXlsx";
import type { ProductionView } from "../../../_data/stagingPlan";
import { columnOf } from "./garmentColumns";
import { given, readQuery } from "./garmentQuery";
import { garmentRows } from "./garmentRows";
import { groupOf, selectGarments } from "./selectGarments";

/** The list of garments as it is seen: same search, columns, order and groups; all pages of it. */
export const garmentSheet = (request: Request, view: ProductionView): { readonly name: string; readonly sheet: XlsxSheet } => {
  const query = readQuery(given(new URL(request.url).searchParams.entries()));
  const { group } = query;
  const cells = query.show.flatMap((id) => columnOf(id).file);
  const rows = selectGarments(garmentRows(view), query);
  return {
    name: `${view.prepared.staging.production.code} garments`,
    sheet: {
      name: "garments",
      headings: [...(group === "" ? [] : ["group"]), ...cells.map(({ heading }) => heading)],
      rows: rows.map((row) => [...(group === "" ? [] : [groupOf(row, group)]), ...cells.map(({ cell }) => cell(row))]),
    },
  };
};
