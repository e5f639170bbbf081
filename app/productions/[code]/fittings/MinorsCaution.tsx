import type { Staging } from "#lib/staging/staging";
import { nameOfPerformer } from "../../../_data/names";

/** The usual caution where somebody under age is fitted. */
export const MinorsCaution = ({ performers, staging }: { readonly performers: readonly string[]; readonly staging: Staging }) => {
  const minors = staging.performers
    .filter(({ code, minor }) => minor && performers.includes(code))
    .map(({ code }) => nameOfPerformer(staging, code));
  return (
    minors.length > 0 && (
      <p className="slip">
        {minors.join(", ")}: a minor is fitted with a chaperone in the room, changes in private, and is asked before being touched. Local
        rules and the company’s own come first.
      </p>
    )
  );
};
