import { fileColumns } from "#lib/editing/fileColumns";
import { rowOf } from "#lib/editing/rows";
import type { Staging } from "#lib/staging/staging";
import { RowForm } from "../../../../_components/RowForm";
import { shownColumns } from "../../../../_data/columnLabel";
import { keepPerformer } from "./actions";

/** A performer added, or changed where a code is given. */
export const PerformerForm = ({ staging, code }: { readonly staging: Staging; readonly code?: string }) => (
  <details className="part">
    <summary>{code === undefined ? "Add a performer" : "Name, size group and age"}</summary>
    <RowForm
      action={keepPerformer}
      production={staging.production.code}
      columns={shownColumns(fileColumns(staging, "performers.csv"), staging.production.words, { without: ["code"] })}
      row={code === undefined ? null : rowOf(staging, "performers.csv", code)}
      {...(code === undefined ? { fixed: { code: "" } } : {})}
    />
  </details>
);
