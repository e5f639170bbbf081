"use client";

import { useActionState } from "react";
import { FaultTable } from "../_components/FaultTable";
import { Said } from "../_components/Said";
import { keepFiles } from "./actions";
import type { Preview } from "./preview";

/** The confirmation: carries the files that were looked at, and what they were compared with. */
export const KeepForm = ({ preview }: { readonly preview: Preview }) => {
  const [outcome, submit, waiting] = useActionState(keepFiles, null);
  return (
    <form action={submit} className="part">
      <input type="hidden" name="packed" value={preview.packed} />
      <input type="hidden" name="revision" value={preview.revision ?? ""} />
      <Said outcome={outcome} />
      {outcome && !outcome.ok && outcome.faults.length > 0 && <FaultTable faults={outcome.faults} />}
      <button type="submit" className="press" disabled={waiting}>
        {waiting ? "Keeping" : `Keep ${preview.title}`}
      </button>
    </form>
  );
};
