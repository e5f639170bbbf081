import type { Metadata } from "next";
import { showMoney } from "#lib/units/money";
import { loadOrders } from "#prisma/orders/load";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { BuyingFrame } from "../BuyingFrame";
import { buyingHref } from "../buyingPages";
import { SaveFiles } from "../SaveFiles";
import { OrderTable } from "./OrderTable";
import { orderRow } from "./orderRows";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("money", (await params).code);
  return { title: `Orders, ${view.prepared.staging.production.title}` };
};

const Orders = async ({ params }: Props) => {
  const { member, view } = await requireProduction("money", (await params).code);
  const { code, currency, words } = view.prepared.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const rows = (await loadOrders(member.company, code)).map((order) => orderRow(order, view.today));
  const inState = (...states: readonly string[]) => rows.filter(({ state }) => states.includes(state));
  const open = inState("draft", "approved", "placed", "part received");
  const overdue = rows.filter((row) => row.overdue).length;
  return (
    <BuyingFrame member={member} view={view} page="/orders">
      <div className="top">
        <h1>Orders</h1>
        <p className="say">
          <b>{plural(open.length, "order")} open</b>, {money(rows.reduce((sum, row) => sum + row.awaited, 0))} of goods to come,{" "}
          {money(rows.reduce((sum, row) => sum + row.received, 0))} came.{" "}
          {overdue > 0 && <b className="bad">{overdue === 1 ? "One is overdue." : `${overdue} are overdue.`}</b>}
        </p>
        <div className="acts">{rows.length > 0 && <SaveFiles href={`${buyingHref(code, "/orders")}/list`} />}</div>
      </div>
      {rows.length === 0 && (
        <p className="board">Nothing has been ordered yet. Tick lines of the purchase list and draft an order from them.</p>
      )}
      <OrderTable heading="To approve" rows={inState("draft")} code={code} money={money} />
      <OrderTable heading="Approved, to place" rows={inState("approved")} code={code} money={money} />
      <OrderTable heading="On order" rows={inState("placed", "part received")} code={code} money={money} />
      <OrderTable heading="Ended" rows={inState("received", "closed", "cancelled")} code={code} money={money} />
    </BuyingFrame>
  );
};

export default Orders;
