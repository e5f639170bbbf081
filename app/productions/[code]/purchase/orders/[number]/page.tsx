import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { showDate } from "#lib/calendar/showDay";
import { shownState } from "#lib/purchasing/order";
import { costOf } from "#lib/purchasing/spending";
import { showMoney } from "#lib/units/money";
import { loadOrder } from "#prisma/orders/load";
import { PrintThis } from "../../../../../_components/PrintThis";
import { plural } from "../../../../../_data/plural";
import { requireProduction } from "../../../../../_data/requireProduction";
import { may } from "../../../../../_gate/may";
import { BuyingFrame } from "../../BuyingFrame";
import { stateWord } from "../stateWords";
import { OrderActs } from "./OrderActs";
import { OrderLines } from "./OrderLines";

type Props = { readonly params: Promise<{ readonly code: string; readonly number: string }> };

const openOrder = async ({ params }: Props) => {
  const { code, number } = await params;
  const { member, view } = await requireProduction("money", code);
  const order = /^\d{1,9}$/.test(number) ? await loadOrder(member.company, view.prepared.staging.production.code, Number(number)) : null;
  if (!order) notFound();
  return { member, view, order };
};

export const generateMetadata = async (props: Props): Promise<Metadata> => {
  const { order } = await openOrder(props);
  return { title: `Order ${order.number}, ${order.supplier}` };
};

const OrderPage = async (props: Props) => {
  // The gate is passed before anything is looked for.
  await requireProduction("money", (await props.params).code);
  const { member, view, order } = await openOrder(props);
  const { currency, words } = view.prepared.staging.production;
  const asked = order.lines.filter(({ packs }) => packs > 0);
  return (
    <BuyingFrame member={member} view={view} page="/orders">
      <div className="top">
        <h1>
          Order {order.number}, {order.supplier}
        </h1>
        <p className="say">
          {plural(asked.length, "line")}, <b>{showMoney(costOf(order), currency, words)}</b>
          {order.freight > 0 && `, carriage ${showMoney(order.freight, currency, words)} included`}. {stateWord(shownState(order))}.
          {order.placedOn ? ` Placed ${showDate(order.placedOn)}.` : ""}
        </p>
        <div className="acts">
          <PrintThis>Print the order</PrintThis>
        </div>
      </div>
      {order.note && <p className="slip">{order.note}</p>}
      <OrderLines order={order} view={view} canAct={may(member.role, "stock")} />
      {may(member.role, "stock") && <OrderActs order={order} view={view} />}
      <p className="cap">
        Drafted {showDate(order.draftedOn)}
        {order.draftedBy ? ` by ${order.draftedBy}` : ""}
        {order.approvedOn ? `; approved ${showDate(order.approvedOn)}${order.approvedBy ? ` by ${order.approvedBy}` : ""}` : ""}.
      </p>
    </BuyingFrame>
  );
};

export default OrderPage;
