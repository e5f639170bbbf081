import type { GarmentCost, WorkedSoFar } from "#lib/sheets/garmentCost";
import type { Production } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import { figures, Heads } from "../../../../_components/Heads";

/** What it is reckoned to cost, with what each part is counted from. */
export const Cost = ({
  cost,
  worked,
  production,
}: {
  readonly cost: GarmentCost;
  readonly worked: WorkedSoFar;
  readonly production: Production;
}) => {
  const lines = [
    ["Labour", "likely minutes and fittings, at the mean cost of those who have the skill", cost.labour],
    ["Cloth and notions", "its part of each line of the purchase list; what the shelf gives is not counted", cost.goods],
    ...(cost.price > 0 ? [["Price", "hired or bought whole", cost.price] as const] : []),
  ] as const;
  return (
    <section className="part" aria-labelledby="cost">
      <header>
        <h2 id="cost">Cost</h2>
      </header>
      <table>
        <Heads of={["For", figures("Comes to")]} />
        <tbody>
          {lines.map(([name, from, amount]) => (
            <tr key={name}>
              <th scope="row">
                {name} <span className="units">{from}</span>
              </th>
              <td className="num b">{showMoney(amount, production.currency, production.words)}</td>
            </tr>
          ))}
          <tr className="sum">
            <th scope="row">Together</th>
            <td className="num">{showMoney(cost.total, production.currency, production.words)}</td>
          </tr>
          <tr>
            <th scope="row">
              Labour so far <span className="units">{showHours(worked.minutes)} worked, as the makers wrote it down</span>
            </th>
            <td className="num b">{showMoney(worked.cost, production.currency, production.words)}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
};
