import { showWall } from "#lib/calendar/showDay";
import type { Staging } from "#lib/staging/staging";
import type { Move, Standing } from "#lib/whatif/planMoves";
import { garmentHref } from "../_data/address";
import { nameOfMaker } from "../_data/names";
import { Heads } from "./Heads";
import { Wide } from "./Wide";
import { Woven } from "./Woven";

const Place = ({ at, staging }: { readonly at: Standing | null; readonly staging: Staging }) =>
  at === null || at.start === null ? (
    <span className="q">no place</span>
  ) : (
    <>
      {showWall(at.start)}, {nameOfMaker(staging, at.who)}
    </>
  );

/** Work that stands elsewhere in another plan: where it was, and where it is. */
export const MovedLines = ({ moves, staging }: { readonly moves: readonly Move[]; readonly staging: Staging }) => (
  <Wide label="Moved work">
    <table className="stack">
      <Heads of={["Work", "Garments", "Was", "Becomes"]} />
      <tbody>
        {moves.map(({ key, name, garments, before, after }) => (
          <tr key={key}>
            <th scope="row" className="name">
              {name}
            </th>
            <td>
              {garments.map((number) => (
                <Woven key={number} number={number} href={garmentHref(staging.production.code, number)} />
              ))}
            </td>
            <td className="q" data-label="Was">
              <Place at={before} staging={staging} />
            </td>
            <td className="b" data-label="Becomes">
              <Place at={after} staging={staging} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </Wide>
);
