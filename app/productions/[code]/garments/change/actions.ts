"use server";

import * as z from "zod";
import { failed, ok } from "#lib/result";
import { changePieces, type PieceChange } from "#lib/whatif/changePieces";
import { productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { editAction } from "../../../../_gate/editAction";
import { given } from "../garmentQuery";
import { readChange } from "./changeInput";

const keepInput = z.object({
  /** Codes, one to a line. */
  pieces: z.string().min(1),
  /** The form as the address has it. */
  asked: z.string().min(1).max(20_000),
  /** Where to go on, inside the production. */
  to: z.string().regex(/^\/garments(\/[\w%.~-]+)?(\?.*)?$/),
});

/** In the history. */
const SAID: Readonly<Record<keyof PieceChange, string>> = {
  source: "where it comes from",
  made: "made as",
  each: "one for whom",
  due: "wanted for",
  weight: "priority",
  price: "price",
  stock: "from stock",
  parameters: "how it is made",
};

/** Keeps a change of many lines of the piece list as one edit. */
export const keepPieces = editAction({
  act: "wardrobe",
  input: keepInput,
  make: (staging, { pieces, asked }) => {
    const { change, faults } = readChange(given(new URLSearchParams(asked).entries()), staging);
    const [fault] = Object.values(faults);
    if (fault !== undefined) return failed({ message: fault });
    const codes = pieces.split("\n");
    const names = staging.pieces.filter(({ code }) => codes.includes(code)).map(({ name }) => name);
    if (names.length === 0) return failed({ message: "These lines of the piece list are gone." });
    const title = `${names.length === 1 ? names[0] : plural(names.length, "line")} of the piece list: ${Object.keys(change)
      .map((field) => SAID[field as keyof PieceChange])
      .join(", ")}`;
    return ok({ title, next: changePieces(staging, codes, change) });
  },
  to: ({ to }, production) => productionHref(production) + to,
});
