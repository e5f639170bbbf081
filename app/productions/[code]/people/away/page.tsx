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
import { keepAbsences } from "./actions";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Away and closed, ${view.prepared.staging.production.title}` };
};

const Away = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const { code, words } = staging.production;
  const sheet = {
    caption: "Away and closed",
    columns: shownColumns(fileColumns(staging, "absences.csv"), words),
    rows: rowsOf(staging, "absences.csv"),
  };
  const canType = may(member.role, "workroom");
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={code} page="/away" />
      <div className="top">
        <h1>Away and closed</h1>
        <p className="say">
          A row without a maker closes the workroom: holidays, and days on which nobody works. Calendars, plans and fittings step around
          them.
        </p>
      </div>
      {canType && <RegisterSheet action={keepAbsences} production={code} {...sheet} whole />}
      <RegisterTable {...sheet} printed={canType} />
    </ProductionFrame>
  );
};

export default Away;
