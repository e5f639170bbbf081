import type { Need } from "#lib/breakdown/work";
import { type Goods, layOut } from "#lib/cutting/layOut";
import { piecesOf } from "#lib/cutting/pieces";
import { allowance } from "#lib/materials/allowance";
import { afterWashing, stockLength } from "#lib/materials/handling";
import type { Lot, Material, Offer } from "#lib/materials/material";
import type { Length } from "#lib/units/quantities";
import type { NeedShare } from "./demand";
import type { CuttingPlan } from "./purchase";

const layOutNeeds = (material: Material, needs: readonly Need[], goods: Pick<Goods, "lot" | "stock">): CuttingPlan | null => {
  const { code, cuttable } = material;
  const sets = new Set(needs.map((need) => need.oneLotSet));
  const set = sets.size === 1 ? needs[0]!.oneLotSet : null;
  const stock = goods.stock === null ? null : afterWashing(material, goods.stock);
  const pieces = needs.flatMap((need) => piecesOf(need, cuttable, stock));
  return layOut(pieces, { lot: goods.lot, material: code, set, cuttable, stock });
};

/**
 * Packs of an offer that hold a quantity with its spare, and packs that must be opened to cut its pieces, with the plan they are cut by (null
 * for what is only counted). Null when a piece is longer than what a pack holds.
 */
export const packsToCut = (
  material: Material,
  shares: readonly NeedShare[],
  offer: Offer,
): { readonly byQuantity: number; readonly byCutting: number; readonly plan: CuttingPlan | null } | null => {
  const byQuantity = Math.ceil(shares.reduce((sum, share) => sum + share.quantity, 0) / offer.pack);
  if (material.measure === "count") return { byQuantity, byCutting: 0, plan: null };
  const stock = stockLength(material, offer.pack);
  const needs = shares.map((share) => share.need);
  const plan = layOutNeeds(material, needs, { lot: null, stock });
  if (plan === null) return null;
  const byCutting = stock === null ? Math.ceil((plan.used + allowance(material, plan.used).shrinkage) / offer.pack) : plan.count;
  return { byQuantity, byCutting, plan };
};

/** Length of one piece in a lot: the lot, or, where it came as rods or coils, the longest the suppliers sell. */
const lotStock = (material: Material, lot: Lot, offers: readonly Offer[]): Length => {
  const longest = Math.max(0, ...offers.map((offer) => stockLength(material, offer.pack) ?? lot.quantity));
  return longest > 0 ? Math.min(longest, lot.quantity) : lot.quantity;
};

/** The cutting plan of a lot. Null when its pieces are too short, or too few, for these needs. */
export const cutFromLot = (material: Material, lot: Lot, needs: readonly Need[], offers: readonly Offer[]): CuttingPlan | null => {
  const stock = lotStock(material, lot, offers);
  const plan = layOutNeeds(material, needs, { lot: lot.code, stock });
  return plan && plan.count <= Math.floor(lot.quantity / stock) ? plan : null;
};
