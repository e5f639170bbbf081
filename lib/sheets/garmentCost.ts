import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { PlannedTask } from "#lib/planning/stagingPlan";
import type { PurchaseList } from "#lib/purchasing/purchase";
import type { Staging } from "#lib/staging/staging";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { standardHourCost, standardLabour } from "#lib/whatif/labourRate";

/** What one garment is reckoned to cost. */
export interface GarmentCost {
  /** Likely minutes and fittings at the mean cost of the makers who have each skill. */
  readonly labour: MinorUnits;
  /** Its part of each line of the purchase list, by what it needs of it; what the shelf gives costs nothing here. */
  readonly goods: MinorUnits;
  /** Of one that is hired or bought. */
  readonly price: MinorUnits;
  readonly total: MinorUnits;
}

export const garmentCost = (
  garment: Garment,
  work: GarmentWork | null,
  staging: Pick<Staging, "makers">,
  purchase: Pick<PurchaseList, "lines">,
): GarmentCost => {
  const labour = work ? standardLabour(staging.makers, [work]).cost : 0;
  const shares = purchase.lines.map(({ cost, gross, reasons }) => {
    const own = reasons.filter((reason) => reason.garment === garment.number).reduce((sum, { quantity }) => sum + quantity, 0);
    return gross === 0 ? 0 : (cost * own) / gross;
  });
  const goods = Math.round(shares.reduce((sum, share) => sum + share, 0));
  const price = garment.price ?? 0;
  return { labour, goods, price, total: labour + goods + price };
};

/** Work done so far on one garment: its even share of what a batch took. */
export interface WorkedSoFar {
  readonly minutes: Minutes;
  /** At the rate of the maker the plan has for the task, or the mean of those who have the skill. */
  readonly cost: MinorUnits;
}

export interface WorkedTask extends Pick<PlannedTask, "garments" | "maker" | "skill"> {
  /** Minutes really worked on it, on all its garments. */
  readonly worked: Minutes;
}

/** What was worked on a garment, by the tasks that are about it, and what that cost; minutes and money are rounded once. */
export const workedSoFar = (tasks: readonly WorkedTask[], makers: Staging["makers"]): WorkedSoFar => {
  const rates = new Map(makers.map(({ code, costPerHour }) => [code, costPerHour]));
  const shares = tasks.map(({ garments, maker, skill, worked }) => {
    const minutes = worked / Math.max(1, garments.length);
    return { minutes, cost: (minutes * (rates.get(maker ?? "") ?? standardHourCost(makers, skill) ?? 0)) / 60 };
  });
  return {
    minutes: Math.round(shares.reduce((sum, { minutes }) => sum + minutes, 0)),
    cost: Math.round(shares.reduce((sum, { cost }) => sum + cost, 0)),
  };
};
