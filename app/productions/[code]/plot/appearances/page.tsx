import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { requireProduction } from "../../../../_data/requireProduction";
import { keepAppearances } from "../actions";
import { BackToPlot } from "../BackToPlot";
import { Register } from "../Register";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata = { title: "Who appears when" };

const AppearancesPage = async ({ params }: Props) => {
  const { member, view } = await requireProduction("wardrobe", (await params).code);
  const { staging } = view.prepared;
  return (
    <ProductionFrame member={member} view={view} room="/plot">
      <div className="top">
        <h1>Who appears when</h1>
        <p className="say">
          Which role is on in which scene, and in which costume. <BackToPlot code={staging.production.code} />
        </p>
      </div>
      <Register staging={staging} file="appearances.csv" caption="Appearances" action={keepAppearances} />
    </ProductionFrame>
  );
};

export default AppearancesPage;
