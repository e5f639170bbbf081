import type { Metadata } from "next";
import Link from "next/link";
import { cutsAreSought } from "#prisma/stock/askForCuts";
import { ActionForm } from "../../../../_components/ActionForm";
import { figures, Heads } from "../../../../_components/Heads";
import { NotLevelled } from "../../../../_components/NotLevelled";
import { State } from "../../../../_components/State";
import { slug } from "../../../../_data/address";
import { colourBeside } from "../../../../_data/colourBeside";
import { plural } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { BuyingFrame } from "../BuyingFrame";
import { buyingHref } from "../buyingPages";
import { SaveFiles } from "../SaveFiles";
import { searchCutting } from "./actions";
import { cuttingByMaterial } from "./cuttingRows";
import { WhileSought } from "./WhileSought";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("measurements", (await params).code);
  return { title: `Cutting plans, ${view.prepared.staging.production.title}` };
};

const Cutting = async ({ params }: Props) => {
  const { member, view } = await requireProduction("measurements", (await params).code);
  const { code, lengths } = view.prepared.staging.production;
  const materials = cuttingByMaterial(view.plan?.cutting ?? [], view.prepared.staging);
  const plans = materials.flatMap((material) => material.plans);
  const open = plans.filter(({ question }) => question !== null).length;
  const sought = await cutsAreSought(member.company, code);
  const base = buyingHref(code, "/cutting");
  return (
    <BuyingFrame member={member} view={view} page="/cutting">
      <div className="top">
        <h1>Cutting plans</h1>
        <p className="say">
          <b>{plural(materials.length, "material")}</b> to cut, {plural(plans.length, "plan")};{" "}
          {plans.filter(({ proved }) => proved).length} proved to need the least.
          {open > 0 && ` ${open} may yet be bettered.`}
        </p>
        <div className="acts">
          {plans.length > 0 && <SaveFiles href={`${base}/list`} />}
          {open > 0 && !sought && (
            <ActionForm action={searchCutting} press="Look for better" busy="Asking" look="press">
              <input type="hidden" name="production" value={code} />
            </ActionForm>
          )}
        </div>
      </div>
      {sought && <WhileSought />}
      {!view.plan && <NotLevelled code={code} canLevel={may(member.role, "level")} />}
      {view.plan && materials.length === 0 && <p className="board">Nothing is cut from rolls, rods or coils.</p>}
      {materials.length > 0 && (
        <table className="stack">
          <Heads
            of={["Material", "From", figures("Pieces"), figures("Rolls, rods"), figures("Taken"), figures("Lost"), "Known to be best"]}
          />
          {materials.map((material) => (
            <tbody key={material.material}>
              {material.plans.map((plan, at) => (
                <tr key={`${plan.lot} ${plan.set} ${plan.stock}`}>
                  <th scope="row" className="name">
                    {at === 0 && (
                      <Link href={`${base}/${slug(material.material)}`} prefetch={false}>
                        {material.name} <span className="units">{colourBeside(material.name, material.colour)}</span>
                      </Link>
                    )}
                  </th>
                  <td>{plan.lot === null ? "what is bought" : `lot ${plan.lot}`}</td>
                  <td className="num">{plan.patterns.reduce((sum, { pieces, times }) => sum + pieces.length * times, 0)}</td>
                  <td className="num" data-label="rolls, rods">
                    {plan.count}
                  </td>
                  <td className="num fr" data-label="taken">
                    {showQuantity(plan.used, "length", lengths)}
                  </td>
                  <td className="num fr" data-label="lost">
                    {plan.waste > 0 ? showQuantity(plan.waste, "length", lengths) : "nothing"}
                  </td>
                  <td>
                    {plan.proved ? (
                      <State code="done">proved</State>
                    ) : (
                      <State code={plan.effort === "searched" ? "hand" : "none"}>
                        {plan.stock === null && plan.lengthBound !== null
                          ? `at least ${showQuantity(plan.lengthBound, "length", lengths)}`
                          : `at least ${plan.bound}`}
                      </State>
                    )}
                  </td>
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      )}
    </BuyingFrame>
  );
};

export default Cutting;
