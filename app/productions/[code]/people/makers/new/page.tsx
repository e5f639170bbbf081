import type { Metadata } from "next";
import { fileColumns } from "#lib/editing/fileColumns";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { RowForm } from "../../../../../_components/RowForm";
import { shownColumns } from "../../../../../_data/columnLabel";
import { requireProduction } from "../../../../../_data/requireProduction";
import { PeopleNav } from "../../PeopleNav";
import { keepMaker } from "../actions";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata: Metadata = { title: "Somebody new in the workroom" };

const NewMaker = async ({ params }: Props) => {
  const { member, view } = await requireProduction("workroom", (await params).code);
  const { staging } = view.prepared;
  const { code, words } = staging.production;
  const columns = shownColumns(fileColumns(staging, "makers.csv"), words, { without: ["code"] });
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={code} page="/makers" />
      <div className="top">
        <h1>Somebody new</h1>
        <p className="say">
          Whoever works: on the staff, for a while, or at home. Their skills and hours say what the workroom can be levelled to.
        </p>
      </div>
      <RowForm action={keepMaker} production={code} columns={columns} row={null} fixed={{ code: "" }} />
    </ProductionFrame>
  );
};

export default NewMaker;
