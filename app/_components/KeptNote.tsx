import { z } from "zod";
import { editsById } from "#prisma/editing/listEdits";
import type { Member } from "../_gate/member";
import { PutBack } from "./PutBack";

/** Says on the page one was sent on to (`?kept=` with the id of the edit) what was kept, with a press that puts it back. */
export const KeptNote = async ({
  member,
  production,
  kept,
}: {
  readonly member: Member;
  readonly production: string;
  readonly kept: string | string[] | undefined;
}) => {
  const id = z.uuid().safeParse(kept);
  const edit = id.success ? (await editsById(member.company, [id.data])).get(id.data) : undefined;
  if (!edit) return null;
  return (
    <div className="slip part no-print" role="status">
      <p>
        {edit.takenBack ? "Put back" : "Kept"}: {edit.title}.
      </p>
      {!edit.takenBack && <PutBack production={production} edit={edit.id} press="Put back" />}
    </div>
  );
};
