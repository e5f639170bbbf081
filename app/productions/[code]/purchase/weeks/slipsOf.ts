import type { PlainDate } from "#lib/calendar/plainDate";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { cutDays } from "#lib/planning/cutDays";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { ifSlips, type Slip } from "#lib/purchasing/ifSlips";

/** What each delivery holds up when it comes so many days late, what is still to buy being ordered today; those that hold up nothing last. */
export const slipsOf = (plan: StagingPlan, today: PlainDate, days: number): readonly Slip[] => {
  const slack = new Map(
    plan.garmentStates.map(({ garment, finish, due }) => [garment, finish === null ? null : Math.floor((due - finish) / MINUTES_PER_DAY)]),
  );
  const slackOf = (garment: string) => slack.get(garment) ?? null;
  const slips = ifSlips(plan.staging, plan.works, { days, orderedOn: today, cutOn: cutDays(plan.tasks), slackOf });
  const late = ({ heldUp }: Slip) => new Set(heldUp.flatMap((one) => (one.late ? [one.garment] : []))).size;
  return [...slips].sort((a, b) => late(b) - late(a) || b.heldUp.length - a.heldUp.length);
};
