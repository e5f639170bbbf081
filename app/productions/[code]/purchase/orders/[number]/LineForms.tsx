import { openOf } from "#lib/purchasing/order";
import { writeMoney } from "#lib/units/money";
import type { KeptLine, KeptOrder } from "#prisma/orders/orderRow";
import { FieldsForm } from "../../../../../_components/FieldsForm";
import { showQuantity } from "../../../../../_data/quantity";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { changeDraftLine, correct, giveBack, receive } from "../actions";

/** What can be done with a line: change it while it is a draft; book in what came, send back, put right once it is placed. */
export const LineForms = ({ order, line, view }: { readonly order: KeptOrder; readonly line: KeptLine; readonly view: ProductionView }) => {
  const { code, currency, lengths } = view.prepared.staging.production;
  const hidden = { production: code, number: order.number, line: String(line.line), version: String(line.version) };
  const packs = { name: "packs", label: "Packs", kind: "number", value: String(line.packs), required: true } as const;
  const price = {
    ...{ name: "price", label: "Price of a pack", hint: currency, required: true },
    value: writeMoney(line.pricePerPack, currency),
  } as const;
  const why = { name: "why", label: "Why", required: true } as const;
  if (order.state === "draft")
    return (
      <FieldsForm
        action={changeDraftLine}
        hidden={hidden}
        press="Keep"
        busy="Keeping"
        fields={[{ ...packs, hint: "none leaves it out" }, price]}
      />
    );
  if (order.state !== "placed" && order.state !== "closed") return null;
  const open = showQuantity(openOf(line), line.measure, lengths);
  const unit = line.measure === "count" ? "pieces" : `as measured, like ${lengths === "in" ? "49 1/2 yd" : "45.2 m"}`;
  return (
    <>
      {order.state === "placed" && (
        <>
          <h3>What came</h3>
          <FieldsForm
            action={receive}
            hidden={hidden}
            press="Book it in"
            busy="Booking in"
            fields={[
              { name: "quantity", label: "Came", value: openOf(line) > 0 ? open : "", hint: unit, required: true },
              { name: "on", label: "On", kind: "date", value: view.today, required: true },
              { name: "dyeLot", label: "Dye lot on the roll" },
              { name: "location", label: "Where it lies now" },
              { name: "charged", label: "Charged", hint: `${currency}; empty: as ordered` },
              { name: "note", label: "Delivery note" },
            ]}
          />
        </>
      )}
      {line.receipts.length > 0 && (
        <>
          <h3>Send back</h3>
          <FieldsForm
            action={giveBack}
            hidden={hidden}
            press="It went back"
            busy="Sending back"
            fields={[
              {
                ...{ name: "lot", label: "From lot", kind: "choice" },
                options: [...new Set(line.receipts.map(({ lot }) => lot))].map((lot) => ({ value: lot, name: lot })),
              },
              { name: "quantity", label: "How much", required: true },
              { name: "on", label: "On", kind: "date", value: view.today, required: true },
              { name: "credit", label: "Credit", hint: currency, value: "0" },
              why,
            ]}
          />
        </>
      )}
      {order.state === "placed" && (
        <>
          <h3>Put right</h3>
          <FieldsForm
            action={correct}
            hidden={hidden}
            press="Put right"
            busy="Putting right"
            fields={[
              packs,
              price,
              { name: "promised", label: "Promised for", kind: "date", value: line.promised ?? view.today, required: true },
              why,
            ]}
          />
        </>
      )}
    </>
  );
};
