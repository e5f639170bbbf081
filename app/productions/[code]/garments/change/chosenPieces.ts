import type { Garment, Piece } from "#lib/casting/wardrobe";
import type { ProductionView } from "../../../../_data/stagingPlan";
import { type GarmentQuery, readQuery } from "../garmentQuery";
import { garmentRows } from "../garmentRows";
import { selectGarments } from "../selectGarments";

type Given = Readonly<Record<string, string | readonly string[] | undefined>>;

export interface ChosenPieces {
  /** Garments chosen by hand, or all that the list finds. */
  readonly numbers: readonly string[];
  /** The lines of the piece list they come from. */
  readonly pieces: readonly Piece[];
  /** Every garment of those lines: they change together. */
  readonly garments: readonly Garment[];
  /** Null when they were chosen by hand. */
  readonly list: GarmentQuery | null;
}

/** What an address chooses: garments by number, or with `all` whatever the list finds. Numbers that are no more are passed over. */
export const chosenPieces = (view: ProductionView, given: Given): ChosenPieces => {
  const { garments, staging } = view.prepared;
  const byHand = new Set(typeof given.number === "string" ? [given.number] : (given.number ?? []));
  const list = byHand.size === 0 && given.all !== undefined ? readQuery(given) : null;
  const found = list ? new Set(selectGarments(garmentRows(view), list).map(({ number }) => number)) : byHand;
  const chosen = garments.filter(({ number }) => found.has(number));
  const codes = new Set(chosen.map(({ piece }) => piece));
  return {
    numbers: chosen.map(({ number }) => number),
    pieces: staging.pieces.filter(({ code }) => codes.has(code)),
    garments: garments.filter(({ piece }) => codes.has(piece)),
    list,
  };
};
