import type { CastingBoard } from "#lib/casting/castingGrid";
import type { Doubling } from "#lib/casting/doublings";
import { State } from "../../../_components/State";
import { doublingSentence } from "./cellWords";

const KINDS = [
  ["clash", "Two places at one time", "late", "Nobody can dance both: cast one of them again."],
  ["cover", "Standing by while dancing", "wait", "Called on, the other place is empty: a second cover, or a plan for the gap."],
  ["apart", "Two places in one evening", "note", "Possible where the changes leave time: the costume plot tells how much."],
] as const;

const MOST = 10;

/** Everybody who holds two places of one cast, by how much it hurts. */
export const DoublingList = ({ board, doubled }: { readonly board: CastingBoard; readonly doubled: readonly Doubling[] }) =>
  doubled.length > 0 && (
    <section className="part" aria-labelledby="doubled">
      <header>
        <h2 id="doubled">Two places, one body</h2>
      </header>
      <div className="cols">
        {KINDS.map(([kind, name, code, what]) => {
          const found = doubled.filter((one) => one.kind === kind);
          return (
            found.length > 0 && (
              <section key={kind}>
                <h3>
                  <State code={code}>{name}</State>
                </h3>
                <p className="cap">{what}</p>
                <ul className="lines small">
                  {found.slice(0, MOST).map((one) => (
                    <li key={JSON.stringify(one)}>{doublingSentence(board, one)}</li>
                  ))}
                </ul>
                {found.length > MOST && (
                  <details>
                    <summary>and {found.length - MOST} more</summary>
                    <ul className="lines small">
                      {found.slice(MOST).map((one) => (
                        <li key={JSON.stringify(one)}>{doublingSentence(board, one)}</li>
                      ))}
                    </ul>
                  </details>
                )}
              </section>
            )
          );
        })}
      </div>
    </section>
  );
