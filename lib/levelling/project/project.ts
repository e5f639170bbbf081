import { type Lanes, lanesFor } from "./lanes";
import { tailsOf } from "./tails";

/** One direction of time: what comes before each task, and how much work must follow its start. */
export interface Side {
  readonly first: Int32Array;
  readonly before: Int32Array;
  /** No less time than this lies between the start of the task and the end of the project. */
  readonly tail: Int32Array;
  /** The tasks so that each stands after all before it. */
  readonly order: Int32Array;
}

/**
 * The resource-constrained project: tasks of whole lengths, each after others, that use up to so much of each resource at
 * once. The end of all is to be early (Kolisch & Sprecher, European Journal of Operational Research 96 (1996) 205-216).
 */
export interface Project {
  readonly count: number;
  readonly duration: Int32Array;
  /** What each task uses, packed into lanes. */
  readonly demand: Int32Array;
  /** What there is, packed, with all guards set. */
  readonly capacity: number;
  readonly guard: number;
  /** Sum of durations: no plan without pauses is longer. */
  readonly horizon: number;
  readonly sides: readonly [forward: Side, backward: Side];
  /** The amounts, resource by resource, for the bounds. */
  readonly amounts: readonly Int32Array[];
  readonly capacities: readonly number[];
}

export interface ProjectTask {
  readonly duration: number;
  readonly amounts: readonly number[];
}

/** Null when the capacities do not fit into lanes, a task needs more than there is, or the links run in a circle. */
export function makeProject(
  tasks: readonly ProjectTask[],
  capacities: readonly number[],
  links: readonly { readonly before: number; readonly after: number }[],
): Project | null {
  const lanes: Lanes | null = lanesFor(capacities);
  if (lanes === null || tasks.some(({ amounts }) => amounts.some((amount, i) => amount > capacities[i]!))) return null;
  const count = tasks.length;
  const duration = Int32Array.from(tasks, (task) => task.duration);
  const amounts = capacities.map((_, i) => Int32Array.from(tasks, (task) => task.amounts[i]!));
  const work = { duration, amounts, capacities };
  const forward = sideOf(work, links);
  const backward = sideOf(
    work,
    links.map(({ before, after }) => ({ before: after, after: before })),
  );
  if (forward === null || backward === null) return null;
  return {
    count,
    duration,
    demand: Int32Array.from(tasks, ({ amounts }) => lanes.pack(amounts)),
    capacity: lanes.pack(capacities) | lanes.guard,
    guard: lanes.guard,
    horizon: duration.reduce((sum, each) => sum + each, 0),
    sides: [forward, backward],
    amounts,
    capacities,
  };
}

export function sideOf(
  work: Pick<Project, "duration" | "amounts" | "capacities">,
  links: readonly { readonly before: number; readonly after: number }[],
): Side | null {
  const count = work.duration.length;
  const before: number[][] = Array.from({ length: count }, () => []);
  const after: number[][] = Array.from({ length: count }, () => []);
  for (const link of links) {
    before[link.after]!.push(link.before);
    after[link.before]!.push(link.after);
  }
  const missing = before.map((list) => list.length);
  const order = missing.flatMap((left, task) => (left === 0 ? [task] : []));
  for (const task of order) {
    for (const next of after[task]!) if (--missing[next]! === 0) order.push(next);
  }
  if (order.length < count) return null;
  const first = new Int32Array(count + 1);
  before.forEach((list, task) => {
    first[task + 1] = first[task]! + list.length;
  });
  return { first, before: Int32Array.from(before.flat()), tail: tailsOf(order, after, work), order: Int32Array.from(order) };
}
