import type { Need } from "#lib/breakdown/work";
import { type Goods, layOut } from "#lib/cutting/layOut";
import { piecesOf } from "#lib/cutting/pieces";
import { allowance } from "#lib/materials/allowance";
import { afterWashing, stockLength } from "#lib/materials/handling";
import type { Lot, Material, Offer } from "#lib/materials/material";
import type { Length } from "#lib/units/quantities";
import type { NeedShare } from "./demand";
import type { CuttingPlan } from "./purchase";

const layOutNeeds = (material: Material, needs: readonly Need[], goods: Pick<Goods, "set" | "lot" | "stock">): CuttingPlan | null => {
  const { code, cuttable } = material;
  const stock = goods.stock === null ? null : afterWashing(material, goods.stock);
  const pieces = needs.flatMap((need) => piecesOf(need, cuttable, stock));
  return layOut(pieces, { ...goods, material: code, cuttable, stock });
};

/**
 * Packs of an offer that must be opened, with the cutting plan they are for (null for what is only counted). Enough both for the pieces as
 * they are laid out and for the quantity with its spare. Null when a piece is longer than what a pack holds.
 */
export const packsToCut = (
  material: Material,
  set: string | null,
  shares: readonly NeedShare[],
  offer: Offer,
): { readonly packs: number; readonly plan: CuttingPlan | null } | null => {
  const enough = Math.ceil(shares.reduce((sum, share) => sum + share.quantity, 0) / offer.pack);
  if (material.measure === "count") return { packs: enough, plan: null };
  const stock = stockLength(material, offer.pack);
  const needs = shares.map((share) => share.need);
  const plan = layOutNeeds(material, needs, { set, lot: null, stock });
  if (plan === null) return null;
  const opened = stock === null ? Math.ceil((plan.used + allowance(material, plan.used).shrinkage) / offer.pack) : plan.count;
  return { packs: Math.max(enough, opened), plan };
};

/** Length of one piece in a lot: the lot, or, where it came as rods or coils, the longest the suppliers sell. */
const lotStock = (material: Material, lot: Lot, offers: readonly Offer[]): Length => {
  const longest = Math.max(0, ...offers.map((offer) => stockLength(material, offer.pack) ?? lot.quantity));
  return longest > 0 ? Math.min(longest, lot.quantity) : lot.quantity;
};

/** The cutting plan of a lot. Null when its pieces are too short, or too few, for these needs. */
export const cutFromLot = (material: Material, lot: Lot, needs: readonly Need[], offers: readonly Offer[]): CuttingPlan | null => {
  const stock = lotStock(material, lot, offers);
  const sets = new Set(needs.map((need) => need.oneLotSet));
  const plan = layOutNeeds(material, needs, { set: sets.size === 1 ? needs[0]!.oneLotSet : null, lot: lot.code, stock });
  return plan && plan.count <= Math.floor(lot.quantity / stock) ? plan : null;
};
