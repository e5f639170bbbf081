import type { Metadata } from "next";
import { showMoney } from "#lib/units/money";
import { loadOrders } from "#prisma/orders/load";
import { NotLevelled } from "../../../_components/NotLevelled";
import { PrintThis } from "../../../_components/PrintThis";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { BoughtWhole } from "./BoughtWhole";
import { BuyingFrame } from "./BuyingFrame";
import { Covered } from "./Covered";
import { SaveFiles } from "./SaveFiles";
import { Supplier } from "./Supplier";
import { Unoffered } from "./Unoffered";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("money", (await params).code);
  return { title: `Purchase list, ${view.prepared.staging.production.title}` };
};

const Purchase = async ({ params }: Props) => {
  const { member, view } = await requireProduction("money", (await params).code);
  const { plan, today } = view;
  const { production } = view.prepared.staging;
  if (!plan)
    return (
      <BuyingFrame member={member} view={view} page="">
        <div className="top">
          <h1>Purchase list</h1>
        </div>
        <NotLevelled code={production.code} canLevel={may(member.role, "level")} />
      </BuyingFrame>
    );
  const { lines, total, unoffered, covered } = plan.purchase;
  const suppliers = [...new Set(lines.map((line) => line.supplier))];
  const overdue = lines.filter((line) => line.orderBy !== null && line.orderBy < today).length;
  const waiting = (await loadOrders(member.company, production.code)).filter(({ state }) => state === "draft" || state === "approved");
  const drafted = new Map(waiting.flatMap(({ number, lines: asked }) => asked.map(({ material }) => [material, number] as const)));
  return (
    <BuyingFrame member={member} view={view} page="">
      <div className="top">
        <h1>Purchase list</h1>
        <p className="say">
          {plural(lines.length, "line")} from {plural(suppliers.length, "supplier")},{" "}
          <b>{showMoney(total, production.currency, production.words)}</b>.{" "}
          {overdue > 0 && (
            <b className="bad">
              {overdue === 1 ? "One should have been ordered already." : `${overdue} should have been ordered already.`}
            </b>
          )}
          {view.stale && " The plan is older than its data: level again for the days."}
        </p>
        <div className="acts">
          <SaveFiles href={`${productionHref(production.code)}/purchase`} />
          <PrintThis>Print by supplier</PrintThis>
        </div>
      </div>
      {lines.length === 0 && <p className="board">Nothing has to be bought: the shelf and what is on order have it all.</p>}
      {suppliers.map((supplier) => (
        <Supplier
          key={supplier}
          supplier={supplier}
          lines={lines.filter((line) => line.supplier === supplier)}
          plan={plan}
          today={today}
          alternatives={view.alternatives()}
          drafted={drafted}
          canOrder={may(member.role, "stock")}
        />
      ))}
      <BoughtWhole plan={plan} garments={plan.purchase.garments} />
      <Covered plan={plan} covered={covered} />
      <Unoffered plan={plan} unoffered={unoffered} />
    </BuyingFrame>
  );
};

export default Purchase;
