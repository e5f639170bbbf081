import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { Costume } from "#lib/casting/wardrobe";
import { fileColumns } from "#lib/editing/fileColumns";
import { KeptNote } from "../../../../../_components/KeptNote";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { RowForm } from "../../../../../_components/RowForm";
import { isSlugOf, productionHref } from "../../../../../_data/address";
import { shownColumns } from "../../../../../_data/columnLabel";
import { nameOfRole } from "../../../../../_data/names";
import { requireProduction } from "../../../../../_data/requireProduction";
import type { ProductionView } from "../../../../../_data/stagingPlan";
import { may } from "../../../../../_gate/may";
import { keepPiece } from "../../actions";
import { BackToPlot } from "../../BackToPlot";
import { PieceTable } from "../../PieceTable";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly costume: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

const find = ({ prepared: { staging } }: ProductionView, part: string): Costume =>
  staging.costumes.find(({ code }) => isSlugOf(part, code)) ?? notFound();

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { code, costume } = await params;
  const { view } = await requireProduction("read", code);
  return { title: find(view, costume).name };
};

/** What a new piece is first asked; the rest stands on its own page. */
const ASKED = ["name", "source", "construction", "set", "each", "due", "price"];

const CostumePage = async ({ params, searchParams }: Props) => {
  const { code, costume: part } = await params;
  const { member, view } = await requireProduction("read", code);
  const costume = find(view, part);
  const { staging, garments, works } = view.prepared;
  const scenes = staging.scenes.filter(({ code: scene }) =>
    staging.appearances.some((each) => each.scene === scene && each.costume === costume.code),
  );
  return (
    <ProductionFrame member={member} view={view} room="/plot">
      <div className="top">
        <h1>{costume.name}</h1>
        <p className="say">
          {nameOfRole(staging, costume.role)}
          {scenes.length > 0 && <>, in {scenes.map(({ name }) => name).join(", ")}</>}. <BackToPlot code={staging.production.code} />
        </p>
      </div>
      <KeptNote member={member} production={staging.production.code} kept={(await searchParams).kept} />
      <PieceTable
        pieces={staging.pieces.filter((piece) => piece.costume === costume.code)}
        staging={staging}
        garments={garments}
        works={works}
        base={`${productionHref(staging.production.code)}/plot`}
      />
      {may(member.role, "wardrobe") && (
        <details className="part">
          <summary>Add a piece</summary>
          <RowForm
            action={keepPiece}
            production={staging.production.code}
            columns={shownColumns(fileColumns(staging, "pieces.csv"), staging.production.words, { only: ASKED })}
            row={null}
            fixed={{ code: "", costume: costume.code }}
          />
        </details>
      )}
    </ProductionFrame>
  );
};

export default CostumePage;
