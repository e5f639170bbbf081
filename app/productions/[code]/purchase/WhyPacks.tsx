import Link from "next/link";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { readyFrom } from "#lib/purchasing/choice";
import type { PurchaseLine } from "#lib/purchasing/purchase";
import { showMoney } from "#lib/units/money";
import { figures, Heads } from "../../../_components/Heads";
import type { Alternative } from "../../../_data/alternatives";
import { plural } from "../../../_data/plural";
import { showQuantity } from "../../../_data/quantity";
import { buyingHref } from "./buyingPages";

interface Props {
  readonly line: PurchaseLine;
  readonly plan: StagingPlan;
  readonly choices: readonly Alternative[];
  readonly today: PlainDate;
}

/** Beside the sum of a line: why so many packs of this offer, what the others would come to, and why by that day. */
export const WhyPacks = ({ line, plan, choices, today }: Props) => {
  const { code, currency, words, lengths } = plan.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const show = (quantity: number) => showQuantity(quantity, line.measure, lengths);
  return (
    <>
      <h3>Why {line.packs === 1 ? "this pack" : `these ${line.packs} packs`}</h3>
      <table>
        <Heads of={["From", figures("Packs"), figures("Each"), figures("Together"), figures("Over"), figures("May be cut")]} />
        <tbody>
          {choices.map(({ offer, order }, at) => (
            <tr key={`${offer.supplier} ${offer.pack}`} className={at === 0 ? "in-hand" : undefined}>
              <th scope="row">{offer.supplier}</th>
              <td className="num fr">
                {order.packs} × {show(offer.pack)}
              </td>
              <td className="num">{money(order.pricePerPack)}</td>
              <td className="num b">{money(order.cost)}</td>
              <td className="num fr">{show(Math.max(0, order.packs * offer.pack - line.toBuy))}</td>
              <td className="num">
                <Ready day={readyFrom(offer, today)} neededBy={line.neededBy} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {line.deliveries.length > 1 && (
        <p className="small q">
          In {line.deliveries.length} orders, since keeping all of it costs more than another order:{" "}
          {line.deliveries.map(({ packs, orderBy }) => `${plural(packs, "pack")}${orderBy ? ` by ${showDay(orderBy)}` : ""}`).join(", ")}. A
          draft takes the first.
        </p>
      )}
      <WhyDay line={line} choice={choices[0]} />
      <p className="small no-print">
        <Link href={`${buyingHref(code, "")}/instead?material=${encodeURIComponent(line.material)}`} prefetch={false}>
          What would do instead
        </Link>
      </p>
    </>
  );
};

/** The first day it may be cut when ordered today, and by how much that is too late. */
export const Ready = ({ day, neededBy }: { readonly day: PlainDate; readonly neededBy: PlainDate | null }) => {
  const late = neededBy === null ? 0 : dayNumber(day) - dayNumber(neededBy);
  return late > 0 ? (
    <span className="bad b">
      {showDay(day)}, {plural(late, "day")} late
    </span>
  ) : (
    showDay(day)
  );
};

const WhyDay = ({ line, choice }: { readonly line: PurchaseLine; readonly choice: Alternative | undefined }) => {
  if (line.orderBy === null || line.neededBy === null || !choice)
    return <p className="small q">No task that cuts it is in the plan yet.</p>;
  const { leadDays, inspectionDays } = choice.offer;
  return (
    <p className="small q">
      First cut <b>{showDay(line.neededBy)}</b>. {plural(leadDays, "day")} on the road, {plural(inspectionDays, "day")} to count, air or
      wash: order by <b>{showDay(line.orderBy)}</b>.
    </p>
  );
};
