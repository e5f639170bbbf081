import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { showDay } from "#lib/calendar/showDay";
import { freeOf } from "#lib/stock/movement";
import { colourBeside } from "../../../../../_data/colourBeside";
import { showQuantity } from "../../../../../_data/quantity";
import { requireProduction } from "../../../../../_data/requireProduction";
import { may } from "../../../../../_gate/may";
import { BuyingFrame } from "../../BuyingFrame";
import { buyingHref } from "../../buyingPages";
import { orderHref } from "../../orders/orderHref";
import { findLot } from "../findLot";
import { LotLabel } from "../LotLabel";
import { LotForms } from "./LotForms";
import { Movements } from "./Movements";
import { Reservations } from "./Reservations";

type Props = { readonly params: Promise<{ readonly code: string; readonly lot: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { code, lot } = await params;
  const { member } = await requireProduction("shelf", code);
  return { title: `Lot ${(await findLot(member.company, lot))?.lot.code ?? ""}` };
};

const LotPage = async ({ params }: Props) => {
  const { code, lot: part } = await params;
  const { member, view } = await requireProduction("shelf", code);
  const found = await findLot(member.company, part);
  if (!found) notFound();
  const { lot, movements, offcuts } = found;
  const { production } = view.prepared.staging;
  const show = (quantity: number) => showQuantity(quantity, lot.measure, production.lengths);
  const told = [
    ...(lot.balance.reserved > 0 ? [`${show(lot.balance.reserved)} kept`, `${show(freeOf(lot.balance))} free`] : []),
    ...(colourBeside(lot.name, lot.colour) ? [lot.colour] : []),
    ...(lot.dyeLot ? [`dye lot ${lot.dyeLot}`] : []),
    ...(lot.location ? [lot.location] : []),
    ...(lot.breadth === null ? [] : [`${showQuantity(lot.breadth, "length", production.lengths, true)} broad`]),
  ];
  const ours = lot.order?.production === production.code && may(member.role, "money");
  return (
    <BuyingFrame member={member} view={view} page="/shelf">
      <div className="top">
        <h1>
          {lot.name}, lot {lot.code}
        </h1>
        <p className="say">
          <b>{show(lot.balance.onHand)}</b> {lot.arrives === null ? "there" : `awaited ${showDay(lot.arrives)}`}
          {told.map((part) => `, ${part}`)}.
        </p>
        <div className="acts">
          <Link
            className="press second"
            href={`${buyingHref(production.code, "/shelf")}/labels?lot=${encodeURIComponent(lot.code)}`}
            prefetch={false}
          >
            Label to print
          </Link>
        </div>
      </div>
      <p className="acts">
        {lot.parent && (
          <span>
            Off-cut of <LotLabel code={production.code} lot={lot.parent} />
          </span>
        )}
        {offcuts.map((offcut) => (
          <span key={offcut}>
            off-cut <LotLabel code={production.code} lot={offcut} />
          </span>
        ))}
        {lot.order &&
          (ours ? <Link href={orderHref(production.code, lot.order.number)}>Order {lot.order.number}</Link> : `Order ${lot.order.number}`)}
      </p>
      <Reservations lot={lot} view={view} canRelease={may(member.role, "stock")} />
      {may(member.role, "take") && <LotForms lot={lot} view={view} canBuy={may(member.role, "stock")} />}
      <Movements lot={lot} movements={movements} view={view} />
    </BuyingFrame>
  );
};

export default LotPage;
