import { dayNumber, plainDate } from "#lib/calendar/days";
import type { WallMinute } from "#lib/calendar/plainDate";
import { addWorkingDays } from "#lib/calendar/workingDays";
import { openDays } from "#lib/planning/answers";
import { type PlanOptions, planStaging } from "#lib/planning/planStaging";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import { readyFor } from "./readyFor";
import { waitingOn } from "./waitingOn";

/** What a later answer moves. The second plan stays as close to the first as it can. */
export interface LateApproval {
  readonly approval: string;
  readonly workingDaysLater: number;
  /** Garments and other work whose finish moves, or that lose or find a place, in the order of the plan. */
  readonly moved: readonly Moved[];
  /** Whether everything due by the dress rehearsal is ready for it; null when there is no dress rehearsal. */
  readonly dressBefore: boolean | null;
  readonly dressAfter: boolean | null;
  readonly before: StagingPlan;
  readonly after: StagingPlan;
}

export interface Moved {
  /** Number of the garment, or code of the other work. */
  readonly of: string;
  readonly kind: "garment" | "other";
  readonly from: WallMinute | null;
  readonly to: WallMinute | null;
  /** Whether it comes after the answer; the others give way to those that do. */
  readonly waits: boolean;
  /** Minutes of the clock; less than nothing when it is sooner. Null when one of the plans has no place for it. */
  readonly minutes: number | null;
}

/**
 * Plans the staging with and without an answer that comes some working days later, and says whose finish moves.
 * Fails with a sentence when there is no such approval still to be given.
 */
export const lateApproval = async (
  staging: Staging,
  approval: string,
  workingDaysLater: number,
  options: PlanOptions,
): Promise<Result<LateApproval, string>> => {
  const before = await planStaging(staging, options);
  if (!before.approvals.some(({ code }) => code === approval)) return failed(`Nothing waits for an approval "${approval}".`);
  const after = await planStaging(withLaterAnswer(staging, approval, workingDaysLater), {
    ...options,
    current: () => before.answer.plan,
  });
  const [from, to] = [finishes(before), finishes(after)];
  const { garments = [], otherWork = [] } = waitingOn(before).find((one) => one.approval === approval) ?? {};
  const moved = [...from].flatMap(([key, { of, kind, end }]): Moved[] => {
    const then = to.get(key)?.end ?? null;
    return end === then
      ? []
      : [
          {
            of,
            kind,
            from: end,
            to: then,
            waits: (kind === "garment" ? garments : otherWork).includes(of),
            minutes: end === null || then === null ? null : then - end,
          },
        ];
  });
  const dress = { dressBefore: readyFor(before, "dress rehearsal"), dressAfter: readyFor(after, "dress rehearsal") };
  return ok({ approval, workingDaysLater, moved, ...dress, before, after });
};

/** The same staging with an approval given some working days later: it is looked at for longer, and a promised day moves. */
export const withLaterAnswer = (staging: Staging, approval: string, workingDaysLater: number): Staging => {
  const later = (day: number) => {
    const isOpen = openDays(staging, { from: day, to: day + 7 * (workingDaysLater + WEEKS_CLOSED) });
    return plainDate(addWorkingDays(day, workingDaysLater, isOpen) ?? day + workingDaysLater);
  };
  return {
    ...staging,
    sets: staging.sets.map((set) => (set.code === approval ? { ...set, approvalDays: set.approvalDays + workingDaysLater } : set)),
    approvals: staging.approvals.map((one) =>
      one.code === approval
        ? { ...one, days: one.days + workingDaysLater, expectedOn: one.expectedOn && later(dayNumber(one.expectedOn)) }
        : one,
    ),
  };
};

/** Longest a workroom is taken to be closed at a stretch. */
const WEEKS_CLOSED = 20;

type Finish = Pick<Moved, "of" | "kind"> & { readonly end: WallMinute | null };

/** Ends of garments and of other work, by key. */
const finishes = ({ garmentStates, tasks }: StagingPlan): ReadonlyMap<string, Finish> => {
  const others = tasks.filter(({ origin }) => origin !== "operation");
  const all: readonly Finish[] = [
    ...garmentStates.map(({ garment, finish }): Finish => ({ of: garment, kind: "garment", end: finish })),
    ...others.map(({ operation, end }): Finish => ({ of: operation, kind: "other", end })),
  ];
  return new Map(all.map((one) => [`${one.kind} ${one.of}`, one]));
};
