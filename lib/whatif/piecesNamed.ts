import { garmentsOf } from "#lib/casting/garments";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";

/** Pieces by their codes or by numbers of their garments: garments of one piece are made alike, so that one stands for all of them. */
export const piecesNamed = (staging: Staging, names: readonly string[]): Result<readonly string[], string> => {
  const codes = new Map([
    ...garmentsOf(staging).map(({ number, piece }) => [number, piece] as const),
    ...staging.pieces.map(({ code }) => [code, code] as const),
  ]);
  const unknown = names.find((name) => !codes.has(name));
  if (unknown !== undefined) return failed(`"${unknown}" is neither a piece nor a garment.`);
  return ok([...new Set(names.map((name) => codes.get(name)!))]);
};
