import type { Garment, Wearer } from "#lib/casting/wardrobe";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { type FittingChange, fittingChanges } from "./fittingChanges";
import { type GarmentPair, garmentPairs } from "./garmentPairs";
import { type MaterialChange, materialChanges } from "./materialChanges";
import { type MoneyChange, moneyChanges } from "./moneyChanges";

/** What is different from one plan to another, for example from designs alone to the casting. */
export interface PlanComparison {
  /** In the order after, then those that are gone. */
  readonly garments: readonly GarmentChange[];
  /** By material: the sums of the garments'. */
  readonly materials: readonly MaterialChange[];
  readonly fittings: readonly FittingChange[];
  readonly money: readonly MoneyChange[];
  readonly before: PlanTotals;
  readonly after: PlanTotals;
}

export interface GarmentChange {
  readonly piece: string;
  readonly name: string;
  readonly before: GarmentFigures | null;
  readonly after: GarmentFigures | null;
  /** Every material it needs before or after. */
  readonly materials: readonly MaterialChange[];
  readonly changed: boolean;
}

export interface GarmentFigures {
  readonly number: string;
  /** Who wears it: performers by code, places nobody is cast in by size group. */
  readonly wearers: readonly string[];
  /** Standard minutes of its tasks, its share of batches included. */
  readonly minutes: Minutes;
  readonly fittingMinutes: Minutes;
  readonly finish: number | null;
  readonly minutesLate: Minutes;
}

export interface PlanTotals {
  readonly garments: number;
  /** Standard minutes on garments: the sum of theirs. */
  readonly minutes: Minutes;
  /** Samples and other work that is on no garment. */
  readonly otherMinutes: Minutes;
  readonly fittings: number;
  readonly fittingMinutes: Minutes;
  readonly cost: MinorUnits;
  /** Wall-clock minute at which the last work ends. */
  readonly finish: number;
  readonly lateGarments: number;
  readonly overtimeMinutes: Minutes;
}

/** Two plans of one production side by side. Both should be planned on the same day, with the same rounds and seed. */
export const compareStagingPlans = (before: StagingPlan, after: StagingPlan): PlanComparison => {
  const pairs = garmentPairs(before, after);
  const fittings = pairs.map((pair) => fittingChanges(pair, before, after));
  return {
    garments: pairs.map((pair, at) => garmentChange(pair, fittings[at]!, before, after)),
    materials: materialChanges(
      before.works.flatMap((work) => work.needs),
      after.works.flatMap((work) => work.needs),
    ),
    fittings: fittings.flat(),
    money: moneyChanges(before, after),
    before: totalsOf(before),
    after: totalsOf(after),
  };
};

const garmentChange = (pair: GarmentPair, fittings: readonly FittingChange[], before: StagingPlan, after: StagingPlan): GarmentChange => {
  const one = pair.after ?? pair.before;
  const was = figuresOf(before, pair.before, total(fittings, "minutesBefore"));
  const is = figuresOf(after, pair.after, total(fittings, "minutesAfter"));
  const materials = materialChanges(needsOf(before, pair.before), needsOf(after, pair.after));
  const changed =
    JSON.stringify(was) !== JSON.stringify(is) ||
    materials.some((change) => change.before !== change.after) ||
    fittings.some(({ change }) => change !== "kept");
  return { piece: one.piece, name: one.name, before: was, after: is, materials, changed };
};

const total = (fittings: readonly FittingChange[], side: "minutesBefore" | "minutesAfter") =>
  fittings.reduce((sum, fitting) => sum + fitting[side], 0);

const needsOf = ({ works }: StagingPlan, garment: Garment | null) =>
  garment ? (works.find((work) => work.garment === garment.number)?.needs ?? []) : [];

const figuresOf = (plan: StagingPlan, garment: Garment | null, fittingMinutes: Minutes): GarmentFigures | null => {
  const state = garment && plan.garmentStates.find((one) => one.garment === garment.number);
  if (!garment || !state) return null;
  const { minutes, finish, minutesLate } = state;
  return { number: garment.number, wearers: garment.wearers.map(whoWears), minutes, fittingMinutes, finish, minutesLate };
};

const whoWears = ({ performer, sizeGroup, standing }: Wearer): string =>
  `${performer ?? `size ${sizeGroup}`}${standing === "cover" ? " (cover)" : ""}`;

const totalsOf = ({ summary, works, tasks }: StagingPlan): PlanTotals => {
  const fittings = works.flatMap((work) => work.fittings);
  return {
    garments: summary.garments,
    minutes: minutesOf(tasks.filter((task) => task.garments.length > 0)),
    otherMinutes: minutesOf(tasks.filter((task) => task.garments.length === 0)),
    fittings: fittings.length,
    fittingMinutes: fittings.reduce((sum, { minutes }) => sum + minutes, 0),
    cost: summary.labourCost + summary.materialCost,
    finish: summary.finish,
    lateGarments: summary.lateGarments,
    overtimeMinutes: summary.overtimeMinutes,
  };
};

const minutesOf = (tasks: StagingPlan["tasks"]): Minutes => tasks.reduce((sum, task) => sum + task.minutes, 0);
