import { ascending } from "d3-array";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { writeMoney } from "#lib/units/money";
import type { KeptOrder } from "#prisma/orders/orderRow";
import { ActionForm } from "../../../../../_components/ActionForm";
import { FieldsForm } from "../../../../../_components/FieldsForm";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { approve, cancel, changeOrderTerms, close, place, reopen } from "../actions";

/** The day the slowest line would come if it were ordered today; a guess of the supplier's own lead times. */
const usualDay = (order: KeptOrder, { prepared, today }: ProductionView): PlainDate => {
  const days = order.lines.flatMap(({ material, pack }) =>
    prepared.staging.offers
      .filter((offer) => offer.material === material && offer.supplier === order.supplier && offer.pack === pack)
      .map((offer) => addDays(today, offer.leadDays)),
  );
  return days.sort(ascending).at(-1) ?? today;
};

/** What can be done with an order in its state: one black press, the next step. */
export const OrderActs = ({ order, view }: { readonly order: KeptOrder; readonly view: ProductionView }) => {
  const { code, currency } = view.prepared.staging.production;
  const hidden = { production: code, number: order.number, version: String(order.version) };
  const inputs = Object.entries(hidden).map(([name, value]) => <input key={name} type="hidden" name={name} value={value} />);
  const came = order.lines.some((line) => line.receipts.length > 0);
  const usual = usualDay(order, view);
  if (order.state === "closed" || order.state === "cancelled") return null;
  return (
    <section className="part no-print" aria-labelledby="acts">
      <header>
        <h2 id="acts">What next</h2>
      </header>
      <div className="cols">
        <section>
          {order.state === "draft" && (
            <ActionForm action={approve} press="Approve" busy="Approving" look="press">
              {inputs}
            </ActionForm>
          )}
          {order.state === "approved" && (
            <FieldsForm
              action={place}
              hidden={hidden}
              press="It is placed"
              busy="Placing"
              look="press"
              fields={[
                { name: "promised", label: "Promised for", kind: "date", value: usual, required: true, hint: `usually ${showDay(usual)}` },
              ]}
            />
          )}
          {order.state === "approved" && (
            <ActionForm action={reopen} press="Open it again" busy="Opening">
              {inputs}
            </ActionForm>
          )}
          {order.state === "placed" && (
            <ActionForm action={close} press="Nothing more is expected" busy="Closing">
              {inputs}
            </ActionForm>
          )}
          {!came && (
            <ActionForm action={cancel} press="Cancel the order" busy="Cancelling" look="plain">
              {inputs}
            </ActionForm>
          )}
        </section>
        <section>
          <FieldsForm
            action={changeOrderTerms}
            hidden={hidden}
            press="Keep"
            busy="Keeping"
            fields={[
              { name: "freight", label: "Carriage", value: writeMoney(order.freight, currency), hint: currency },
              { name: "note", label: "To the supplier", kind: "words", value: order.note },
            ]}
          />
        </section>
      </div>
    </section>
  );
};
