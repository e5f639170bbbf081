"use client";

import { useActionState } from "react";
import { Said } from "../../../_components/Said";
import { takeCastingBack } from "./actions";

/** Takes what was kept last back again. */
export const TakeBack = ({ production, edit }: { readonly production: string; readonly edit: string }) => {
  const [outcome, submit, waiting] = useActionState(takeCastingBack, null);
  return (
    <form action={submit} className="acts part">
      <input type="hidden" name="production" value={production} />
      <input type="hidden" name="edit" value={edit} />
      <Said outcome={outcome} />
      {!outcome?.ok && (
        <button type="submit" className="press second" disabled={waiting}>
          {waiting ? "Taking back" : "Take it back"}
        </button>
      )}
    </form>
  );
};
