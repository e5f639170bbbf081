import type { CastingBoard } from "#lib/casting/castingGrid";
import { castsOf } from "#lib/casting/castingGrid";
import type { Doubling } from "#lib/casting/doublings";
import { plural } from "../../../_data/plural";

/** The casting in one sentence of figures. */
export const CastingSentence = ({ board, doubled }: { readonly board: CastingBoard; readonly doubled: readonly Doubling[] }) => {
  const danced = board.casting.filter(({ standing }) => standing === "cast");
  const dancers = new Set(danced.flatMap(({ performer }) => performer ?? []));
  const places = board.roles.reduce((sum, role) => sum + role.places, 0);
  const empty = danced.filter(({ performer }) => performer === null).length;
  const covered = new Set(board.casting.filter(({ standing }) => standing === "cover").map(({ role, place }) => `${role} ${place}`));
  const uncovered = places - covered.size;
  const clashes = doubled.filter(({ kind }) => kind === "clash").length;
  return (
    <p className="say">
      <b>{plural(dancers.size, "dancer")}</b> for <b>{plural(places, "place")}</b>, {plural(castsOf(board).length, "cast")}.{" "}
      {clashes > 0 ? <b className="bad">{plural(clashes, "clash", "clashes")}. </b> : "No clash. "}
      {empty === 0 ? "Every place has somebody" : `${plural(empty, "place")} with nobody yet`}
      {uncovered === 0 ? "." : `, ${plural(uncovered, "place")} with nobody standing by.`}
    </p>
  );
};
