import { ActionForm } from "../../../_components/ActionForm";
import { takePiecesBack } from "./change/actions";

const ID = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/;

/** Says that a change was kept, with the press that takes the whole of it back. */
export const KeptNotice = ({ kept, production }: { readonly kept: string | readonly string[] | undefined; readonly production: string }) =>
  typeof kept === "string" &&
  ID.test(kept) && (
    <div role="status" className="slip no-print">
      <p>Kept. The plan is older than the data now: level again when you are done.</p>
      <ActionForm action={takePiecesBack} press="Take it back" busy="Taking back">
        <input type="hidden" name="production" value={production} />
        <input type="hidden" name="edit" value={kept} />
      </ActionForm>
    </div>
  );
