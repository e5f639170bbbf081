import type { Metadata } from "next";
import { MATERIAL_KINDS } from "#lib/materials/material";
import { showMoney } from "#lib/units/money";
import { FieldsForm } from "../../../../_components/FieldsForm";
import { figures, Heads } from "../../../../_components/Heads";
import { State } from "../../../../_components/State";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { BuyingFrame } from "../BuyingFrame";
import { buyingHref } from "../buyingPages";
import { SaveFiles } from "../SaveFiles";
import { keepBudget } from "./actions";
import { CATEGORY_WORDS } from "./categoryWords";
import { SpendingPicture } from "./SpendingPicture";
import { spendingNow } from "./spendingNow";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("money", (await params).code);
  return { title: `Money for cloth, ${view.prepared.staging.production.title}` };
};

const Money = async ({ params }: Props) => {
  const { member, view } = await requireProduction("money", (await params).code);
  const { code, currency, words, budget } = view.prepared.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const rows = await spendingNow(member, view);
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((total, row) => total + of(row), 0);
  const forecast = sum((row) => row.forecast);
  const over = budget === null ? 0 : forecast - budget;
  return (
    <BuyingFrame member={member} view={view} page="/money">
      <div className="top">
        <h1>Money</h1>
        <p className="say">
          <b>{money(sum((row) => row.received))}</b> received, {money(sum((row) => row.committed))} on order,{" "}
          {money(sum((row) => row.toBuy))} yet to buy: <b>{money(forecast)}</b> at the end
          {budget === null ? (
            "."
          ) : over > 0 ? (
            <b className="bad">, {money(over)} over the production’s budget.</b>
          ) : (
            `, of ${money(budget)}.`
          )}
        </p>
        <div className="acts">
          <SaveFiles href={`${buyingHref(code, "/money")}/list`} />
        </div>
      </div>
      {rows.length === 0 ? (
        <p className="board">Nothing is ordered and nothing is to buy.</p>
      ) : (
        <>
          <SpendingPicture rows={rows} money={money} />
          <table className="stack">
            <Heads
              of={[
                "For",
                figures("Received"),
                figures("On order"),
                figures("Yet to buy"),
                figures("At the end"),
                figures("Budget"),
                figures("Left"),
              ]}
            />
            <tbody>
              {rows.map((row) => (
                <tr key={row.category}>
                  <th scope="row" className="name">
                    {CATEGORY_WORDS[row.category]}
                  </th>
                  <td className="num" data-label="received">
                    {row.received !== 0 && money(row.received)}
                  </td>
                  <td className="num" data-label="on order">
                    {row.committed !== 0 && money(row.committed)}
                  </td>
                  <td className="num" data-label="yet to buy">
                    {row.toBuy !== 0 && money(row.toBuy)}
                  </td>
                  <td className="num b">{money(row.forecast)}</td>
                  <td className="num" data-label="budget">
                    {row.budget !== null && money(row.budget)}
                  </td>
                  <td className="num">
                    {row.budget !== null &&
                      (row.forecast > row.budget ? (
                        <State code="late">{money(row.forecast - row.budget)} over</State>
                      ) : (
                        money(row.budget - row.forecast)
                      ))}
                  </td>
                </tr>
              ))}
            </tbody>
            <tbody>
              <tr className="sum">
                <th scope="row">Together</th>
                <td className="num">{money(sum((row) => row.received))}</td>
                <td className="num">{money(sum((row) => row.committed))}</td>
                <td className="num">{money(sum((row) => row.toBuy))}</td>
                <td className="num">{money(forecast)}</td>
                <td className="num">{budget !== null && money(budget)}</td>
                <td className="num">{budget !== null && over <= 0 && money(-over)}</td>
              </tr>
            </tbody>
          </table>
        </>
      )}
      {may(member.role, "stock") && (
        <section className="part no-print" aria-labelledby="share">
          <header>
            <h2 id="share">Budget of a kind</h2>
          </header>
          <FieldsForm
            action={keepBudget}
            hidden={{ production: code }}
            press="Keep"
            busy="Keeping"
            fields={[
              {
                ...{ name: "category", label: "For", kind: "choice" },
                options: MATERIAL_KINDS.map((kind) => ({ value: kind, name: CATEGORY_WORDS[kind] })),
              },
              { name: "amount", label: "May be spent", hint: `${currency}; empty takes it out` },
            ]}
          />
        </section>
      )}
    </BuyingFrame>
  );
};

export default Money;
