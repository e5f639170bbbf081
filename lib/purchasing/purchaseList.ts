import { ascending } from "d3-array";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { FoundCuts } from "#lib/cutting/question";
import { whyNobody } from "./choice";
import { lineOf, reasonOf, shelfOf, toBuyOf } from "./line";
import type { Supplied } from "./promise";
import type { BoughtGarment, CoveredNeed, LineReason, PurchaseLine, PurchaseList } from "./purchase";
import { type Carriage, carriageFor } from "./suppliers";
import { type GoodsOf, type MaterialSupply, supplyOf } from "./supply";

interface PurchaseOptions {
  readonly garments?: readonly Garment[];
  readonly found?: FoundCuts;
}

/**
 * What must be bought for these works and how it is cut. Needs are rolled up by material and dye-lot set, lots on hand or on order are
 * promised first, and the rest of a material is one order to whoever is cheapest for it. `neededBy` tells the first day a need is cut, `found`
 * what searches for better cutting have come to; of `garments`, those bought or hired whole count with their price.
 */
export const purchaseList = (
  staging: GoodsOf,
  works: readonly GarmentWork[],
  neededBy: (need: Need) => PlainDate | null,
  { garments = [], found }: PurchaseOptions = {},
): { readonly purchase: PurchaseList; readonly cutting: readonly CuttingPlan[] } => {
  const { supplies, unlisted } = supplyOf(staging, works, found);
  const lines: PurchaseLine[] = [];
  const unoffered: PurchaseList["unoffered"][number][] = [];
  for (const [material, needs] of unlisted) {
    const toBuy = needs.reduce((sum, need) => sum + need.quantity, 0);
    unoffered.push({ material, toBuy, reasons: needs.map(reasonOf), why: `${material} is not among the materials.` });
  }
  for (const { material, supplied, choices, offers } of supplies) {
    const short = supplied.filter(({ toBuy }) => toBuy.length > 0);
    if (short.length === 0) continue;
    const [choice] = choices;
    if (choice) lines.push(lineOf(short, choice, staging.production, neededBy));
    else
      unoffered.push({ material: material.code, toBuy: toBuyOf(short), reasons: reasonsOf(short), why: whyNobody(material.name, offers) });
  }
  const last = "\uffff";
  lines.sort(
    (a, b) => ascending(a.supplier, b.supplier) || ascending(a.orderBy ?? last, b.orderBy ?? last) || ascending(a.material, b.material),
  );
  const carriage = carriageOf(supplies, lines);
  const bought = boughtGarments(garments);
  const materials = [...lines, ...carriage].reduce((sum, { cost }) => sum + cost, 0);
  const total = materials + bought.reduce((sum, { price }) => sum + price, 0);
  const covered = supplies.flatMap(({ supplied }) => supplied.filter(({ toBuy }) => toBuy.length === 0).map(coveredNeed));
  const cutting = supplies.flatMap(({ fromLots, choices }) => [...fromLots(), choices[0]?.plan() ?? []].flat());
  return { purchase: { lines, unoffered, covered, carriage, garments: bought, materials, total }, cutting };
};

/** One order of each supplier, and each further delivery of a line one more. */
const carriageOf = (supplies: readonly MaterialSupply[], lines: readonly PurchaseLine[]): readonly Carriage[] => {
  const further = new Map<string, number>();
  for (const { supplier, deliveries } of lines) further.set(supplier, (further.get(supplier) ?? 0) + deliveries.length - 1);
  const taken = supplies.flatMap(({ choices }) => choices[0] ?? []);
  return carriageFor(taken).map(({ supplier, cost }) => ({ supplier, cost: cost * (1 + (further.get(supplier) ?? 0)) }));
};

const boughtGarments = (garments: readonly Garment[]): readonly BoughtGarment[] =>
  garments.flatMap(({ number, name, source, price }) => (price === null ? [] : [{ garment: number, name, source, price }]));

const reasonsOf = (supplied: readonly Supplied[]): readonly LineReason[] =>
  supplied.flatMap(({ demand }) => demand.shares.map((share) => reasonOf(share.need)));

const coveredNeed = (supplied: Supplied): CoveredNeed => {
  const { material, set, gross } = supplied.demand;
  const { code, name, measure } = material;
  return { material: code, name, measure, oneLotSet: set, gross, fromShelf: shelfOf(supplied.promised), reasons: reasonsOf([supplied]) };
};
