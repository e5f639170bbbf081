import { fileColumns } from "#lib/editing/fileColumns";
import { rowsOf } from "#lib/editing/rows";
import type { Staging } from "#lib/staging/staging";
import { RegisterSheet } from "../../../_components/RegisterSheet";
import { shownColumns } from "../../../_data/columnLabel";
import type { Action } from "../../../_gate/action";
import type { Edited } from "../../../_gate/editAction";

/** All rows of one of the production's files, typed into as a table. */
export const Register = ({
  staging,
  file,
  caption,
  action,
}: {
  readonly staging: Staging;
  readonly file: string;
  readonly caption: string;
  readonly action: Action<Edited>;
}) => (
  <section className="part" aria-label={caption}>
    <RegisterSheet
      action={action}
      production={staging.production.code}
      caption={caption}
      columns={shownColumns(fileColumns(staging, file), staging.production.words)}
      rows={rowsOf(staging, file)}
      whole
    />
  </section>
);
