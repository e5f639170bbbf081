import type { Need } from "#lib/breakdown/work";
import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import { type Goods, type Measured, measureOut } from "#lib/cutting/layOut";
import { piecesOf } from "#lib/cutting/pieces";
import type { FoundCuts } from "#lib/cutting/question";
import { allowance } from "#lib/materials/allowance";
import { afterWashing, isStiff, stockLength } from "#lib/materials/handling";
import type { Lot, Material, Offer } from "#lib/materials/material";
import type { Length } from "#lib/units/quantities";
import type { NeedShare } from "./demand";

type Cloth = Pick<Goods, "lot" | "stock" | "cuttable">;

const measureNeeds = (material: Material, needs: readonly Need[], cloth: Cloth, found?: FoundCuts): Measured | null => {
  const { code, kerf, keep } = material;
  const { cuttable } = cloth;
  const sets = new Set(needs.map((need) => need.oneLotSet));
  const set = sets.size === 1 ? needs[0]!.oneLotSet : null;
  const stock = cloth.stock === null ? null : afterWashing(material, cloth.stock);
  const turned = material.grain === "free";
  const pieces = needs.flatMap((need) => piecesOf(need, material.cuttable, stock, turned));
  // A rest narrower than the cloth gives only what fits beside it.
  if (cuttable !== material.cuttable && pieces.some(({ breadth }) => breadth === null || breadth > cuttable!)) return null;
  return measureOut(pieces, { lot: cloth.lot, material: code, set, cuttable, stock, kerf, keep, turned }, found);
};

/**
 * Packs of an offer that hold a quantity with its spare, and packs that must be opened to cut its pieces, with the plan they are cut by (null
 * for what is only counted). Null when a piece is longer than what a pack holds.
 */
export const packsToCut = (
  material: Material,
  shares: readonly NeedShare[],
  offer: Offer,
  found?: FoundCuts,
): { readonly byQuantity: number; readonly byCutting: number; readonly plan: () => CuttingPlan | null } | null => {
  const byQuantity = Math.ceil(shares.reduce((sum, share) => sum + share.quantity, 0) / offer.pack);
  if (material.measure === "count") return { byQuantity, byCutting: 0, plan: () => null };
  const stock = stockLength(material, offer.pack);
  const needs = shares.map((share) => share.need);
  const cut = measureNeeds(material, needs, { lot: null, stock, cuttable: material.cuttable }, found);
  if (cut === null) return null;
  const byCutting = stock === null ? Math.ceil((cut.used + allowance(material, cut.used).shrinkage) / offer.pack) : cut.count;
  return { byQuantity, byCutting, plan: cut.plan };
};

/** Length of one piece in a lot: of soft goods the lot itself, one length; of rods and coils the longest the suppliers sell. */
const lotStock = (material: Material, lot: Lot, offers: readonly Offer[]): Length => {
  if (!isStiff(material)) return lot.quantity;
  const longest = Math.max(0, ...offers.map((offer) => offer.pack));
  return longest > 0 ? Math.min(longest, lot.quantity) : lot.quantity;
};

/** How a lot is cut. Null when its pieces are too short, too narrow, or too few, for these needs. */
export const cutFromLot = (
  material: Material,
  lot: Lot,
  needs: readonly Need[],
  offers: readonly Offer[],
  found?: FoundCuts,
): Measured | null => {
  const stock = lotStock(material, lot, offers);
  const cuttable = material.cuttable === null || lot.breadth === null ? material.cuttable : Math.min(material.cuttable, lot.breadth);
  const cut = measureNeeds(material, needs, { lot: lot.code, stock, cuttable }, found);
  return cut && cut.count <= Math.floor(lot.quantity / stock) ? cut : null;
};
