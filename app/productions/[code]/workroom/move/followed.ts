import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { assemble } from "#lib/planning/assemble";
import { type HandPin, withHandPins } from "#lib/planning/handPins";
import { storePlan } from "#lib/planning/restore";
import type { PlannedFitting, PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import type { StoredPlan } from "#lib/planning/storedPlan";
import { failed, ok, type Result } from "#lib/result";
import { type PlanMoves, planMoves } from "#lib/whatif/planMoves";
import { levelBeside } from "../../../../_data/levelBeside";
import type { ProductionView } from "../../../../_data/stagingPlan";

/** Where a hand wants a task or a fitting. */
export interface Wish {
  readonly key: string;
  /** Code of who shall do it. */
  readonly maker: string;
  readonly date: PlainDate;
  /** Minute of the day. */
  readonly at: number;
}

export interface Followed {
  readonly pin: HandPin;
  readonly moves: PlanMoves;
  readonly after: StagingPlan;
  readonly stored: StoredPlan;
}

/** The same plan again from the same wish. */
const SEED = 1;

/** The task or fitting of a plan with a key. */
export const workOf = (plan: StagingPlan, key: string): PlannedTask | PlannedFitting | undefined =>
  plan.tasks.find((task) => task.key === key) ?? plan.fittings.find(({ node }) => plan.nodes[node]!.key === key);

/** What follows when the wish is granted: everything else stays where it is as far as it can. A sentence when it cannot be granted. */
export const followed = async (view: ProductionView, pins: readonly HandPin[], wish: Wish): Promise<Result<Followed, string>> => {
  const { prepared, plan } = view;
  const work = plan && workOf(plan, wish.key);
  if (!plan || !work) return failed("This work is not in the plan any more. Level again, then move it.");
  const start = dayNumber(wish.date) * MINUTES_PER_DAY + wish.at;
  const room = "room" in work ? (work.room ?? prepared.problem.rooms[0]?.id ?? null) : null;
  const pin: HandPin = { key: wish.key, makers: [wish.maker], room, start };
  const fixed = withHandPins(prepared, [...pins.filter(({ key }) => key !== wish.key), pin]);
  const problem = { ...fixed.problem, current: plan.answer.plan };
  const answer = await levelBeside(problem, SEED);
  if (checkPlan(problem, answer.plan).length > 0)
    return failed("What follows breaks a rule, so it was not kept: this is a defect of the program.");
  const placed = answer.plan.placed[work.node];
  if (!placed)
    return failed(
      "It cannot be done there: the maker is not at work, has not the skill, or something fixed is in the way; a fitting needs performer and room free. Choose another time or another maker.",
    );
  const after = assemble(fixed, answer);
  return ok({ pin, moves: planMoves(plan, after), after, stored: storePlan(fixed, answer, view.inputRevision) });
};
