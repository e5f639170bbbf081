"use client";

import { useActionState } from "react";
import { EditAnswer } from "../../../../_components/EditAnswer";
import { keepPieces } from "./actions";

/** Keeps what is previewed: one edit, one undo. */
export const KeepChange = ({ hidden }: { readonly hidden: Readonly<Record<string, string>> }) => {
  const [outcome, submit, waiting] = useActionState(keepPieces, null);
  return (
    <form action={submit} className="part">
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <EditAnswer outcome={outcome} />
      <button type="submit" className="press" disabled={waiting}>
        {waiting ? "Keeping" : "Keep"}
      </button>
    </form>
  );
};
