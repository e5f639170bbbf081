import { ascending } from "d3-array";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { CutPattern, CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { Material, MaterialKind, Quantity } from "#lib/materials/material";
import type { Staging } from "#lib/staging/staging";
import type { Length } from "#lib/units/quantities";
import type { PurchaseList } from "./purchase";

/** One roll, and what is cut from it. */
export interface Roll {
  /** 1-based among the rolls of the cloth, in the order they are opened. */
  readonly roll: number;
  /** Lot on the shelf or on order; null: of what is bought. */
  readonly lot: string | null;
  readonly dyeLot: string | null;
  /** Day a lot on order is promised for. */
  readonly arrives: PlainDate | null;
  /** Length after washing; null: cut to order, as long as what is used. */
  readonly length: Length | null;
  readonly used: Length;
  readonly garments: readonly string[];
  /** First and last day that something is cut from it; null when the plan has no place for that. */
  readonly cutFrom: PlainDate | null;
  readonly cutBy: PlainDate | null;
  readonly pattern: CutPattern;
}

/** One cloth for everybody who needs it: how many rolls, from which lots, cut by which day. */
export interface ClothOnRolls {
  readonly material: Material;
  /** Sets that must each be cut from one dye lot. */
  readonly sets: readonly string[];
  readonly garments: readonly string[];
  /** Sum of the needs, and what is bought beyond them for washing, waste and repair. */
  readonly gross: Quantity;
  readonly spare: Quantity;
  /** Off the shelf, and bought: spare included. */
  readonly fromShelf: Quantity;
  readonly bought: Quantity;
  readonly cutFrom: PlainDate | null;
  readonly cutBy: PlainDate | null;
  readonly rolls: readonly Roll[];
  readonly warnings: readonly string[];
}

const lastOf = (days: readonly (PlainDate | null)[]): PlainDate | null =>
  days
    .filter((day) => day !== null)
    .sort(ascending)
    .at(-1) ?? null;
const firstOf = (days: readonly (PlainDate | null)[]): PlainDate | null => days.filter((day) => day !== null).sort(ascending)[0] ?? null;
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Every cloth of some kinds with its rolls, by material; the net of a whole corps in one view. */
export const clothOnRolls = (
  { staging, works, purchase, cutting }: PlanOfCloth,
  kinds: readonly MaterialKind[],
  cutOn: (need: Need) => PlainDate | null,
): readonly ClothOnRolls[] => {
  const needs = works.flatMap((work) => work.needs).filter(({ quantity }) => quantity > 0);
  return staging.materials
    .filter(({ kind, measure }) => kinds.includes(kind) && measure === "length")
    .flatMap((material): readonly ClothOnRolls[] => {
      const own = needs.filter((need) => need.material === material.code);
      if (own.length === 0) return [];
      const days = new Map<string, (PlainDate | null)[]>();
      for (const need of own) days.set(need.garment, [...(days.get(need.garment) ?? []), cutOn(need)]);
      const plans = cutting.filter((plan) => plan.material === material.code);
      const patterns = plans.flatMap((plan) =>
        plan.patterns.flatMap((pattern) => Array.from({ length: pattern.times }, () => ({ plan, pattern }))),
      );
      const rolls = patterns.map(({ plan, pattern }, at) => rollOf(at + 1, plan, pattern, staging, days));
      const lines = purchase.lines.filter((line) => line.material === material.code);
      const covered = purchase.covered.filter((need) => need.material === material.code);
      const fromShelf = sum([...lines, ...covered].flatMap((one) => one.fromShelf.map(({ quantity }) => quantity)));
      return [
        {
          material,
          sets: [...new Set(own.flatMap(({ oneLotSet }) => oneLotSet ?? []))].sort(ascending),
          garments: [...days.keys()].sort(ascending),
          gross: sum(own.map(({ quantity }) => quantity)),
          spare: Math.max(0, fromShelf + sum(lines.map(({ toBuy }) => toBuy)) - sum(own.map(({ quantity }) => quantity))),
          fromShelf,
          bought: sum(lines.map(({ packs, pack }) => packs * pack)),
          cutFrom: firstOf([...days.values()].flat()),
          cutBy: lastOf([...days.values()].flat()),
          rolls,
          warnings: lines.flatMap(({ warnings }) => warnings),
        },
      ];
    })
    .sort((a, b) => ascending(a.material.code, b.material.code));
};

/** What is read of a plan. */
export interface PlanOfCloth {
  readonly staging: Pick<Staging, "materials" | "lots">;
  readonly works: readonly GarmentWork[];
  readonly purchase: PurchaseList;
  readonly cutting: readonly CuttingPlan[];
}

const rollOf = (
  roll: number,
  plan: CuttingPlan,
  pattern: CutPattern,
  { lots }: PlanOfCloth["staging"],
  days: ReadonlyMap<string, readonly (PlainDate | null)[]>,
): Roll => {
  const lot = lots.find(({ code }) => code === plan.lot);
  const garments = [...new Set(pattern.pieces.map(({ garment }) => garment))].sort(ascending);
  const cut = garments.flatMap((garment) => days.get(garment) ?? []);
  return {
    roll,
    lot: plan.lot,
    dyeLot: lot?.dyeLot || null,
    arrives: lot?.arrives ?? null,
    length: plan.stock,
    used: Math.max(0, ...pattern.pieces.map(({ y, length }) => y + length)),
    garments,
    cutFrom: firstOf(cut),
    cutBy: lastOf(cut),
    pattern,
  };
};
