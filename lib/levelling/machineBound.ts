import type { Compiled } from "./compiled";

export interface MachineBound {
  readonly finish: number;
  readonly reason: string;
}

/** Minutes asked of a machine over the number there are, after the earliest start and before the least way to the end. */
export function machineBound(compiled: Compiled, ends: Float64Array): MachineBound {
  const { problem } = compiled;
  const tails = leastTails(compiled);
  let best: MachineBound = { finish: 0, reason: "" };
  problem.machines.forEach((machine, index) => {
    let asked = 0;
    let head = Number.POSITIVE_INFINITY;
    let tail = Number.POSITIVE_INFINITY;
    compiled.tasks.forEach((task, node) => {
      const count = task?.machines.reduce((sum, one) => (one.machine === index ? sum + one.count : sum), 0) ?? 0;
      if (task === null || count === 0 || task.minutes === 0 || task.crew.length > 0 || ends[node]! > problem.horizon) return;
      asked += count * task.minutes;
      head = Math.min(head, ends[node]! - task.minutes);
      tail = Math.min(tail, tails[node]!);
    });
    if (asked === 0 || machine.count === 0) return;
    const finish = Math.ceil(head + asked / machine.count + tail);
    if (finish > best.finish && finish <= problem.horizon)
      best = { finish, reason: `The end is no earlier because ${machine.id} has ${asked} minutes of work for ${machine.count}.` };
  });
  return best;
}

/** Minutes that must pass after each node's end until all that follows it is done, without crews (whose pace may differ). */
function leastTails(compiled: Compiled): Float64Array {
  const { links, tasks, count } = compiled;
  const tails = new Float64Array(count);
  const left = new Int32Array(count);
  for (const before of links.before) left[before] = left[before]! + 1;
  const ready: number[] = [];
  for (let node = 0; node < count; node++) if (left[node] === 0) ready.push(node);
  for (const node of ready) {
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      const link = links.into[i]!;
      const before = links.before[link]!;
      const task = tasks[node];
      const own = task && task.crew.length === 0 ? task.minutes : 0;
      tails[before] = Math.max(tails[before]!, tails[node]! + own + (links.working[link] === 1 ? 0 : links.lag[link]!));
      left[before] = left[before]! - 1;
      if (left[before] === 0) ready.push(before);
    }
  }
  return tails;
}
