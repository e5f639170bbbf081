import type { Metadata } from "next";
import { fileColumns } from "#lib/editing/fileColumns";
import { rowOf } from "#lib/editing/rows";
import { ProductionFrame } from "../../../../../../_components/ProductionFrame";
import { RowForm } from "../../../../../../_components/RowForm";
import { shownColumns } from "../../../../../../_data/columnLabel";
import { requireProduction } from "../../../../../../_data/requireProduction";
import { PeopleNav } from "../../../PeopleNav";
import { keepMaker } from "../../actions";
import { findMaker } from "../findMaker";

type Props = { readonly params: Promise<{ readonly code: string; readonly maker: string }> };

export const metadata: Metadata = { title: "Change a maker" };

const ChangeMaker = async ({ params }: Props) => {
  const { code, maker: part } = await params;
  const { member, view } = await requireProduction("workroom", code);
  const { staging } = view.prepared;
  const maker = findMaker(view, part);
  const columns = shownColumns(fileColumns(staging, "makers.csv"), staging.production.words, { without: ["code"] });
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={staging.production.code} page="/makers" />
      <div className="top">
        <h1>{maker.name}</h1>
        <p className="say">What is kept here holds for every production this workroom makes. Days away stand under Away and closed.</p>
      </div>
      <RowForm
        action={keepMaker}
        production={staging.production.code}
        columns={columns}
        row={rowOf(staging, "makers.csv", maker.code)}
        canTakeOut
      />
    </ProductionFrame>
  );
};

export default ChangeMaker;
