import type { Piece } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";

/** What shall be different about some lines of the piece list. What is not there stays as it is. */
export interface PieceChange extends Partial<Pick<Piece, "source" | "each" | "due" | "weight" | "price" | "stock">> {
  /** How it is made, and the version it keeps to. */
  readonly made?: Pick<Piece, "construction" | "version">;
  /** Parameters by code; null: as in the construction. */
  readonly parameters?: Readonly<Record<string, string | null>>;
}

/**
 * The staging with the change made to the pieces named. A parameter is set only where the piece's construction has it; parameters and
 * materials that a new construction does not know fall away.
 */
export const changePieces = (staging: Staging, pieces: readonly string[], change: PieceChange): Staging => ({
  ...staging,
  pieces: staging.pieces.map((piece) => (pieces.includes(piece.code) ? changed(staging, piece, change) : piece)),
});

const changed = (staging: Staging, piece: Piece, { made, parameters, ...rest }: PieceChange): Piece => {
  const next: Piece = { ...piece, ...rest, ...made };
  const construction = next.construction === null ? null : (versionMeant(staging.constructions, next.construction, next.version) ?? null);
  const isOther = made !== undefined && (made.construction !== piece.construction || made.version !== piece.version);
  const kept = isOther ? known(next, construction) : next;
  return { ...kept, parameters: withParameters(kept.parameters, parameters ?? {}, construction) };
};

const known = (piece: Piece, construction: Construction | null): Piece => ({
  ...piece,
  parameters: only(piece.parameters, construction?.parameters.map(({ code }) => code) ?? []),
  materials: only(piece.materials, construction?.needs.map(({ role }) => role) ?? []),
});

const only = (given: Readonly<Record<string, string>>, names: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(given).filter(([name]) => names.includes(name)));

const withParameters = (
  given: Piece["parameters"],
  wanted: Readonly<Record<string, string | null>>,
  construction: Construction | null,
): Piece["parameters"] => {
  const next = new Map(Object.entries(given));
  for (const { code } of construction?.parameters ?? []) {
    const value = wanted[code];
    if (value === null) next.delete(code);
    else if (value !== undefined) next.set(code, value);
  }
  return Object.fromEntries(next);
};
