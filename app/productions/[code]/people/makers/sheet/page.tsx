import type { Metadata } from "next";
import { fileColumns } from "#lib/editing/fileColumns";
import { rowsOf } from "#lib/editing/rows";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { RegisterSheet } from "../../../../../_components/RegisterSheet";
import { shownColumns } from "../../../../../_data/columnLabel";
import { requireProduction } from "../../../../../_data/requireProduction";
import { PeopleNav } from "../../PeopleNav";
import { keepMakers } from "../actions";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata: Metadata = { title: "Makers as a sheet" };

const MakersSheet = async ({ params }: Props) => {
  const { member, view } = await requireProduction("workroom", (await params).code);
  const { staging } = view.prepared;
  const { code, words } = staging.production;
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={code} page="/makers" />
      <div className="top">
        <h1>Makers as a sheet</h1>
      </div>
      <RegisterSheet
        action={keepMakers}
        production={code}
        caption="Makers"
        columns={shownColumns(fileColumns(staging, "makers.csv"), words)}
        rows={rowsOf(staging, "makers.csv")}
        whole
      />
    </ProductionFrame>
  );
};

export default MakersSheet;
