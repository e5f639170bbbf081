import { ascending } from "d3-array";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Production, Staging } from "#lib/staging/staging";
import { whyNobody } from "./choice";
import type { Supplied } from "./promise";
import type { CoveredNeed, CuttingPlan, LineReason, PurchaseLine, PurchaseList } from "./purchase";
import { type MaterialSupply, supplyOf } from "./supply";
import { lineArithmetic } from "./words";

/**
 * What must be bought for these works and how it is cut. Needs are rolled up by material and dye-lot set, lots on hand or on order are
 * promised first, and the rest of a material is bought from whoever is cheapest for it. `neededBy` tells the first day a need is cut.
 */
export const purchaseList = (
  staging: Pick<Staging, "materials" | "offers" | "lots" | "production">,
  works: readonly GarmentWork[],
  neededBy: (need: Need) => PlainDate | null,
): { readonly purchase: PurchaseList; readonly cutting: readonly CuttingPlan[] } => {
  const { supplies, unlisted } = supplyOf(staging, works);
  const lines: PurchaseLine[] = [];
  const covered: CoveredNeed[] = [];
  const unoffered: PurchaseList["unoffered"][number][] = [];
  for (const [material, needs] of unlisted) {
    const toBuy = needs.reduce((sum, need) => sum + need.quantity, 0);
    unoffered.push({ material, toBuy, reasons: needs.map(reasonOf), why: `${material} is not among the materials.` });
  }
  for (const supply of supplies) {
    for (const [at, supplied] of supply.supplied.entries()) {
      if (supplied.toBuy.length === 0) covered.push(coveredNeed(supplied));
      else if (supply.choices.length === 0) unoffered.push(unofferedNeed(supply, supplied));
      else lines.push(lineOf(supply, at, staging.production, neededBy));
    }
  }
  const last = "\uffff";
  lines.sort(
    (a, b) =>
      ascending(a.supplier, b.supplier) ||
      ascending(a.orderBy ?? last, b.orderBy ?? last) ||
      ascending(a.material, b.material) ||
      ascending(a.oneLotSet ?? last, b.oneLotSet ?? last),
  );
  const total = lines.reduce((sum, line) => sum + line.cost, 0);
  const cutting = supplies.flatMap(({ fromLots, choices }) => [...fromLots, ...(choices[0]?.plans ?? []).filter((plan) => plan !== null)]);
  return { purchase: { lines, unoffered, covered, total }, cutting };
};

const reasonOf = ({ garment, role, quantity, arithmetic }: Need): LineReason => ({ garment, role, quantity, arithmetic });

const reasonsOf = ({ demand }: Supplied): readonly LineReason[] => demand.shares.map((share) => reasonOf(share.need));

/** What each lot gives, in the order the lots are taken. */
const shelfOf = ({ promised }: Supplied): PurchaseLine["fromShelf"] => {
  const byLot = new Map<string, number>();
  for (const { lot, quantity } of promised) byLot.set(lot.code, (byLot.get(lot.code) ?? 0) + quantity);
  return [...byLot].map(([lot, quantity]) => ({ lot, quantity }));
};

const toBuyOf = ({ toBuy }: Supplied): number => toBuy.reduce((sum, share) => sum + share.quantity, 0);

const coveredNeed = (supplied: Supplied): CoveredNeed => {
  const { material, set, gross } = supplied.demand;
  const { code, name, measure } = material;
  return { material: code, name, measure, oneLotSet: set, gross, fromShelf: shelfOf(supplied), reasons: reasonsOf(supplied) };
};

const unofferedNeed = ({ material, offers }: MaterialSupply, supplied: Supplied): PurchaseList["unoffered"][number] => ({
  material: material.code,
  toBuy: toBuyOf(supplied),
  reasons: reasonsOf(supplied),
  why: whyNobody(material.name, offers),
});

const lineOf = (supply: MaterialSupply, at: number, production: Production, neededBy: (need: Need) => PlainDate | null): PurchaseLine => {
  const { material } = supply;
  const supplied = supply.supplied[at]!;
  const { offer, order, packs } = supply.choices[0]!;
  const { set, gross, shrinkage, spare } = supplied.demand;
  const days = supplied.toBuy.map((share) => neededBy(share.need)).filter((day) => day !== null);
  const first = days.sort(ascending)[0] ?? null;
  const reckoned = {
    supplier: offer.supplier,
    material: material.code,
    name: material.name,
    colour: material.colour,
    measure: material.measure,
    oneLotSet: set,
    gross,
    fromShelf: shelfOf(supplied),
    shrinkage,
    spare,
    toBuy: toBuyOf(supplied),
    packs: packs[at]!,
    pack: offer.pack,
    pricePerPack: order.pricePerPack,
    cost: packs[at]! * order.pricePerPack,
    reasons: reasonsOf(supplied),
  };
  const oneLot = set !== null && reckoned.packs > 1 ? [`Ask for all ${reckoned.packs} packs from one dye lot: ${set} must match.`] : [];
  return {
    ...reckoned,
    neededBy: first,
    orderBy: first === null ? null : addDays(first, -offer.leadDays - offer.inspectionDays),
    arithmetic: lineArithmetic(reckoned, material, production),
    warnings: [...supplied.warnings, ...oneLot],
  };
};
