import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PurchaseList } from "#lib/purchasing/purchase";
import { showMoney } from "#lib/units/money";
import { words as wordsOf } from "#lib/words/words";
import { figures, Heads } from "../../../_components/Heads";
import { Woven } from "../../../_components/Woven";
import { garmentHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";

/** Garments that are bought or hired ready-made, at the price their piece says. */
export const BoughtWhole = ({ plan, garments }: { readonly plan: StagingPlan; readonly garments: PurchaseList["garments"] }) => {
  const { code, currency, words } = plan.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  return (
    garments.length > 0 && (
      <section className="part" aria-labelledby="whole">
        <header>
          <h2 id="whole">Bought and hired whole</h2>
        </header>
        <table className="stack">
          <Heads of={["Garment", "Name", "From", figures("Price")]} />
          <tbody>
            {garments.map(({ garment, name, source, price }) => (
              <tr key={garment}>
                <td className="name">
                  <Woven number={garment} href={garmentHref(code, garment)} />
                </td>
                <td>{name}</td>
                <td>{wordsOf(words).sources[source]}</td>
                <td className="num">{money(price)}</td>
              </tr>
            ))}
          </tbody>
          <tbody>
            <tr className="sum">
              <th scope="row">{plural(garments.length, "garment")}</th>
              <td colSpan={2} />
              <td className="num">{money(garments.reduce((sum, { price }) => sum + price, 0))}</td>
            </tr>
          </tbody>
        </table>
      </section>
    )
  );
};
