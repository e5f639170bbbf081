import { showHours } from "#lib/units/hours";
import type { PlanMoves } from "#lib/whatif/planMoves";
import { plural } from "./plural";

/** How far two plans lie apart, in one breath; `others` is how many pieces of work moved besides what was moved by hand. */
export const movesSentence = ({ stayed, sooner, later, overtimeBefore, overtimeAfter }: PlanMoves, others: number): string => {
  const late = [...sooner, ...later].filter((shift) => shift.minutesLateAfter > 0 && shift.minutesLateBefore === 0).length;
  const saved = [...sooner, ...later].filter((shift) => shift.minutesLateAfter === 0 && shift.minutesLateBefore > 0).length;
  const overtime = overtimeAfter - overtimeBefore;
  return [
    others === 0 ? "Nothing else moves." : `${plural(others, "other piece")} of work ${others === 1 ? "moves" : "move"}, ${stayed} stay.`,
    sooner.length + later.length === 0
      ? "Every garment is done when it was."
      : `${plural(sooner.length, "garment")} done sooner, ${later.length} later.`,
    late > 0 ? `${plural(late, "garment")} would now be late.` : "No garment becomes late by it.",
    saved > 0 ? `${plural(saved, "garment")} would no longer be late.` : "",
    overtime === 0 ? "" : `Overtime ${overtime > 0 ? "grows" : "falls"} by ${showHours(Math.abs(overtime))}.`,
  ]
    .filter((part) => part !== "")
    .join(" ");
};
