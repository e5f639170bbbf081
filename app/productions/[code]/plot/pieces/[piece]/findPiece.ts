import { notFound } from "next/navigation";
import type { Piece } from "#lib/casting/wardrobe";
import { isSlugOf } from "../../../../../_data/address";
import type { ProductionView } from "../../../../../_data/stagingPlan";

/** The piece an address stands for; any other is not found. */
export const findPiece = ({ prepared: { staging } }: ProductionView, part: string): Piece =>
  staging.pieces.find(({ code }) => isSlugOf(part, code)) ?? notFound();
