import type { WorkFitting } from "#lib/breakdown/work";
import type { Garment, Wearer } from "#lib/casting/wardrobe";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";
import type { GarmentPair } from "./garmentPairs";

/** A fitting that comes, goes, gets somebody to be fitted, or stays as it was. */
export interface FittingChange {
  readonly change: "added" | "removed" | "named" | "other performer" | "kept";
  /** Number of the garment: after, or before when it is gone. */
  readonly garment: string;
  readonly name: string;
  /** Performers; null where there is no such fitting, or nobody is cast. */
  readonly before: string | null;
  readonly after: string | null;
  /** Place of the wearer: `first, place 2`. */
  readonly place: string;
  readonly minutesBefore: Minutes;
  readonly minutesAfter: Minutes;
}

interface Fitted {
  readonly garment: Garment;
  readonly fitting: WorkFitting;
  readonly wearer: Wearer;
}

/** What of a plan is known before it is levelled. */
type BrokenDown = Pick<StagingPlan, "staging" | "works">;

/** Fittings of a garment before and after, matched by what they are and the place that is fitted. */
export const fittingChanges = (pair: GarmentPair, before: BrokenDown, after: BrokenDown): readonly FittingChange[] => {
  const words = after.staging.production.words;
  const old = new Map(fittedOf(pair.before, before).map((one) => [nameOf(one), one]));
  const change = (was: Fitted | undefined, is: Fitted | undefined): FittingChange => {
    const one = (is ?? was)!;
    const [from, to] = [was?.wearer.performer ?? null, is?.wearer.performer ?? null];
    return {
      change: kindOf(was, is, from, to),
      garment: one.garment.number,
      name: one.fitting.name[words],
      before: from,
      after: to,
      place: `${one.wearer.cast}, place ${one.wearer.place}`,
      minutesBefore: was?.fitting.minutes ?? 0,
      minutesAfter: is?.fitting.minutes ?? 0,
    };
  };
  const kept = fittedOf(pair.after, after).map((is) => {
    const was = old.get(nameOf(is));
    old.delete(nameOf(is));
    return change(was, is);
  });
  return [...kept, ...[...old.values()].map((was) => change(was, undefined))];
};

const kindOf = (was: Fitted | undefined, is: Fitted | undefined, from: string | null, to: string | null): FittingChange["change"] => {
  if (!was) return "added";
  if (!is) return "removed";
  if (from === to) return "kept";
  return from === null ? "named" : "other performer";
};

const fittedOf = (garment: Garment | null, { works }: BrokenDown): readonly Fitted[] => {
  if (!garment) return [];
  const fittings = works.find((work) => work.garment === garment.number)?.fittings ?? [];
  return fittings.flatMap((fitting) => {
    const wearer = garment.wearers[fitting.wearer];
    return wearer ? [{ garment, fitting, wearer }] : [];
  });
};

const nameOf = ({ fitting, wearer }: Fitted): string =>
  JSON.stringify([fitting.code, wearer.cast, wearer.place, wearer.standing, wearer.standing === "cover" ? wearer.performer : null]);
