import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Numbers } from "../../../../../_components/Numbers";
import { PrintThis } from "../../../../../_components/PrintThis";
import { isSlugOf } from "../../../../../_data/address";
import { colourBeside } from "../../../../../_data/colourBeside";
import { plural } from "../../../../../_data/plural";
import { showQuantity } from "../../../../../_data/quantity";
import { requireProduction } from "../../../../../_data/requireProduction";
import { BuyingFrame } from "../../BuyingFrame";
import { cuttingByMaterial } from "../cuttingRows";
import { CutPlan } from "./CutPlan";
import { TakeCare } from "./TakeCare";

type Props = { readonly params: Promise<{ readonly code: string; readonly material: string }> };

const openMaterial = async ({ params }: Props) => {
  const { code, material } = await params;
  const { member, view } = await requireProduction("measurements", code);
  const found = cuttingByMaterial(view.plan?.cutting ?? [], view.prepared.staging).find((each) => isSlugOf(material, each.material));
  if (!found) notFound();
  return { member, view, found };
};

export const generateMetadata = async (props: Props): Promise<Metadata> => {
  const { found } = await openMaterial(props);
  return { title: `Cutting plan, ${found.name}` };
};

const CuttingPage = async (props: Props) => {
  // The gate is passed before anything is looked for.
  await requireProduction("measurements", (await props.params).code);
  const { member, view, found } = await openMaterial(props);
  const { code, lengths } = view.prepared.staging.production;
  const kind = view.prepared.staging.materials.find((each) => each.code === found.material)?.kind;
  const garments = [
    ...new Set(found.plans.flatMap(({ patterns }) => patterns.flatMap(({ pieces }) => pieces.map(({ garment }) => garment)))),
  ].sort();
  const used = found.plans.reduce((sum, plan) => sum + plan.used, 0);
  const waste = found.plans.reduce((sum, plan) => sum + plan.waste, 0);
  return (
    <BuyingFrame member={member} view={view} page="/cutting">
      <div className="top">
        <h1>Cutting plan, {found.name}</h1>
        <p className="say">
          {colourBeside(found.name, found.colour) && `${found.colour}; `}
          <b>{showQuantity(used, "length", lengths)}</b> for {plural(garments.length, "garment")}
          {waste > 0 ? `, ${showQuantity(waste, "length", lengths)} left over or lost` : ", nothing lost"}.
        </p>
        <div className="acts">
          <PrintThis>Print for the table</PrintThis>
        </div>
      </div>
      <p className="acts">
        <Numbers code={code} numbers={garments} />
      </p>
      {found.plans.map((plan, at) => (
        <CutPlan key={`${plan.lot} ${plan.set} ${plan.stock}`} plan={plan} lengths={lengths} kind={kind} id={`plan-${at}`} />
      ))}
      <TakeCare kind={kind} />
    </BuyingFrame>
  );
};

export default CuttingPage;
