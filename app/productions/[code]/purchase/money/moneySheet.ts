import type { XlsxSheet } from "#lib/exchange/writeXlsx";
import type { ProductionView } from "../../../../_data/stagingPlan";
import type { Member } from "../../../../_gate/member";
import { moneyCell } from "../moneyCell";
import { CATEGORY_WORDS } from "./categoryWords";
import { spendingNow } from "./spendingNow";

/** Money by category as it is seen: a row a kind. */
export const moneySheet = async (member: Member, view: ProductionView): Promise<XlsxSheet> => {
  const { currency } = view.prepared.staging.production;
  const money = (amount: number) => moneyCell(amount, currency);
  const rows = await spendingNow(member, view);
  return {
    name: "money",
    headings: ["for", ...["received", "on_order", "yet_to_buy", "at_the_end", "budget"].map((heading) => `${heading}_${currency}`)],
    rows: rows.map(({ category, received, committed, toBuy, forecast, budget }) => [
      CATEGORY_WORDS[category],
      ...[received, committed, toBuy, forecast].map(money),
      budget === null ? null : money(budget),
    ]),
  };
};
