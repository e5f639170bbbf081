"use client";

import { useActionState } from "react";
import { FaultTable } from "../../../../../../_components/FaultTable";
import { Said } from "../../../../../../_components/Said";
import { lookAtRow } from "./actions";
import { SheetForm } from "./SheetForm";

/** A row of a spreadsheet, read into the form: faults by their cell, and nothing is kept before it has been looked at. */
export const PasteRow = (form: React.ComponentProps<typeof SheetForm>) => {
  const [outcome, submit, waiting] = useActionState(lookAtRow, null);
  const texts = outcome?.ok ? outcome.value : undefined;
  return (
    <>
      <details className="part" open={outcome !== null && !outcome.ok}>
        <summary>Paste a row from a spreadsheet</summary>
        <form action={submit} className="board">
          <input type="hidden" name="production" value={form.production} />
          <input type="hidden" name="performer" value={form.performer} />
          <label className="field">
            Headings and one row, as they are copied; or one row in the order of the form
            <textarea name="pasted" rows={3} spellCheck={false} defaultValue={outcome && !outcome.ok ? outcome.kept.pasted : undefined} />
          </label>
          <Said outcome={outcome} />
          {outcome && !outcome.ok && outcome.faults.length > 0 && <FaultTable faults={outcome.faults} />}
          <button type="submit" className="press second" disabled={waiting}>
            {waiting ? "Reading" : "Read it into the form"}
          </button>
        </form>
      </details>
      <SheetForm key={JSON.stringify(texts)} {...form} texts={texts} />
    </>
  );
};
