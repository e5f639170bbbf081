import type { ShelfEntry } from "#prisma/stock/shelf";
import { FieldsForm, type FormField } from "../../../../../_components/FieldsForm";
import { showQuantity } from "../../../../../_data/quantity";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { adjust, arrived, count, cut, move, part, reserve } from "../actions";

const text = (name: string, label: string, more: Partial<FormField> = {}): FormField => ({ name, label, ...more });

/** What can be done with a lot: cut from it, count it, move it, part off a rest; for buyers, keep it for something and adjust it. */
export const LotForms = ({ lot, view, canBuy }: { readonly lot: ShelfEntry; readonly view: ProductionView; readonly canBuy: boolean }) => {
  const { production, sets } = view.prepared.staging;
  const hidden = { production: production.code, lot: lot.code };
  const show = (quantity: number) => showQuantity(quantity, lot.measure, production.lengths);
  const example = lot.measure === "count" ? "pieces" : production.lengths === "in" ? "like 3 1/2 yd or 20 in" : "like 3.2 m or 45 cm";
  const quantity = text("quantity", "How much", { hint: example, required: true });
  const garments = text("garments", "Garments", { hint: `numbers, like ${production.prefix} 001` });
  const held = lot.reservations.filter(({ production: of }) => of === production.code);
  if (lot.arrives !== null)
    return (
      canBuy &&
      lot.order === null && (
        <section className="part" aria-labelledby="came">
          <header>
            <h2 id="came">It has come</h2>
          </header>
          <FieldsForm
            action={arrived}
            hidden={hidden}
            press="Book it in"
            busy="Booking in"
            look="press"
            fields={[
              { ...quantity, value: show(lot.balance.onHand) },
              text("on", "On", { kind: "date", value: view.today, required: true }),
              text("dyeLot", "Dye lot on the roll", { value: lot.dyeLot }),
              text("location", "Where it lies now"),
            ]}
          />
        </section>
      )
    );
  return (
    <section className="part no-print" aria-label="What is done with it">
      <div className="cols">
        <section>
          <h2>Cut</h2>
          <FieldsForm
            action={cut}
            hidden={hidden}
            press="Write it down"
            busy="Writing"
            look="press"
            fields={[
              text("kind", "What", {
                kind: "choice",
                options: [
                  { value: "cut", name: "cut off" },
                  { value: "put back", name: "put back" },
                ],
              }),
              quantity,
              text("reservation", "From", {
                kind: "choice",
                options: [
                  { value: "", name: "what is free" },
                  ...held.map((kept) => ({ value: kept.code, name: `${show(kept.quantity)} kept for ${kept.set ?? production.code}` })),
                ],
              }),
              garments,
              text("reason", "Note"),
            ]}
          />
        </section>
        <section>
          <h2>Count</h2>
          <FieldsForm
            action={count}
            hidden={hidden}
            press="This is what there is"
            busy="Writing"
            fields={[{ ...quantity, label: "Counted" }, text("reason", "Note")]}
          />
        </section>
        <section>
          <h2>Move</h2>
          <FieldsForm
            action={move}
            hidden={hidden}
            press="It lies there now"
            busy="Writing"
            fields={[text("location", "Where to", { value: lot.location })]}
          />
        </section>
        {canBuy && (
          <section>
            <h2>Keep for</h2>
            <FieldsForm
              action={reserve}
              hidden={hidden}
              press={`Keep for ${production.title}`}
              busy="Keeping"
              fields={[
                quantity,
                text("set", "Set", {
                  kind: "choice",
                  options: [{ value: "", name: "the whole production" }, ...sets.map(({ code, name }) => ({ value: code, name }))],
                }),
                garments,
                text("reason", "Note"),
              ]}
            />
          </section>
        )}
        {canBuy && (
          <section>
            <h2>Adjust</h2>
            <FieldsForm
              action={adjust}
              hidden={hidden}
              press="Adjust"
              busy="Adjusting"
              fields={[
                text("way", "There is", {
                  kind: "choice",
                  options: [
                    { value: "less", name: "less" },
                    { value: "more", name: "more" },
                  ],
                }),
                quantity,
                text("reason", "Why", { required: true }),
              ]}
            />
          </section>
        )}
        {lot.measure === "length" && (
          <section>
            <h2>Part off a rest</h2>
            <FieldsForm
              action={part}
              hidden={hidden}
              press="Part it off"
              busy="Parting"
              fields={[
                { ...quantity, label: "Length" },
                text("breadth", "Breadth", { hint: "if it is narrower than the cloth" }),
                text("location", "Where it lies", { value: lot.location }),
              ]}
            />
          </section>
        )}
      </div>
    </section>
  );
};
