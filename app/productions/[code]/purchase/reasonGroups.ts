import { group } from "d3-array";
import type { Garment } from "#lib/casting/wardrobe";
import type { Quantity } from "#lib/materials/material";
import type { LineReason } from "#lib/purchasing/purchase";

/** What the garments of one piece need for one purpose. */
export interface ReasonGroup {
  readonly role: string;
  /** What they are called together. */
  readonly name: string;
  readonly garments: readonly string[];
  readonly quantity: Quantity;
  /** What each of them needs; null when they differ. */
  readonly each: Quantity | null;
  /** How it is reckoned; empty when they differ. */
  readonly arithmetic: string;
}

/** Reasons of a line by purpose and piece, in the order they come: they add up to the line's gross need. */
export const reasonGroups = (reasons: readonly LineReason[], garments: readonly Garment[]): readonly ReasonGroup[] => {
  const byNumber = new Map(garments.map((garment) => [garment.number, garment]));
  const pieceOf = (number: string) => byNumber.get(number)?.piece ?? number;
  return [...group(reasons, ({ role, garment }) => JSON.stringify([role, pieceOf(garment)])).values()].map((alike) => {
    const { role, garment, quantity, arithmetic } = alike[0] as LineReason;
    const name = byNumber.get(garment)?.name ?? "";
    return {
      role,
      name: alike.length > 1 ? name.replace(/ \(\d+ of \d+\)$/, "") : name,
      garments: alike.map((reason) => reason.garment),
      quantity: alike.reduce((sum, reason) => sum + reason.quantity, 0),
      each: alike.every((reason) => reason.quantity === quantity) ? quantity : null,
      arithmetic: alike.every((reason) => reason.arithmetic === arithmetic) ? arithmetic : "",
    };
  });
};
