import { placeFittingExactly, placeTaskExactly } from "./placeExactly";
import { fittingSlot } from "./placeFitting";
import { taskSlot } from "./placeTask";
import type { Plan } from "./problem";
import type { Schedule } from "./schedule";

/** What the search may choose besides the order. */
export interface Choices {
  /** Per node: overtime allowed. */
  readonly overtime: Uint8Array;
  /** Per node: the maker wanted, or -1 for whoever is done first. */
  readonly maker: Int32Array;
  /** Minutes a fitting may wait to be part of a visit already planned. */
  readonly patience: number;
  /** Per node: the minute before which it is not wanted to start. */
  readonly notBefore?: Int32Array;
  /** A plan to keep to wherever it is still possible; null for none. */
  readonly kept: Plan | null;
}

export const plainChoices = (count: number): Choices => ({
  overtime: new Uint8Array(count),
  maker: new Int32Array(count).fill(-1),
  patience: 0,
  kept: null,
});

/** Place a node as early as it can be from `from` on; false when there is no place. Overtime is a last resort where it is not allowed. */
export function placeNode(schedule: Schedule, node: number, from: number, choices: Choices): boolean {
  if (choices.kept !== null && keep(schedule, node, from, choices.kept)) return true;
  const allowed = choices.overtime[node] === 1;
  return place(schedule, node, from, allowed, choices) || (!allowed && place(schedule, node, from, true, choices));
}

function place(schedule: Schedule, node: number, from: number, overtime: boolean, choices: Choices): boolean {
  const { compiled } = schedule;
  const fitting = compiled.fittings[node];
  if (!fitting) {
    const slot = taskSlot(schedule, node, from, overtime, choices.maker[node]!);
    if (slot === null) return false;
    schedule.put(node, slot);
    return true;
  }
  const slot = fittingSlot(schedule, node, from, overtime, choices.patience);
  if (slot === null) return false;
  const { start, end, fitter, room } = slot;
  if (slot.visit >= 0) schedule.joinVisit(node, slot.visit, start, end, fitting.fitterSkill, overtime);
  else schedule.openVisit(node, { performer: fitting.performer, fitter, room, start, end }, fitting.fitterSkill, overtime);
  if (slot.interrupts !== null) schedule.prolong(slot.interrupts.node, slot.interrupts.end);
  return true;
}

/** Put a node where the kept plan has it. */
function keep(schedule: Schedule, node: number, from: number, kept: Plan): boolean {
  const placement = kept.placed[node];
  if (!placement || placement.start < from) return false;
  const { start, makers, overtime } = placement;
  if (schedule.compiled.tasks[node]) return placeTaskExactly(schedule, node, start, makers, overtime, false);
  const visit = kept.visits.find((one) => one.fittings.includes(node));
  return visit !== undefined && placeFittingExactly(schedule, node, start, visit.fitter, visit.room, overtime);
}
