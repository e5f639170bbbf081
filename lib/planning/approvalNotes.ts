import type { OpenApproval } from "#lib/approvals/openApprovals";
import { waitingOn } from "#lib/approvals/waitingOn";
import type { PlainDate } from "#lib/calendar/plainDate";
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
      ].join(" and ");
      const when = answer === null ? "The plan has no day for it" : `The plan counts on it by ${showWall(answer)}`;
      return {
        kind: "approval",
        about: approval,
        text: `${title}: ${things} and ${showHours(minutes)} of work wait for approval (${by}). ${when}.`,
        mend: answer === null ? "Find a place for what is to be looked at." : "Agree the day; a later answer moves what waits.",
      };
    });
