import type { Metadata } from "next";
import { showHours } from "#lib/units/hours";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { GarmentTable } from "./GarmentTable";
import { readQuery } from "./garmentQuery";
import { garmentRows } from "./garmentRows";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Garments, ${view.prepared.staging.production.title}` };
};

const Garments = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { production } = view.prepared.staging;
  const rows = garmentRows(view);
  const late = rows.filter((row) => row.state === "late").length;
  const minutes = rows.reduce((total, row) => total + row.minutes, 0);
  return (
    <ProductionFrame member={member} view={view} room="/garments">
      <div className="top">
        <h1>Garments</h1>
        <p className="say">
          <b>{plural(rows.length, "garment")}</b>, {showHours(minutes)} of work at standard pace.
          {view.plan && (
            <> {late === 0 ? "None comes late." : <b className="bad">{late === 1 ? "One comes late." : `${late} come late.`}</b>}</>
          )}
        </p>
      </div>
      {rows.length === 0 ? (
        <p className="board">There is no garment yet: the piece list is empty. A supervisor may bring one in.</p>
      ) : (
        <GarmentTable rows={rows} query={readQuery(await searchParams)} save={`${productionHref(production.code)}/garments.csv`} />
      )}
    </ProductionFrame>
  );
};

export default Garments;
