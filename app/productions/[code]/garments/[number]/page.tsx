import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { SectionDrawing } from "../../../../_components/SectionDrawing";
import { TaskGraph } from "../../../../_components/TaskGraph";
import { Wide } from "../../../../_components/Wide";
import { isSlugOf } from "../../../../_data/address";
import { requireProduction } from "../../../../_data/requireProduction";
import type { ProductionView } from "../../../../_data/stagingPlan";
import { may } from "../../../../_gate/may";
import { Drivers } from "./Drivers";
import { Fittings } from "./Fittings";
import { GarmentHead } from "./GarmentHead";
import { GarmentNotes } from "./GarmentNotes";
import { Needs } from "./Needs";
import { Tasks } from "./Tasks";
import { Wearers } from "./Wearers";

type Props = { readonly params: Promise<{ readonly code: string; readonly number: string }> };

const find = (view: ProductionView, number: string) => {
  const garment = view.prepared.garments.find((each) => isSlugOf(number, each.number));
  if (!garment) notFound();
  return { garment, work: view.prepared.works.find((each) => each.garment === garment.number) ?? null };
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { code, number } = await params;
  const { view } = await requireProduction("read", code);
  const { garment } = find(view, number);
  return { title: `${garment.number}, ${garment.name}` };
};

const GarmentPage = async ({ params }: Props) => {
  const { code, number } = await params;
  const { member, view } = await requireProduction("read", code);
  const { garment, work } = find(view, number);
  const { staging } = view.prepared;
  const measurements = may(member.role, "measurements");
  return (
    <ProductionFrame member={member} view={view} room="/garments">
      <GarmentHead garment={garment} work={work} view={view} />
      <div className="cols uneven">
        <div>
          {work && work.layers.length > 0 && (
            <section className="board" aria-labelledby="section">
              <h2 id="section">Section</h2>
              <Wide label="Section of the skirt">
                <SectionDrawing work={work} staging={staging} />
              </Wide>
            </section>
          )}
          <Wearers garment={garment} staging={staging} measurements={measurements} />
          {work && work.fittings.length > 0 && <Fittings garment={garment} work={work} plan={view.plan} staging={staging} />}
          {work && <GarmentNotes work={work} />}
        </div>
        <div>
          {work && work.drivers.length > 0 && <Drivers work={work} production={staging.production} />}
          {work && !measurements && <p className="cap">What is counted from the body is shown to those who cut, make and fit.</p>}
        </div>
      </div>
      {work && work.operations.length > 0 ? (
        <section className="part" aria-labelledby="tasks">
          <header>
            <h2 id="tasks">Tasks, and what waits for what</h2>
          </header>
          <Wide label="Tasks, and what waits for what" fit>
            <TaskGraph work={work} plan={view.plan} staging={staging} />
          </Wide>
          <Tasks work={work} plan={view.plan} staging={staging} />
        </section>
      ) : (
        <p className="part board">Nothing has to be made: it comes as it is.</p>
      )}
      {work && work.needs.length > 0 && <Needs work={work} staging={staging} />}
    </ProductionFrame>
  );
};

export default GarmentPage;
