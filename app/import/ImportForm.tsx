"use client";

import { useActionState } from "react";
import { FaultTable } from "../_components/FaultTable";
import { Said } from "../_components/Said";
import { lookAtFiles } from "./actions";
import { KeepForm } from "./KeepForm";
import { PreviewTable } from "./PreviewTable";

/** Choose files, see every fault or what would change, and only then keep it. */
export const ImportForm = () => {
  const [outcome, submit, waiting] = useActionState(lookAtFiles, null);
  return (
    <>
      <form action={submit} className="board">
        <label className="field">
          Files of one production, or a zip
          <input type="file" name="files" multiple accept=".csv,.json,.zip" required />
        </label>
        <button type="submit" className={outcome?.ok ? "press second" : "press"} disabled={waiting}>
          {waiting ? "Looking" : "Look at them"}
        </button>
      </form>
      <div className="part" aria-live="polite">
        {outcome && !outcome.ok && (
          <>
            <Said outcome={outcome} />
            {outcome.faults.length > 0 && <FaultTable faults={outcome.faults} />}
          </>
        )}
        {outcome?.ok && (
          <>
            <PreviewTable preview={outcome.value} />
            <KeepForm key={outcome.value.packed} preview={outcome.value} />
          </>
        )}
      </div>
    </>
  );
};
