import type { CastingBoard } from "#lib/casting/castingGrid";
import type { Staging } from "#lib/staging/staging";

/** What of a staging the casting's pages send to the browser: nothing private. */
export const boardOf = ({ casting, performers, roles, scenes, appearances }: Staging): CastingBoard => ({
  casting,
  performers,
  roles,
  scenes,
  appearances,
});
