import type { Metadata } from "next";
import { fileColumns } from "#lib/editing/fileColumns";
import { rowsOf } from "#lib/editing/rows";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { RegisterSheet } from "../../../../_components/RegisterSheet";
import { RegisterTable } from "../../../../_components/RegisterTable";
import { shownColumns } from "../../../../_data/columnLabel";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { PeopleNav } from "../PeopleNav";
import { keepMachines } from "./actions";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Machines, ${view.prepared.staging.production.title}` };
};

const Machines = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const { code, words } = staging.production;
  const sheet = {
    caption: "Machines",
    columns: shownColumns(fileColumns(staging, "machines.csv"), words),
    rows: rowsOf(staging, "machines.csv"),
  };
  const canType = may(member.role, "workroom");
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={code} page="/machines" />
      <div className="top">
        <h1>Machines</h1>
        <p className="say">
          Machines, vats, tables and fitting rooms, those that are alike in one row. An operation asks for a kind; a fitting room is of the
          kind fitting room.
        </p>
      </div>
      {canType && <RegisterSheet action={keepMachines} production={code} {...sheet} whole />}
      <RegisterTable {...sheet} printed={canType} />
    </ProductionFrame>
  );
};

export default Machines;
