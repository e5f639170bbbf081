import type { Piece } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";

/**
 * A staging with a further version of a construction, and nothing moved: a piece that is made by the newest so far keeps to it.
 * Fails when there is such a version already, or a newer one: versions never change.
 */
export const withVersion = (staging: Staging, version: Construction): Result<Staging, string> => {
  const { code } = version;
  const newest = versionMeant(staging.constructions, code, null);
  if (newest && newest.version >= version.version)
    return failed(
      `${code} has version ${newest.version} already: give the changed one a higher version, for example ${newest.version + 1}.`,
    );
  const pieces = staging.pieces.map((piece) =>
    newest && piece.construction === code && piece.version === null ? { ...piece, version: newest.version } : piece,
  );
  return ok({ ...staging, pieces, constructions: [...staging.constructions, version] });
};

/**
 * Pieces made by a version of the construction from now on: all of that construction, or those listed. A piece moved to the newest follows
 * the newest from then on. Fails when there is no such version, or a listed piece is not made by the construction.
 */
export const moveToVersion = (
  staging: Staging,
  code: string,
  version: number,
  pieces: "all" | readonly string[],
): Result<Staging, string> => {
  const known = versionsOf(staging.constructions, code);
  if (!known.some((one) => one.version === version)) return failed(`There is no version ${version} of ${code}.`);
  const wrong =
    pieces === "all" ? undefined : pieces.find((one) => !staging.pieces.some((piece) => isOf(piece, code) && piece.code === one));
  if (wrong !== undefined) return failed(`"${wrong}" is not a piece made as ${code}.`);
  const kept = version === known.at(-1)!.version ? null : version;
  const moved = (piece: Piece) => isOf(piece, code) && (pieces === "all" || pieces.includes(piece.code));
  return ok({ ...staging, pieces: staging.pieces.map((piece) => (moved(piece) ? { ...piece, version: kept } : piece)) });
};

const isOf = ({ construction }: Piece, code: string) => construction === code;
