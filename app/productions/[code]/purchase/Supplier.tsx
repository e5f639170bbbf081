import Link from "next/link";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PurchaseLine } from "#lib/purchasing/purchase";
import { showMoney } from "#lib/units/money";
import { figures, Heads } from "../../../_components/Heads";
import { OpenedLine } from "../../../_components/OpenedLine";
import { State } from "../../../_components/State";
import type { Alternative } from "../../../_data/alternatives";
import { colourBeside } from "../../../_data/colourBeside";
import { plural } from "../../../_data/plural";
import { showQuantity } from "../../../_data/quantity";
import { DraftPress } from "./DraftPress";
import { orderHref } from "./orders/orderHref";
import { Reasons } from "./Reasons";
import styles from "./Supplier.module.css";
import { WhyPacks } from "./WhyPacks";

const OrderBy = ({ line, today }: { readonly line: PurchaseLine; readonly today: PlainDate }) => {
  if (line.orderBy === null) return <span className="q">no day yet</span>;
  if (line.orderBy < today) return <State code="late">was {showDay(line.orderBy)}</State>;
  return line.orderBy === today ? <State code="wait">today</State> : showDay(line.orderBy);
};

/** One supplier's lines, each opened to its arithmetic and its garments, and what they come to; ticked lines become an order. */
export const Supplier = ({
  supplier,
  lines,
  plan,
  today,
  alternatives,
  drafted,
  canOrder,
}: {
  readonly supplier: string;
  readonly lines: readonly PurchaseLine[];
  readonly plan: StagingPlan;
  readonly today: PlainDate;
  readonly alternatives: ReadonlyMap<string, readonly Alternative[]>;
  /** Numbers of orders not placed yet, by material: they are not counted on. */
  readonly drafted: ReadonlyMap<string, string>;
  readonly canOrder: boolean;
}) => {
  const { code, currency, words, lengths } = plan.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const carriage = plan.purchase.carriage.find((each) => each.supplier === supplier)?.cost ?? 0;
  const total = lines.reduce((sum, line) => sum + line.cost, carriage);
  const form = `order ${supplier}`.replaceAll(/\W+/g, "-");
  return (
    <section className="part" aria-label={supplier}>
      <header>
        <h2>{supplier}</h2>
      </header>
      <table className={`stack ${styles.lines}`}>
        <Heads
          of={[
            "Material",
            figures("To buy"),
            figures("As"),
            figures("Each"),
            figures("Together"),
            figures("Needed by"),
            figures("Order by"),
          ]}
        />
        {lines.map((line) => {
          const order = drafted.get(line.material);
          return (
            <OpenedLine
              key={`${line.material} ${line.oneLotSet}`}
              columns={7}
              tick={
                canOrder && (
                  <input
                    type="checkbox"
                    className="no-print"
                    form={form}
                    name="pick"
                    value={line.material}
                    defaultChecked={order === undefined}
                    aria-label={`Order ${line.name}`}
                  />
                )
              }
              name={
                <>
                  <b>{line.name}</b> <span className="units">{colourBeside(line.name, line.colour)}</span>
                </>
              }
              cells={
                <>
                  <td className="num b fr">{showQuantity(line.toBuy, line.measure, lengths)}</td>
                  <td className="num fr">
                    {line.packs} × {showQuantity(line.pack, line.measure, lengths)}
                  </td>
                  <td className="num">{money(line.pricePerPack)}</td>
                  <td className="num b">{money(line.cost)}</td>
                  <td className="num" data-label="needed by">
                    {line.neededBy && showDay(line.neededBy)}
                  </td>
                  <td className="num" data-label="order by">
                    {order === undefined ? (
                      <OrderBy line={line} today={today} />
                    ) : (
                      <Link href={orderHref(code, order)} prefetch={false}>
                        in order {order}
                      </Link>
                    )}
                  </td>
                </>
              }
            >
              <div className={styles.opened}>
                <section>
                  <Reasons line={line} plan={plan} />
                </section>
                <section>
                  <WhyPacks line={line} plan={plan} choices={alternatives.get(line.material) ?? []} today={today} />
                </section>
              </div>
            </OpenedLine>
          );
        })}
        <tbody>
          {carriage > 0 && (
            <tr>
              <td>Carriage</td>
              <td colSpan={3} />
              <td className="num b">{money(carriage)}</td>
              <td colSpan={2} />
            </tr>
          )}
          <tr className="sum">
            <th scope="row">{plural(lines.length, "line")}</th>
            <td colSpan={3} />
            <td className="num">{money(total)}</td>
            <td colSpan={2} />
          </tr>
        </tbody>
      </table>
      {canOrder && <DraftPress form={form} production={code} supplier={supplier} />}
    </section>
  );
};
