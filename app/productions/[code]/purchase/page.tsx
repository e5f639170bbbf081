import type { Metadata } from "next";
import { showMoney } from "#lib/units/money";
import { NotLevelled } from "../../../_components/NotLevelled";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { Covered } from "./Covered";
import { PrintPress } from "./PrintPress";
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
      <ProductionFrame member={member} view={view} room="/purchase">
        <div className="top">
          <h1>Purchase list</h1>
        </div>
        <NotLevelled code={production.code} canLevel={may(member.role, "level")} />
      </ProductionFrame>
    );
  const { lines, total, unoffered, covered } = plan.purchase;
  const suppliers = [...new Set(lines.map((line) => line.supplier))];
  const overdue = lines.filter((line) => line.orderBy !== null && line.orderBy < today).length;
  return (
    <ProductionFrame member={member} view={view} room="/purchase">
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
        </p>
        <div className="acts">
          <a className="press second" href={`${productionHref(production.code)}/purchase.csv`} download>
            Save for the office
          </a>
          <PrintPress />
        </div>
      </div>
      {lines.length === 0 && <p className="board">Nothing has to be bought: the shelf has it all.</p>}
      {suppliers.map((supplier) => (
        <Supplier key={supplier} supplier={supplier} lines={lines.filter((line) => line.supplier === supplier)} plan={plan} today={today} />
      ))}
      <Covered plan={plan} covered={covered} />
      <Unoffered plan={plan} unoffered={unoffered} />
    </ProductionFrame>
  );
};

export default Purchase;
