import type { Metadata } from "next";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { PeopleNav } from "../PeopleNav";
import { PerformerForm } from "./PerformerForm";
import { PerformerTable } from "./PerformerTable";
import { performerRows } from "./performerRows";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Performers, ${view.prepared.staging.production.title}` };
};

const Performers = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const measurements = may(member.role, "measurements");
  const rows = performerRows(view, measurements);
  const worn = rows.filter(({ garments }) => garments > 0);
  const others = rows.filter(({ garments }) => garments === 0);
  const never = worn.filter(({ sheet }) => sheet?.measured.taken === null).length;
  const old = worn.filter(({ sheet }) => sheet?.measured.tooOld && sheet.measured.taken !== null).length;
  const missing = worn.filter(({ sheet }) => (sheet?.missing.length ?? 0) > 0).length;
  const table = { base: `${productionHref(view.prepared.staging.production.code)}/people/performers`, measurements };
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={view.prepared.staging.production.code} page="/performers" />
      <div className="top">
        <h1>Performers</h1>
        <p className="say">
          <b>{plural(worn.length, "performer")}</b> {worn.length === 1 ? "wears" : "wear"} something.{" "}
          {measurements && (
            <>
              {never > 0 && <b className="bad">{plural(never, "was never measured", "were never measured")}. </b>}
              {old > 0 && <>{plural(old, "sheet is", "sheets are")} older than allowed. </>}
              {missing > 0
                ? `${plural(missing, "sheet lacks", "sheets lack")} what a garment is cut by.`
                : "No sheet lacks what a garment is cut by."}
            </>
          )}
        </p>
      </div>
      {rows.length === 0 ? (
        <p className="board">There is no performer yet. They come with the files of the production.</p>
      ) : (
        <>
          <PerformerTable rows={worn} {...table} />
          {others.length > 0 && (
            <details className="part">
              <summary>{plural(others.length, "performer")} of the company who wear nothing here</summary>
              <PerformerTable rows={others} {...table} />
            </details>
          )}
        </>
      )}
      {may(member.role, "measure") && <PerformerForm staging={view.prepared.staging} />}
      {measurements && (
        <p className="cap part">
          Allowed: half a year, a term for minors, who grow (common practice, no source). Measurements are personal: for those who cut, make
          and fit, and for nobody else.
        </p>
      )}
    </ProductionFrame>
  );
};

export default Performers;
