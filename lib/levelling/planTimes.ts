import type { Compiled } from "./compiled";
import type { Interval, Plan } from "./problem";

/** What each maker does in a plan, in order of time. */
export interface Engagement {
  readonly start: number;
  readonly end: number;
  /** The task, or for a visit its first fitting. */
  readonly node: number;
  /** Null for a task. */
  readonly performer: number | null;
}

/** A plan arranged by maker, for looking up who was busy when. */
export class PlanTimes {
  readonly tasks: readonly Engagement[][];
  readonly visits: readonly Engagement[][];
  /** Work at each machine, in order of its start. */
  private readonly uses: readonly (readonly (Interval & { readonly count: number })[])[];

  constructor(
    readonly compiled: Compiled,
    readonly plan: Plan,
  ) {
    const tasks: Engagement[][] = compiled.problem.makers.map(() => []);
    const visits: Engagement[][] = compiled.problem.makers.map(() => []);
    plan.placed.forEach((placement, node) => {
      if (placement === null || compiled.tasks[node] === null || placement.start === placement.end) return;
      for (const { maker } of placement.makers) tasks[maker]!.push({ start: placement.start, end: placement.end, node, performer: null });
    });
    for (const { fitter, start, end, performer, fittings } of plan.visits)
      visits[fitter]!.push({ start, end, node: fittings[0]!, performer });
    for (const list of [...tasks, ...visits]) list.sort((a, b) => a.start - b.start);
    this.uses = usesOf(compiled, plan);
    this.tasks = tasks;
    this.visits = visits;
  }

  /** Minutes in [start, end) at which something may change for the makers of `node`, with both ends. */
  edges(makers: readonly number[], machines: readonly number[], start: number, end: number): number[] {
    const edges = new Set([start, end]);
    const add = (at: number): void => {
      if (at > start && at < end) edges.add(at);
    };
    for (const maker of makers) {
      for (const { start: from, end: to } of this.compiled.problem.makers[maker]!.calendar) [from, to].forEach(add);
      for (const { start: from, end: to } of [...this.tasks[maker]!, ...this.visits[maker]!]) [from, to].forEach(add);
    }
    for (const machine of machines) {
      for (const use of this.uses[machine]!) [use.start, use.end].forEach(add);
      for (const open of this.compiled.problem.machines[machine]!.calendar ?? []) [open.start, open.end].forEach(add);
    }
    return [...edges].sort((a, b) => a - b);
  }

  machineUse(machine: number, at: number): number {
    let use = 0;
    for (const { start, end, count } of this.uses[machine]!) {
      if (start > at) break;
      if (end > at) use += count;
    }
    return use;
  }
}

function usesOf({ problem, tasks }: Compiled, { placed }: Plan): (Interval & { count: number })[][] {
  const uses: (Interval & { count: number })[][] = problem.machines.map(() => []);
  placed.forEach((placement, node) => {
    if (placement === null) return;
    for (const { machine, count } of tasks[node]?.machines ?? [])
      uses[machine]!.push({ start: placement.start, end: placement.end, count });
  });
  for (const list of uses) list.sort((a, b) => a.start - b.start);
  return uses;
}

export const during = (engagements: readonly Engagement[], at: number): Engagement | undefined =>
  engagements.find(({ start, end }) => start <= at && at < end);
