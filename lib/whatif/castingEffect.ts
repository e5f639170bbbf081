import { breakDown } from "#lib/breakdown/breakDown";
import type { GarmentWork } from "#lib/breakdown/work";
import { garmentsOf } from "#lib/casting/garments";
import type { Garment } from "#lib/casting/wardrobe";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import { type FittingChange, fittingChanges } from "./fittingChanges";
import { type GarmentPair, garmentPairs } from "./garmentPairs";
import { type MaterialChange, materialChanges } from "./materialChanges";

/** A staging whose garments are broken down. */
export type BrokenDown = Pick<StagingPlan, "staging" | "garments" | "works">;

/**
 * `added`, `dropped`: comes or goes. `recut`: not begun, and made for another body. `refit`: begun, or not made here, and fitted to another
 * body. `wearers`: stays made for whom it was, and is fitted to others besides. `turn`: only its turn in its set is another, which learning
 * follows.
 */
export type RecastKind = "added" | "dropped" | "recut" | "refit" | "wearers" | "turn";

export interface RecastGarment {
  readonly kind: RecastKind;
  /** After; before when it is dropped. */
  readonly garment: Garment;
  /** Who it was made for: performer, null for nobody yet or a garment that comes. */
  readonly from: string | null;
  readonly begun: boolean;
  /** Work more, or less: of a garment that is begun and dropped nothing is given back, and one that is refitted takes its alteration. */
  readonly minutes: Minutes;
  readonly fittingMinutes: Minutes;
  readonly materials: readonly MaterialChange[];
}

export interface RecastFitting extends FittingChange {
  /** Number of the garment before: that by which the plan knows it. */
  readonly numberBefore: string | null;
}

/** What a change of the casting does to the wardrobe: likely minutes of standard work, before batches and plans. */
export interface CastingEffect {
  /** In the order of the piece list after, then those dropped. Those that stay as they are are not among them. */
  readonly garments: readonly RecastGarment[];
  /** Those that are not kept as they are. */
  readonly fittings: readonly RecastFitting[];
  readonly minutes: Minutes;
  readonly fittingMinutes: Minutes;
  /** By material, as far as they change. */
  readonly materials: readonly MaterialChange[];
  /** How many garments get another number: labels may have been sewn in. */
  readonly renumbered: number;
}

/** Effect of going from one casting to another; `begun` are numbers, before, of garments on which work has begun. */
export const castingEffect = (before: BrokenDown, staging: Staging, begun: ReadonlySet<string>): CastingEffect => {
  const garments = garmentsOf(staging);
  const pairs = garmentPairs(before, { staging, garments });
  const changed = pairs.filter((pair) => contentOf(pair.before) !== contentOf(pair.after));
  const after = {
    staging,
    works: breakDown(
      staging,
      changed.flatMap((pair) => pair.after ?? []),
    ),
  };
  const works: Works = { before: byGarment(before.works), after: byGarment(after.works) };
  const recasts = changed.map((pair) => recastGarment(pair, works, staging, begun));
  const fittings = changed
    .flatMap((pair) =>
      fittingChanges(pair, before, after).map((change): RecastFitting => ({ ...change, numberBefore: pair.before?.number ?? null })),
    )
    .filter(({ change }) => change !== "kept");
  return {
    garments: recasts,
    fittings,
    minutes: recasts.reduce((sum, one) => sum + one.minutes, 0),
    fittingMinutes: recasts.reduce((sum, one) => sum + one.fittingMinutes, 0),
    materials: summed(recasts.flatMap((one) => one.materials)),
    renumbered: pairs.filter((pair) => pair.before && pair.after && pair.before.number !== pair.after.number).length,
  };
};

type Works = Readonly<Record<"before" | "after", ReadonlyMap<string, GarmentWork>>>;

const byGarment = (works: readonly GarmentWork[]) => new Map(works.map((work) => [work.garment, work]));

/** Everything about a garment but its number, and its count among its like, which its name tells. */
const contentOf = (garment: Garment | null): string => JSON.stringify(garment && { ...garment, number: "", name: "" });

const recastGarment = (pair: GarmentPair, works: Works, staging: Staging, begunNumbers: ReadonlySet<string>): RecastGarment => {
  const garment = (pair.after ?? pair.before)!;
  const begun = pair.before !== null && begunNumbers.has(pair.before.number);
  const kind = kindOf(pair, begun);
  const was = pair.before ? works.before.get(pair.before.number) : undefined;
  const is = pair.after ? works.after.get(pair.after.number) : undefined;
  return {
    kind,
    garment,
    from: pair.before?.wearers[0]?.performer ?? null,
    begun,
    minutes: begun ? minutesBegun(kind, garment, staging) : minutesOf(is) - minutesOf(was),
    fittingMinutes: fittingMinutesOf(is) - fittingMinutesOf(was),
    // What is begun is cut: its cloth is not needed again, and does not come back.
    materials: begun ? [] : materialChanges(was?.needs ?? [], is?.needs ?? []).filter((one) => one.before !== one.after),
  };
};

const kindOf = ({ before, after }: GarmentPair, begun: boolean): RecastKind => {
  if (!before) return "added";
  if (!after) return "dropped";
  if (JSON.stringify(before.wearers) === JSON.stringify(after.wearers)) return "turn";
  if (before.wearers[0]?.performer === after.wearers[0]?.performer) return "wearers";
  return begun || after.source !== "build" ? "refit" : "recut";
};

/** A begun garment for another body takes what its construction lists for one that is altered. */
const minutesBegun = (kind: RecastKind, garment: Garment, staging: Staging): Minutes =>
  kind === "refit" && garment.source === "build" ? minutesOf(breakDown(staging, [{ ...garment, source: "alter" }])[0]) : 0;

const minutesOf = (work: GarmentWork | undefined): Minutes =>
  work?.operations.reduce((sum, { minutes: [, likely] }) => sum + likely, 0) ?? 0;

const fittingMinutesOf = (work: GarmentWork | undefined): Minutes => work?.fittings.reduce((sum, { minutes }) => sum + minutes, 0) ?? 0;

const summed = (changes: readonly MaterialChange[]): readonly MaterialChange[] => {
  const sums = new Map<string, MaterialChange>();
  for (const one of changes) {
    const sum = sums.get(one.material);
    sums.set(one.material, sum ? { ...sum, before: sum.before + one.before, after: sum.after + one.after } : one);
  }
  return [...sums.values()].filter((one) => one.before !== one.after).sort((a, b) => (a.material < b.material ? -1 : 1));
};
