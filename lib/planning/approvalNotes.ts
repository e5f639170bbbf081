import type { OpenApproval } from "#lib/approvals/openApprovals";
import { waitingOn } from "#lib/approvals/waitingOn";
import { plainDate } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate, type WallMinute } from "#lib/calendar/plainDate";
import { showDay, showWall } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import type { PlanNote, StagingPlan } from "./stagingPlan";

/** Answers that were promised for a day that is past. */
export const overdueAnswers = (approvalAt: ReadonlyMap<number, OpenApproval>, today: PlainDate): PlanNote[] =>
  [...approvalAt.values()].flatMap(({ code, title, by, expectedOn }): PlanNote[] =>
    expectedOn === null || expectedOn >= today
      ? []
      : [
          {
            kind: "approval",
            about: code,
            text: `${title}: the answer (${by}) was promised for ${showDay(expectedOn)} and has not come. The plan takes it to come today.`,
            mend: "Ask for it, or write the new day in approvals.csv.",
          },
        ],
  );

/** What waits for each approval that something waits for. */
export const waitingNotes = (plan: Pick<StagingPlan, "approvals" | "garments" | "nodes" | "problem">): PlanNote[] =>
  waitingOn(plan)
    .filter(({ garments, otherWork }) => garments.length + otherWork.length > 0)
    .map(({ approval, title, by, answer, garments, otherWork, minutes }) => {
      const things = [
        ...(garments.length > 0 ? [garments.length === 1 ? "one garment" : `${garments.length} garments`] : []),
        ...(otherWork.length > 0 ? [otherWork.length === 1 ? "one other task" : `${otherWork.length} other tasks`] : []),
      ].join(", ");
      const when = answer === null ? "The plan has no day for it" : `The plan counts on it by ${answerText(answer)}`;
      return {
        kind: "approval",
        about: approval,
        text: `${title}: ${things} and ${showHours(minutes)} of work wait for approval (${by}). ${when}.`,
        mend: answer === null ? "Find a place for what is to be looked at." : "Agree the day; a later answer moves what waits.",
      };
    });

/** `Tue 19 Jan 11:22`, `the end of Fri 22 Jan`. */
const answerText = (wall: WallMinute): string => {
  const day = Math.floor((wall - 1) / MINUTES_PER_DAY);
  return wall % MINUTES_PER_DAY === 0 ? `the end of ${showDay(plainDate(day))}` : showWall(wall);
};
