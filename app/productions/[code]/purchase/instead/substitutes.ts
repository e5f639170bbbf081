import type { GarmentWork } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Material } from "#lib/materials/material";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { readyFrom } from "#lib/purchasing/choice";
import { supplyOf } from "#lib/purchasing/supply";
import type { MinorUnits } from "#lib/units/quantities";

/** What it would do to take another material for all that is short of one. */
export interface Substitute {
  readonly material: Material;
  /** What both materials cost then, less what they cost now; null when what is missing cannot be bought. */
  readonly more: MinorUnits | null;
  /** The shelf gives all of it. */
  readonly onHand: boolean;
  /** First day it may be cut when ordered today; null when it cannot be had. */
  readonly ready: PlainDate | null;
}

/** How alike a material must be to be thought of: the same kind, sold the same way. */
const isAlike = (one: Material, other: Material): boolean =>
  one.code !== other.code && one.kind === other.kind && one.measure === other.measure;

const swapped = (works: readonly GarmentWork[], from: string, to: string): readonly GarmentWork[] =>
  works.map((work) => ({ ...work, needs: work.needs.map((need) => (need.material === from ? { ...need, material: to } : need)) }));

/**
 * Every material alike that could stand in for one, with its effect on money and day: all needs of it are laid on the other and reckoned anew.
 * Widths, washing, packs and lots of the other count; whether it looks and hangs the same, only an eye can say.
 */
export const substitutesFor = (
  plan: Pick<StagingPlan, "staging">,
  works: readonly GarmentWork[],
  code: string,
  today: PlainDate,
): readonly Substitute[] => {
  const { materials } = plan.staging;
  const one = materials.find((material) => material.code === code);
  if (!one) return [];
  const reckon = (needs: readonly GarmentWork[], of: readonly string[]) =>
    supplyOf({ ...plan.staging, materials: materials.filter((material) => of.includes(material.code)) }, needs).supplies;
  return materials
    .filter((other) => isAlike(one, other))
    .map((other): Substitute => {
      const both = [one.code, other.code];
      const now = reckon(works, both);
      const then = reckon(swapped(works, one.code, other.code), both);
      const costOf = (supplies: typeof now): number | null =>
        supplies.some(({ supplied, choices }) => supplied.some(({ toBuy }) => toBuy.length > 0) && choices.length === 0)
          ? null
          : supplies.reduce((sum, { choices }) => sum + (choices[0]?.order.cost ?? 0), 0);
      const [before, after] = [costOf(now), costOf(then)];
      const its = then.find(({ material }) => material.code === other.code);
      const short = its?.supplied.some(({ toBuy }) => toBuy.length > 0) ?? false;
      const offer = its?.choices[0]?.offer;
      return {
        material: other,
        more: after === null || before === null ? null : after - before,
        onHand: !short,
        ready: short ? (offer ? readyFrom(offer, today) : null) : today,
      };
    })
    .sort((a, b) => (a.more ?? Number.POSITIVE_INFINITY) - (b.more ?? Number.POSITIVE_INFINITY));
};
