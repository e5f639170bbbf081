import { cellKey } from "#lib/casting/castCell";
import { CastCells, type CastingBoard, castsOf } from "#lib/casting/castingGrid";
import { State } from "../../../_components/State";
import styles from "./Casting.module.css";
import { doublingNote, performerWords, placeWords } from "./cellWords";
import { cellHref } from "./gridLinks";
import type { GridView } from "./gridView";

/** On a phone: cast by cast, who dances what and who stands by. */
export const CastList = ({
  board,
  view,
  base,
  canCast,
}: {
  readonly board: CastingBoard;
  readonly view: GridView;
  readonly base: string;
  readonly canCast: boolean;
}) => {
  const cells = new CastCells(board);
  return (
    <div className={styles.byCast}>
      {castsOf(board).map((cast) => (
        <section key={cast} className="part" aria-labelledby={`cast-${cast}`}>
          <h2 id={`cast-${cast}`}>{cast.slice(0, 1).toUpperCase() + cast.slice(1)} cast</h2>
          <ul className="lines">
            {board.roles.flatMap(({ code, places }) =>
              Array.from({ length: places }, (_, index) => {
                const cell = { cast, role: code, place: index + 1, standing: "cast" } as const;
                const { performers, sizeGroup } = cells.at(cell);
                const covers = cells.at({ ...cell, standing: "cover" }).performers ?? [];
                const notes = (view.doubled.get(cellKey(cell)) ?? []).filter(({ kind }) => kind !== "apart");
                const who = performers?.length ? performerWords(board, performers) : `not cast, ${sizeGroup}`;
                return (
                  performers && (
                    <li key={cellKey(cell)}>
                      <div className="q small">{placeWords(board, cell)}</div>
                      {canCast ? (
                        <a className={styles.tap} href={cellHref(base, cell)}>
                          {who}
                        </a>
                      ) : (
                        <div>{who}</div>
                      )}
                      {covers.length > 0 && <div className="units">stands by: {performerWords(board, covers)}</div>}
                      {notes.map((one) => (
                        <div key={JSON.stringify(one)}>
                          <State code={one.kind === "clash" ? "late" : "wait"}>{doublingNote(board, one, cell)}</State>
                        </div>
                      ))}
                    </li>
                  )
                );
              }),
            )}
          </ul>
        </section>
      ))}
    </div>
  );
};
