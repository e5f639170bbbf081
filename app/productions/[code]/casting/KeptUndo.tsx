"use client";

import { startTransition, useActionState, useImperativeHandle } from "react";
import { EditAnswer } from "../../../_components/EditAnswer";
import { undoLast } from "../../../_gate/takeBackActions";

/** Takes back what the person kept last, when Ctrl+Z is pressed on the grid and nothing there is waiting to be kept. */
export const KeptUndo = ({ production, ref }: { readonly production: string; readonly ref: React.Ref<{ readonly undo: () => void }> }) => {
  const [outcome, undo] = useActionState(undoLast, null);
  useImperativeHandle(ref, () => ({
    undo: () => {
      const form = new FormData();
      form.set("production", production);
      startTransition(() => undo(form));
    },
  }));
  return (
    <form action={undo}>
      <input type="hidden" name="production" value={production} />
      <EditAnswer outcome={outcome} />
    </form>
  );
};
