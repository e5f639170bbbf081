import type { LevellingAnswer } from "#lib/levelling/problem";
import { purchaseList } from "#lib/purchasing/purchaseList";
import { waitingNotes } from "./approvalNotes";
import { cutDays } from "./cutDays";
import { garmentStates } from "./garmentStates";
import { lateNotes } from "./lateNotes";
import { loadOf } from "./load";
import { plannedFittings, plannedTasks } from "./planned";
import { plannedApprovals } from "./plannedApprovals";
import type { Prepared } from "./prepared";
import type { StagingPlan } from "./stagingPlan";
import { summaryOf } from "./summary";
import { latenesses } from "./why";

/** A chosen plan back in the words and dates of the wardrobe, with what must be bought for it. */
export const assemble = (prepared: Prepared, answer: LevellingAnswer): StagingPlan => {
  const { staging, garments, works, problem, nodes, dayZero } = prepared;
  const tasks = plannedTasks(prepared, answer);
  const fittings = plannedFittings(prepared, answer);
  const approvals = plannedApprovals(prepared, answer);
  const late = latenesses(prepared, answer);
  const states = garmentStates(prepared, answer, late);
  const { purchase, cutting } = purchaseList(staging, works, cutDays(tasks), { garments });
  return {
    staging,
    garments,
    works,
    problem,
    answer,
    dayZero,
    nodes,
    tasks,
    fittings,
    approvals,
    garmentStates: states,
    load: loadOf(prepared, answer),
    purchase,
    cutting,
    notes: [
      ...lateNotes(prepared, answer, states, late, purchase),
      ...waitingNotes({ approvals, garments, nodes, problem }),
      ...prepared.notes,
    ],
    summary: summaryOf(prepared, answer, { tasks, fittings, garmentStates: states, purchase }),
  };
};
