import type { Staging } from "#lib/staging/staging";
import { FieldsForm } from "../../../../_components/FieldsForm";
import { askWhatHelps } from "./actions";
import styles from "./OwnRemedies.module.css";
import { ownForms } from "./ownFields";

/** Questions of one's own, a small form each; each works before scripts load. */
export const OwnRemedies = ({ staging }: { readonly staging: Staging }) => (
  <div className={styles.forms}>
    {ownForms(staging).map(({ kind, title, fields }) => (
      <details key={kind}>
        <summary>{title}</summary>
        <FieldsForm
          action={askWhatHelps}
          fields={fields}
          hidden={{ production: staging.production.code, kind }}
          press="Try it"
          busy="Asking"
        />
      </details>
    ))}
  </div>
);
