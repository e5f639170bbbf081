import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { requireProduction } from "../../../../_data/requireProduction";
import { keepCostumes, keepSets } from "../actions";
import { BackToPlot } from "../BackToPlot";
import { Register } from "../Register";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata = { title: "Costumes and sets" };

const CostumesPage = async ({ params }: Props) => {
  const { member, view } = await requireProduction("wardrobe", (await params).code);
  const { staging } = view.prepared;
  return (
    <ProductionFrame member={member} view={view} room="/plot">
      <div className="top">
        <h1>Costumes and sets</h1>
        <p className="say">
          What each role wears, and what must look alike. The pieces of a costume stand on its own page.{" "}
          <BackToPlot code={staging.production.code} />
        </p>
      </div>
      <Register staging={staging} file="costumes.csv" caption="Costumes" action={keepCostumes} />
      <Register staging={staging} file="sets.csv" caption="Sets" action={keepSets} />
    </ProductionFrame>
  );
};

export default CostumesPage;
