import { nextWorking } from "./clock";
import type { Working } from "./clockStore";
import { placeFittingExactly, placeTaskExactly } from "./placeExactly";
import type { Schedule } from "./schedule";

/** Both ways of working; overtime first when only then somebody is there at the start. */
function ways(schedule: Schedule, makers: readonly number[], start: number): readonly boolean[] {
  const { clocks } = schedule.compiled;
  const there = (overtime: boolean): boolean => makers.every((maker) => nextWorking(clocks.ofMaker(maker, overtime), start) === start);
  return !there(false) && there(true) ? [true, false] : [false, true];
}

/** Pinned fittings first (they interrupt work), then pinned tasks in order of their start. */
export function placePins(schedule: Schedule, dropped: ReadonlySet<number>): void {
  const { problem } = schedule.compiled;
  const pinned = problem.nodes
    .map((node, index) => ({ node, index, start: node.pin?.start ?? -1 }))
    .filter(({ node, index }) => node.pin !== null && !dropped.has(index))
    .sort((a, b) => (a.node.kind === b.node.kind ? a.start - b.start || a.index - b.index : a.node.kind === "fitting" ? -1 : 1));
  for (const { index } of pinned) {
    if (!placePin(schedule, index)) {
      schedule.unplaced[index] = {
        reason: "no time left in the calendars",
        detail: "It is fixed where it cannot be: someone is away, busy or lacks the skill.",
      };
    }
  }
}

function placePin(schedule: Schedule, index: number): boolean {
  const node = schedule.compiled.problem.nodes[index]!;
  if (node.kind === "fitting") {
    const { start, fitter, room } = node.pin!;
    if (!schedule.compiled.problem.makers[fitter]) return false;
    return ways(schedule, [fitter], start).some((overtime) => placeFittingExactly(schedule, index, start, fitter, room, overtime));
  }
  const { start, makers } = node.pin!;
  const seats = schedule.compiled.seats[index]!;
  if (makers.length !== seats.length || makers.some((maker) => !schedule.compiled.problem.makers[maker])) return false;
  const crew: Working[] = makers.map((maker, seat) => ({ maker, skill: seats[seat]!.skill }));
  return ways(schedule, makers, start).some((overtime) => placeTaskExactly(schedule, index, start, crew, overtime, true));
}
