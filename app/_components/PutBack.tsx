"use client";

import { useActionState } from "react";
import { takeEditBack } from "../_gate/takeBackActions";
import { EditAnswer } from "./EditAnswer";

/** Takes an edit of the history back, or does again what was taken back. */
export const PutBack = ({ production, edit, press }: { readonly production: string; readonly edit: string; readonly press: string }) => {
  const [outcome, submit, waiting] = useActionState(takeEditBack, null);
  return (
    <form action={submit} className="no-print">
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="edit" value={edit} />
      <EditAnswer outcome={outcome} />
      {!outcome?.ok && (
        <button type="submit" className="press second" disabled={waiting}>
          {waiting ? "One moment" : press}
        </button>
      )}
    </form>
  );
};
