"use server";

import { z } from "zod";
import { failed, ok } from "#lib/result";
import { productionHref } from "../../../../../_data/address";
import { editAction } from "../../../../../_gate/editAction";
import { costumeHref } from "../../plotWords";
import { askedPiece, PARAMETER } from "./askedPiece";

/** Keeps the construction and parameters of a piece that were tried. */
export const keepTried = editAction({
  act: "wardrobe",
  input: z.looseObject({ piece: z.string().min(1), costume: z.string() }),
  make: (staging, { piece: code, ...given }) => {
    const piece = staging.pieces.find((one) => one.code === code);
    if (!piece) return failed({ message: "There is no such piece any more." });
    const next = askedPiece(staging, piece, given);
    return ok({
      title: `Piece ${piece.name}: how it is made`,
      next: { ...staging, pieces: staging.pieces.map((one) => (one.code === code ? next : one)) },
    });
  },
  to: ({ costume }, production) => costumeHref(`${productionHref(production)}/plot`, costume),
  // A fault of the parameters begins with the name of the one it is about.
  fieldOf: ({ column, problem }) => (column === "parameters" ? PARAMETER + (/^(\w+):/.exec(problem)?.[1] ?? "") : null),
});
