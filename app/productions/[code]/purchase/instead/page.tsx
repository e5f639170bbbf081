import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { showMoney } from "#lib/units/money";
import { figures, Heads } from "../../../../_components/Heads";
import { NotLevelled } from "../../../../_components/NotLevelled";
import { State } from "../../../../_components/State";
import { colourBeside } from "../../../../_data/colourBeside";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { BuyingFrame } from "../BuyingFrame";
import { buyingHref } from "../buyingPages";
import { Ready } from "../WhyPacks";
import { substitutesFor } from "./substitutes";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly material?: string | string[] }>;
};

export const metadata: Metadata = { title: "What would do instead" };

const Instead = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("money", (await params).code);
  const { staging, works } = view.prepared;
  const { code, currency, words } = staging.production;
  const asked = [(await searchParams).material ?? ""].flat()[0];
  const material = staging.materials.find((each) => each.code === asked);
  if (!material) notFound();
  const line = view.plan?.purchase.lines.find((each) => each.material === material.code);
  const rows = view.plan ? substitutesFor(view.plan, works, material.code, view.today) : [];
  return (
    <BuyingFrame member={member} view={view} page="">
      <div className="top">
        <h1>Instead of {material.name}</h1>
        <p className="say">
          Every other {material.kind} sold the same way, laid under all the garments that need it and reckoned anew: widths, washing, packs
          and the shelf. Whether it looks and hangs the same, only an eye can say.
        </p>
        <div className="acts">
          <Link className="press second" href={buyingHref(code, "")}>
            Purchase list
          </Link>
        </div>
      </div>
      {!view.plan && <NotLevelled code={code} canLevel={may(member.role, "level")} />}
      {rows.length === 0 && view.plan && <p className="board">No other {material.kind} is among the materials.</p>}
      {rows.length > 0 && (
        <table className="stack">
          <Heads of={["Material", figures("Costs"), figures("May be cut")]} />
          <tbody>
            {rows.map((row) => (
              <tr key={row.material.code}>
                <th scope="row" className="name">
                  {row.material.name} <span className="units">{colourBeside(row.material.name, row.material.colour)}</span>
                </th>
                <td className="num b">{difference(row.more, (amount) => showMoney(amount, currency, words))}</td>
                <td className="num">
                  {row.ready === null ? (
                    <State code="late">cannot be had</State>
                  ) : row.onHand ? (
                    <State code="done">on the shelf</State>
                  ) : (
                    <Ready day={row.ready} neededBy={line?.neededBy ?? null} />
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </BuyingFrame>
  );
};

const difference = (more: number | null, money: (amount: number) => string): string => {
  if (more === null) return "";
  return more === 0 ? "the same" : more > 0 ? `${money(more)} more` : `${money(-more)} less`;
};

export default Instead;
