"use client";

import { useActionState } from "react";
import { Said } from "../../../_components/Said";
import { draftFromList } from "./orders/actions";

/** The form the ticked lines of a supplier belong to. */
export const DraftPress = ({
  form,
  production,
  supplier,
}: {
  readonly form: string;
  readonly production: string;
  readonly supplier: string;
}) => {
  const [outcome, submit, waiting] = useActionState(draftFromList, null);
  return (
    <form id={form} action={submit} className="no-print">
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="supplier" value={supplier} />
      <Said outcome={outcome} />
      <p className="acts">
        <button type="submit" className="press second" disabled={waiting}>
          {waiting ? "Drafting" : `Draft an order to ${supplier}`}
        </button>
      </p>
    </form>
  );
};
