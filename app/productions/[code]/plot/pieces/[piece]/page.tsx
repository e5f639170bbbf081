import type { Metadata } from "next";
import { versionMeant } from "#lib/constructions/versions";
import { fileColumns } from "#lib/editing/fileColumns";
import { rowOf } from "#lib/editing/rows";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { RowForm } from "../../../../../_components/RowForm";
import { productionHref } from "../../../../../_data/address";
import { shownColumns } from "../../../../../_data/columnLabel";
import { requireProduction } from "../../../../../_data/requireProduction";
import { may } from "../../../../../_gate/may";
import { keepPiece } from "../../actions";
import { costumeHref, pieceHref } from "../../plotWords";
import { askedPiece } from "./askedPiece";
import { Figures } from "./Figures";
import { figuresView } from "./figuresView";
import { findPiece } from "./findPiece";
import { parameterFields } from "./parameterFields";
import { TryForm } from "./TryForm";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly piece: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { code, piece } = await params;
  const { view } = await requireProduction("read", code);
  return { title: findPiece(view, piece).name };
};

/** Chosen above, with their figures. */
const TRIED = ["code", "construction", "version", "parameters"];

const PiecePage = async ({ params, searchParams }: Props) => {
  const { code, piece: part } = await params;
  const { member, view } = await requireProduction("read", code);
  const { staging } = view.prepared;
  const { words } = staging.production;
  const piece = findPiece(view, part);
  const asked = askedPiece(staging, piece, await searchParams);
  const construction = asked.construction === null ? undefined : versionMeant(staging.constructions, asked.construction, asked.version);
  const figures = figuresView(staging, asked, may(member.role, "money"));
  const base = `${productionHref(staging.production.code)}/plot`;
  const costume = staging.costumes.find((one) => one.code === piece.costume);
  const known = [...new Map(staging.constructions.map((one) => [one.code, { code: one.code, name: one.name[words] }])).values()];
  return (
    <ProductionFrame member={member} view={view} room="/plot">
      <div className="top">
        <h1>{piece.name}</h1>
        <p className="say">
          Of <a href={costumeHref(base, piece.costume)}>{costume?.name ?? piece.costume}</a>. Try how it is made: hours, net and cost of one
          follow.
        </p>
      </div>
      {may(member.role, "wardrobe") ? (
        <>
          <TryForm
            key={asked.construction}
            production={staging.production.code}
            piece={piece.code}
            costume={piece.costume}
            construction={asked.construction ?? ""}
            constructions={known.toSorted((a, b) => a.name.localeCompare(b.name))}
            parameters={parameterFields(construction, asked, words)}
            first={figures}
            address={pieceHref(base, piece.code)}
          />
          <details className="part">
            <summary>Everything else about the piece</summary>
            <RowForm
              action={keepPiece}
              production={staging.production.code}
              columns={shownColumns(fileColumns(staging, "pieces.csv"), words, { without: TRIED })}
              row={rowOf(staging, "pieces.csv", piece.code)}
              canTakeOut
            />
          </details>
        </>
      ) : (
        <section className="board narrow" aria-label="What one of it takes">
          <Figures figures={figures} />
        </section>
      )}
    </ProductionFrame>
  );
};

export default PiecePage;
