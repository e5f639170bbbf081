import { notFound } from "next/navigation";
import { CastCells } from "#lib/casting/castingGrid";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref } from "../../../../_data/address";
import { requireProduction } from "../../../../_data/requireProduction";
import { boardOf } from "../board";
import { placeWords } from "../cellWords";
import { columnWords } from "../gridView";
import { LookForm } from "../LookForm";
import { NO_PLACE, seenCells } from "../seenCells";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const metadata = { title: "A place of the casting" };

/** One cell of the casting as a plain form. */
const Cell = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("cast", (await params).code);
  const board = boardOf(view.prepared.staging);
  const given = await searchParams;
  const text = (name: string) => [given[name] ?? ""].flat()[0] ?? "";
  const role = board.roles.find(({ code }) => code === text("role"));
  const place = Number(text("place"));
  if (!role || !Number.isInteger(place) || place < 1 || place > role.places || text("cast") === "") notFound();
  const standing = text("standing") === "cover" ? "cover" : "cast";
  const cell = { cast: text("cast"), role: role.code, place, standing } as const;
  const { performers } = new CastCells(board).at(cell);
  const base = `${productionHref(view.prepared.staging.production.code)}/casting`;
  return (
    <ProductionFrame member={member} view={view} room="/casting">
      <div className="top">
        <h1>{placeWords(board, cell)}</h1>
        <p className="say">
          {columnWords(cell)}. <a href={base}>Back to the casting</a>
        </p>
      </div>
      <LookForm production={view.prepared.staging.production.code} seen={JSON.stringify(seenCells(board, [cell]))}>
        {Object.entries(cell).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <label className="field">
          {standing === "cover" ? "Who stands by (several with Ctrl)" : "Who dances it"}
          <select
            name="performer"
            multiple={standing === "cover"}
            size={standing === "cover" ? 10 : undefined}
            defaultValue={standing === "cover" ? [...(performers ?? [])] : (performers?.[0] ?? (performers === null ? NO_PLACE : ""))}
          >
            {standing === "cast" && <option value="">nobody yet</option>}
            {standing === "cast" && <option value={NO_PLACE}>not danced in this cast</option>}
            {board.performers.map(({ code, name }) => (
              <option key={code} value={code}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </LookForm>
    </ProductionFrame>
  );
};

export default Cell;
