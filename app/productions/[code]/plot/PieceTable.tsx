import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment, Piece } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { words as wordsOf } from "#lib/words/words";
import { figures, Heads } from "../../../_components/Heads";
import { Woven } from "../../../_components/Woven";
import { garmentHref } from "../../../_data/address";
import { nameOfConstruction } from "../../../_data/names";
import { pieceHref } from "./plotWords";

const EACH = { performer: "one a performer", place: "one a place, shared by casts", role: "one for the role" } as const;
const MOST = 6;

/** The piece list of a costume: every item counted, with the garments it makes. */
export const PieceTable = ({
  pieces,
  staging,
  garments,
  works,
  base,
}: {
  readonly pieces: readonly Piece[];
  readonly staging: Staging;
  readonly garments: readonly Garment[];
  readonly works: readonly GarmentWork[];
  readonly base: string;
}) => {
  const words = wordsOf(staging.production.words);
  const minutes = new Map(works.map(({ garment, operations }) => [garment, operations.reduce((sum, one) => sum + one.minutes[1], 0)]));
  if (pieces.length === 0) return <p className="board">No piece is listed yet: every item a dancer puts on is one.</p>;
  return (
    <table className="stack">
      <caption>Work is standard work, before batches.</caption>
      <Heads of={["Piece", "How it comes about", "Made", "Garments", figures("Work")]} />
      <tbody>
        {pieces.map((piece) => {
          const own = garments.filter((garment) => garment.piece === piece.code);
          const work = own.reduce((sum, { number }) => sum + (minutes.get(number) ?? 0), 0);
          return (
            <tr key={piece.code}>
              <th scope="row" className="name b">
                <a href={pieceHref(base, piece.code)}>{piece.name}</a>
              </th>
              <td>
                {words.sources[piece.source]}
                {piece.construction && <span className="units"> {nameOfConstruction(staging, piece.construction)}</span>}
              </td>
              <td className="q">{EACH[piece.each]}</td>
              <td>
                {own.slice(0, MOST).map(({ number }) => (
                  <span key={number}>
                    <Woven number={number} href={garmentHref(staging.production.code, number)} />{" "}
                  </span>
                ))}
                {own.length > MOST && <span className="units">and {own.length - MOST} more</span>}
              </td>
              <td className="num" data-label="work">
                {work > 0 && showHours(work)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
