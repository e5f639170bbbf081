import Link from "next/link";
import { showDay } from "#lib/calendar/showDay";
import type { MinorUnits } from "#lib/units/quantities";
import { figures, Heads } from "../../../../_components/Heads";
import { orderHref } from "./orderHref";
import type { OrderRow } from "./orderRows";
import { OrderStateMark } from "./stateWords";

/** Orders, a row each. */
export const OrderTable = ({
  heading,
  rows,
  code,
  money,
}: {
  readonly heading: string;
  readonly rows: readonly OrderRow[];
  readonly code: string;
  readonly money: (amount: MinorUnits) => string;
}) =>
  rows.length > 0 && (
    <section className="part" aria-label={heading}>
      <header>
        <h2>{heading}</h2>
      </header>
      <table className="stack">
        <Heads
          of={["Order", "Goods", "State", figures("Placed"), figures("Promised"), figures("Came"), figures("To come"), figures("Together")]}
        />
        <tbody>
          {rows.map((row) => (
            <tr key={row.number}>
              <th scope="row" className="name">
                <Link href={orderHref(code, row.number)} prefetch={false}>
                  Order {row.number}, {row.supplier}
                </Link>
              </th>
              <td>{row.what.join("; ")}</td>
              <td>
                <OrderStateMark state={row.state} late={row.overdue} />
              </td>
              <td className="num" data-label="placed">
                {row.placedOn && showDay(row.placedOn)}
              </td>
              <td className="num" data-label="promised">
                {row.promised && showDay(row.promised)}
              </td>
              <td className="num" data-label="came">
                {row.received > 0 && money(row.received)}
              </td>
              <td className="num" data-label="to come">
                {row.awaited > 0 && money(row.awaited)}
              </td>
              <td className="num b">{money(row.cost)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
