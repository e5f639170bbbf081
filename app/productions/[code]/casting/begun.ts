import { wallMinute } from "#lib/calendar/clock";
import type { ProductionView } from "../../../_data/stagingPlan";

/** Garments on which the plan has work before today. */
export const begunGarments = ({ plan, today }: Pick<ProductionView, "plan" | "today">): ReadonlySet<string> => {
  const morning = wallMinute(today, 0);
  const begun = plan?.tasks.filter(({ start }) => start !== null && start < morning) ?? [];
  return new Set(begun.flatMap(({ garments }) => garments));
};
