import { castsOf } from "#lib/casting/castingGrid";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref } from "../../../../_data/address";
import { requireProduction } from "../../../../_data/requireProduction";
import { boardOf } from "../board";
import { LookForm } from "../LookForm";
import { seenCells } from "../seenCells";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata = { title: "Fill places from a list" };

/** Places of a role filled downwards from a list of names. */
const Places = async ({ params }: Props) => {
  const { member, view } = await requireProduction("cast", (await params).code);
  const { staging } = view.prepared;
  const board = boardOf(staging);
  const every = castsOf(board).flatMap((cast) =>
    board.roles.flatMap(({ code: role, places }) =>
      Array.from({ length: places }, (_, at) => ({ cast, role, place: at + 1, standing: "cast" as const })),
    ),
  );
  return (
    <ProductionFrame member={member} view={view} room="/casting">
      <div className="top">
        <h1>Fill places from a list</h1>
        <p className="say">
          One name a line, from the first place on; an empty line leaves a place with nobody yet.{" "}
          <a href={`${productionHref(staging.production.code)}/casting`}>Back to the casting</a>
        </p>
      </div>
      <LookForm production={staging.production.code} seen={JSON.stringify(seenCells(board, every))}>
        <label className="field">
          Role
          <select name="role">
            {board.roles.map(({ code, name, places }) => (
              <option key={code} value={code}>
                {name}, {places}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          Cast
          <input name="cast" list="casts" required maxLength={60} defaultValue={castsOf(board)[0]} />
          <datalist id="casts">
            {castsOf(board).map((cast) => (
              <option key={cast} value={cast} />
            ))}
          </datalist>
        </label>
        <label className="field">
          From place
          <input name="from" type="number" min={1} max={200} defaultValue={1} />
        </label>
        <input type="hidden" name="standing" value="cast" />
        <label className="field">
          Names, one a line
          <textarea name="names" rows={12} required spellCheck={false} />
        </label>
      </LookForm>
    </ProductionFrame>
  );
};

export default Places;
