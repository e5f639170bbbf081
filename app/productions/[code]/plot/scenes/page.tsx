import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { requireProduction } from "../../../../_data/requireProduction";
import { keepRoles, keepScenes } from "../actions";
import { BackToPlot } from "../BackToPlot";
import { Register } from "../Register";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata = { title: "Scenes and roles" };

const ScenesPage = async ({ params }: Props) => {
  const { member, view } = await requireProduction("cast", (await params).code);
  const { staging } = view.prepared;
  return (
    <ProductionFrame member={member} view={view} room="/plot">
      <div className="top">
        <h1>Scenes and roles</h1>
        <p className="say">
          The running order in minutes after curtain up, intervals counted, and the parts that are danced.{" "}
          <BackToPlot code={staging.production.code} />
        </p>
      </div>
      <Register staging={staging} file="scenes.csv" caption="Scenes" action={keepScenes} />
      <Register staging={staging} file="roles.csv" caption="Roles" action={keepRoles} />
    </ProductionFrame>
  );
};

export default ScenesPage;
