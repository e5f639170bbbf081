import type { LevellingProblem } from "../problem";

/** Jobs one after the other on one machine: n/1//sum of weighted tardiness. */
export interface Sequence {
  readonly minutes: Float64Array;
  readonly weight: Float64Array;
  readonly due: Float64Array;
  readonly skill: number;
}

/**
 * The problem as a sequence when that is all it is: one maker of plain pace whose time has no breaks works all tasks, which
 * wait for nothing, and each is due at most once. Null for any other problem.
 */
export function sequenceOf(problem: LevellingProblem): Sequence | null {
  const { nodes, makers, precedences, dues } = problem;
  if (problem.current !== null || makers.length !== 1 || precedences.length > 0 || nodes.length === 0) return null;
  if (new Set(dues.map(({ node }) => node)).size < dues.length) return null;
  const minutes = new Float64Array(nodes.length);
  const skill = nodes[0]!.kind === "task" ? (nodes[0]!.crew[0]?.skill ?? -1) : -1;
  if (makers[0]!.pace[skill] !== 1000) return null;
  for (const [i, node] of nodes.entries()) {
    if (node.kind !== "task" || node.machines.length > 0 || node.release !== 0 || node.pin !== null || node.straining !== null) return null;
    if (node.minutes === 0 || node.crew.length !== 1 || node.crew[0]!.count !== 1 || node.crew[0]!.skill !== skill) return null;
    minutes[i] = node.minutes;
  }
  const [stretch, ...others] = makers[0]!.calendar;
  if (stretch === undefined || others.length > 0 || stretch.start !== 0 || stretch.speed !== 1000 || stretch.overtime) return null;
  if (minutes.reduce((sum, each) => sum + each, 0) > stretch.end) return null;
  const weight = new Float64Array(nodes.length);
  const due = new Float64Array(nodes.length);
  for (const one of dues) {
    weight[one.node] = one.weight;
    due[one.node] = one.at;
  }
  return { minutes, weight, due, skill };
}

/** Weighted tardiness of the jobs of `order` from one place to another, beginning at a minute. */
export function tardiness({ minutes, weight, due }: Sequence, order: Int32Array, from: number, to: number, begin: number): number {
  let t = begin;
  let sum = 0;
  for (let k = from; k < to; k++) {
    const job = order[k]!;
    t += minutes[job]!;
    if (t > due[job]!) sum += weight[job]! * (t - due[job]!);
  }
  return sum;
}
