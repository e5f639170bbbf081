import { fileColumns } from "#lib/editing/fileColumns";
import { rowsOf } from "#lib/editing/rows";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { RegisterSheet } from "../../../_components/RegisterSheet";
import { RegisterTable } from "../../../_components/RegisterTable";
import { shownColumns } from "../../../_data/columnLabel";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { PeopleNav } from "./PeopleNav";

/** A file of the workroom as a page: typed into by whoever may, read by everybody. */
export const PeopleRegister = async ({
  code,
  file,
  page,
  heading,
  action,
  children,
}: {
  readonly code: string;
  readonly file: string;
  readonly page: React.ComponentProps<typeof PeopleNav>["page"];
  readonly heading: string;
  readonly action: React.ComponentProps<typeof RegisterSheet>["action"];
  /** The sentence at the top. */
  readonly children: React.ReactNode;
}) => {
  const { member, view } = await requireProduction("read", code);
  const { staging } = view.prepared;
  const { production } = staging;
  const sheet = {
    caption: heading,
    columns: shownColumns(fileColumns(staging, file), production.words),
    rows: rowsOf(staging, file),
  };
  const canType = may(member.role, "workroom");
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={production.code} page={page} />
      <div className="top">
        <h1>{heading}</h1>
        <p className="say">{children}</p>
      </div>
      {canType && <RegisterSheet action={action} production={production.code} {...sheet} whole />}
      <RegisterTable {...sheet} printed={canType} />
    </ProductionFrame>
  );
};
