import type { EngineTask, LevellingProblem, Placement, Plan } from "../problem";
import { restFaults } from "./straining";
import { fittingMinutes, workableMinutes } from "./workable";

/** Each task by itself: crew and skills, release, pin, and stretches that hold exactly the work, where its makers can work. */
export function taskFaults(problem: LevellingProblem, plan: Plan): string[] {
  return problem.nodes.flatMap((node, index) => {
    const placement = plan.placed[index];
    if (node.kind !== "task" || !placement) return [];
    return [...crewFaults(problem, node, placement), ...timeFaults(node, placement), ...workFaults(problem, plan, node, placement)];
  });
}

function crewFaults(problem: LevellingProblem, task: EngineTask, { makers }: Placement): string[] {
  const faults: string[] = [];
  const asked = task.crew.flatMap(({ skill, count }) => Array.from({ length: count }, () => skill));
  if (makers.length !== asked.length || makers.some(({ skill }, seat) => skill !== asked[seat])) {
    faults.push(`${task.id}: ${makers.length} makers do not fill the crew of ${asked.length} in its order.`);
  }
  if (new Set(makers.map(({ maker }) => maker)).size !== makers.length) faults.push(`${task.id}: one maker serves twice.`);
  for (const { maker, skill } of makers) {
    if (!((problem.makers[maker]!.pace[skill] ?? 0) > 0))
      faults.push(`${task.id}: ${problem.makers[maker]!.id} does not have ${problem.skills[skill]}.`);
  }
  return faults;
}

function timeFaults(task: EngineTask, placement: Placement): string[] {
  const faults: string[] = [];
  const { pin } = task;
  if (pin === null && placement.start < task.release)
    faults.push(`${task.id}: it starts at ${placement.start}, before its release at ${task.release}.`);
  if (pin !== null && placement.start !== pin.start)
    faults.push(`${task.id}: it is pinned to ${pin.start} and starts at ${placement.start}.`);
  if (pin !== null && placement.makers.some(({ maker }, seat) => maker !== pin.makers[seat]))
    faults.push(`${task.id}: it is pinned to other makers.`);
  return faults;
}

function workFaults(problem: LevellingProblem, plan: Plan, task: EngineTask, placement: Placement): string[] {
  const { start, end, stretches, makers } = placement;
  if (task.minutes === 0) return start === end && stretches.length === 0 ? [] : [`${task.id}: it has no minutes and yet takes time.`];
  const faults: string[] = [];
  const workable = workableMinutes(problem, task, placement);
  if (makers.some(({ maker, skill }) => !((problem.makers[maker]!.pace[skill] ?? 0) > 0))) return faults;
  const taken = fittingMinutes(
    plan,
    makers.map(({ maker }) => maker),
  );
  let done = 0;
  let before = 0;
  let last = -1;
  for (const stretch of stretches) {
    if (stretch.end <= stretch.start || stretch.start < start || stretch.end > end)
      faults.push(`${task.id}: stretch ${stretch.start} to ${stretch.end} is not inside it.`);
    if (stretch.start < last) faults.push(`${task.id}: its stretches are not in order.`);
    last = stretch.end;
    for (let minute = stretch.start; minute < stretch.end; minute++) {
      const rate = workable(minute);
      if (rate <= 0) faults.push(`${task.id}: minute ${minute} is not one in which it can be worked on.`);
      if (taken.has(minute)) faults.push(`${task.id}: minute ${minute} belongs to a fitting of its maker.`);
      before = done;
      done += rate;
    }
    if (faults.length > 10) return faults;
  }
  const asked = task.minutes * 1_000_000;
  if (done < asked) faults.push(`${task.id}: its stretches hold ${done / 1e6} standard minutes of ${task.minutes}.`);
  if (before >= asked) faults.push(`${task.id}: it is done before its last minute.`);
  if (stretches.at(-1)?.end !== end) faults.push(`${task.id}: it ends at ${end} and not with its last stretch.`);
  if (task.pin === null && stretches[0]?.start !== start) faults.push(`${task.id}: it starts at ${start} and not with its first stretch.`);
  const mayRest = task.straining?.rest ?? 0;
  const first = stretches[0]?.start ?? start;
  for (let minute = first, idle = 0; minute < end; minute++) {
    const worked = stretches.some((stretch) => stretch.start <= minute && minute < stretch.end);
    const could = workable(minute) > 0;
    idle = worked ? 0 : idle + 1;
    if (!worked && !task.pauses && (!could || taken.has(minute)))
      faults.push(`${task.id}: it may not pause and is broken at minute ${minute}.`);
    if (!worked && could && !taken.has(minute) && idle > mayRest) faults.push(`${task.id}: minute ${minute} is idle inside it.`);
    if (faults.length > 10) return faults;
  }
  return [...faults, ...restFaults(task, stretches)];
}
