import { showDay } from "#lib/calendar/showDay";
import { showMoney } from "#lib/units/money";
import type { KeptLine } from "#prisma/orders/orderRow";
import { Numbers } from "../../../../../_components/Numbers";
import { plural } from "../../../../../_data/plural";
import { showQuantity } from "../../../../../_data/quantity";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { LotLabel } from "../../shelf/LotLabel";

/** Why a line was ordered, and everything that happened to it since, in the order of the days. */
export const LineHistory = ({ line, view }: { readonly line: KeptLine; readonly view: ProductionView }) => {
  const { code, currency, words, lengths } = view.prepared.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const show = (quantity: number) => showQuantity(quantity, line.measure, lengths);
  const happened = [
    ...line.receipts.map((receipt) => ({
      day: receipt.day,
      key: `came ${receipt.lot}`,
      said: (
        <>
          {show(receipt.quantity)} came as <LotLabel code={code} lot={receipt.lot} />
          {receipt.dyeLot && `, dye lot ${receipt.dyeLot}`}
          {receipt.location && `, ${receipt.location}`}
          {receipt.charged !== null && `, charged ${money(receipt.charged)}`}
        </>
      ),
    })),
    ...line.returns.map((sent, at) => ({
      day: sent.day,
      key: `back ${at}`,
      said: `${show(sent.quantity)} of lot ${sent.lot} sent back: ${sent.why} Credit ${money(sent.credit)}.`,
    })),
    ...line.corrections.map(({ day, before, after, why }, at) => ({
      day,
      key: `right ${at}`,
      said: `From ${plural(before.packs, "pack")} at ${money(before.pricePerPack)} for ${before.promised ? showDay(before.promised) : "no day"} to ${plural(after.packs, "pack")} at ${money(after.pricePerPack)} for ${after.promised ? showDay(after.promised) : "no day"}: ${why}`,
    })),
  ].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  return (
    <>
      {line.arithmetic && <p className="small q">{line.arithmetic}</p>}
      {line.garments.length > 0 && (
        <p className="small">
          For <Numbers code={code} numbers={line.garments} />
        </p>
      )}
      {line.oneLotSet && <p className="small">One dye lot: {line.oneLotSet} must match.</p>}
      {line.neededBy && <p className="small">First cut {showDay(line.neededBy)}, as planned when it was ordered.</p>}
      {happened.length > 0 && (
        <ul className="lines small">
          {happened.map(({ key, day, said }) => (
            <li key={key}>
              <b>{showDay(day)}</b> {said}
            </li>
          ))}
        </ul>
      )}
    </>
  );
};
