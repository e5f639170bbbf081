import { splitWall } from "#lib/calendar/clock";
import { showDay } from "#lib/calendar/showDay";
import { type DyeItem, dyeWork } from "#lib/dyeing/dyeWork";
import { figures, Heads } from "../../../../_components/Heads";
import { Numbers } from "../../../../_components/Numbers";
import { showQuantity } from "../../../../_data/quantity";
import type { ProductionView } from "../../../../_data/stagingPlan";
import { baths } from "./baths";

/** What goes into the vat: one colour a bath, what must match together where it fits, and the day the plan dyes it. */
export const ToDye = ({ view }: { readonly view: ProductionView }) => {
  const { staging, garments, works } = view.prepared;
  const { code, lengths } = staging.production;
  const { batches, warnings } = baths(dyeWork(staging, garments, works));
  if (batches.length === 0) return null;
  const days = new Map(
    (view.plan?.tasks ?? []).flatMap(({ garments: of, operation, start }) =>
      start === null ? [] : of.map((number) => [JSON.stringify([number, operation]), splitWall(start).date] as const),
    ),
  );
  const dayOf = ({ garment, operation }: DyeItem) => days.get(JSON.stringify([garment, operation])) ?? null;
  return (
    <section className="part" aria-labelledby="to-dye">
      <header>
        <h2 id="to-dye">Into the vat</h2>
      </header>
      <table className="stack">
        <Heads of={["Colour", "What", figures("How much"), figures("Vat full"), figures("Dyed"), "For"]} />
        <tbody>
          {batches.map((batch) => {
            const load = batch.items.reduce((sum, item) => sum + item.load, 0);
            const first = batch.items
              .map(dayOf)
              .filter((day) => day !== null)
              .sort()[0];
            return (
              <tr key={JSON.stringify(batch.items)}>
                <th scope="row" className="name">
                  {batch.colour}
                </th>
                <td>{batch.what === "cloth" ? "cloth, before it is cut" : "garments"}</td>
                <td className="num fr">{showQuantity(load, batch.what === "cloth" ? "length" : "count", lengths)}</td>
                <td className="num">{Math.round(batch.full / 10)}%</td>
                <td className="num">{first ? showDay(first) : <span className="q">not planned</span>}</td>
                <td>
                  <Numbers code={code} numbers={batch.items.map(({ garment }) => garment)} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {warnings.map((warning) => (
        <p key={warning} className="slip">
          {warning}
        </p>
      ))}
    </section>
  );
};
