import type { Metadata } from "next";
import { fileColumns } from "#lib/editing/fileColumns";
import { rowOf, rowsOf } from "#lib/editing/rows";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { RegisterSheet } from "../../../_components/RegisterSheet";
import { RowForm } from "../../../_components/RowForm";
import { shownColumns } from "../../../_data/columnLabel";
import { requireProduction } from "../../../_data/requireProduction";
import { keepHolidays, keepMilestones, keepProduction, keepSizes } from "./actions";
import { named } from "./named";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("settings", (await params).code);
  return { title: `Settings, ${view.prepared.staging.production.title}` };
};

const Settings = async ({ params }: Props) => {
  const { member, view } = await requireProduction("settings", (await params).code);
  const { staging } = view.prepared;
  const { code, words } = staging.production;
  const columns = (file: string, without: readonly string[] = []) => shownColumns(fileColumns(staging, file), words, { without });
  const closed = rowsOf(staging, "absences.csv").filter(({ maker }) => maker === "");
  return (
    <ProductionFrame member={member} view={view} room="/settings">
      <div className="top">
        <h1>Settings</h1>
        <p className="say">
          What holds for the whole production. Units and words change every screen, list and printed sheet at once; lengths and money
          themselves stay as they are: another currency only renames the figures.
        </p>
      </div>
      <section aria-labelledby="production">
        <h2 id="production">The production</h2>
        <RowForm
          action={keepProduction}
          production={code}
          columns={named(columns("production.csv", ["code", "workroom"]))}
          row={rowOf(staging, "production.csv", code)}
        />
      </section>
      <section className="part" aria-labelledby="milestones">
        <h2 id="milestones">Milestones</h2>
        <RegisterSheet
          action={keepMilestones}
          production={code}
          caption="Milestones, in any order"
          columns={columns("milestones.csv")}
          rows={rowsOf(staging, "milestones.csv")}
          whole
          look="press second"
        />
      </section>
      <section className="part" aria-labelledby="closed">
        <h2 id="closed">Closed days</h2>
        <RegisterSheet
          action={keepHolidays}
          production={code}
          caption="Holidays and other days on which nobody works"
          columns={columns("absences.csv", ["maker"])}
          rows={closed}
          whole={false}
          look="press second"
        />
      </section>
      <section className="part" aria-labelledby="sizes">
        <h2 id="sizes">Size groups</h2>
        <RegisterSheet
          action={keepSizes}
          production={code}
          caption="Size groups, for places not yet cast and bodies not yet measured"
          columns={columns("sizes.csv")}
          rows={rowsOf(staging, "sizes.csv")}
          whole
          look="press second"
        />
      </section>
    </ProductionFrame>
  );
};

export default Settings;
