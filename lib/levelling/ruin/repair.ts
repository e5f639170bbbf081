import type { Compiled } from "../compiled";
import { earliestAfter, lagTooLong } from "../lags";
import type { Outlook } from "../outlook";
import { placePins } from "../pins";
import { placeFittingExactly, placeTaskExactly } from "../placeExactly";
import { plainChoices } from "../placeNode";
import type { Plan } from "../problem";
import { Schedule } from "../schedule";
import { FIXED_TOO_SOON } from "../serial";
import { Reinsertion } from "./reinsert";

/**
 * The plan kept, with everything where it was as far as that is still possible; then what lost its place, and what is new, goes
 * where it can start earliest without disturbing the rest. A pin that an earlier step cannot meet is given up. Null when the rest
 * cannot stay as it is.
 */
export function repaired(compiled: Compiled, outlook: Outlook, plan: Plan): Schedule | null {
  const dropped = new Set<number>();
  for (;;) {
    const made = withoutPins(compiled, outlook, plan, dropped);
    if (typeof made !== "number") return made;
    dropped.add(made);
  }
}

/** The schedule, or null, or a pin to give up. */
function withoutPins(compiled: Compiled, outlook: Outlook, plan: Plan, dropped: ReadonlySet<number>): Schedule | number | null {
  const { nodes } = compiled.problem;
  const schedule = new Schedule(compiled);
  placePins(schedule, dropped);
  for (const node of dropped) schedule.unplaced[node] = FIXED_TOO_SOON;
  putWhereItWas(schedule, plan);
  const homeless = new Map<number, number>();
  const key = (node: number): number => plan.placed[node]?.start ?? outlook.latest[node]! - outlook.length[node]!;
  for (const node of brokenLinks(schedule)) {
    if (nodes[node]!.pin !== null) return node;
    homeless.set(node, key(node));
  }
  for (let node = 0; node < compiled.count; node++)
    if (!schedule.isPlaced(node) && schedule.unplaced[node] === null) homeless.set(node, key(node));
  const reinsertion = new Reinsertion(schedule, plainChoices(compiled.count));
  if (reinsertion.run(homeless, Number.POSITIVE_INFINITY) >= 0) return schedule;
  return reinsertion.pinInTheWay >= 0 ? reinsertion.pinInTheWay : null;
}

/** Fittings first, because work steps over them. */
function putWhereItWas(schedule: Schedule, plan: Plan): void {
  const { compiled } = schedule;
  const { problem } = compiled;
  const visitOf = new Map(plan.visits.flatMap((visit) => visit.fittings.map((node) => [node, visit] as const)));
  const free = (node: number): boolean => problem.nodes[node]!.pin === null && plan.placed[node]!.start >= compiled.release[node]!;
  const nodes = [...plan.placed.keys()]
    .filter((node) => plan.placed[node] && free(node))
    .sort((a, b) => plan.placed[a]!.start - plan.placed[b]!.start || a - b);
  for (const node of nodes) {
    const visit = visitOf.get(node);
    const { start, overtime } = plan.placed[node]!;
    if (compiled.fittings[node] && visit) placeFittingExactly(schedule, node, start, visit.fitter, visit.room, overtime);
  }
  for (const node of nodes) {
    const { start, makers, overtime } = plan.placed[node]!;
    if (compiled.tasks[node]) placeTaskExactly(schedule, node, start, makers, overtime, false);
  }
}

/** Followers that now start too soon, and both ends of a lag that is now too long. */
function brokenLinks({ compiled, start, end }: Schedule): number[] {
  const { links } = compiled;
  const broken: number[] = [];
  links.before.forEach((before, link) => {
    const after = links.after[link]!;
    if (start[before]! < 0 || start[after]! < 0) return;
    if (start[after]! < earliestAfter(compiled, link, end[before]!)) broken.push(after);
    else if (lagTooLong(compiled, link, end[before]!, start[after]!) > 0) broken.push(before, after);
  });
  return broken;
}
