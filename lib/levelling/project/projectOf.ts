import type { LevellingProblem } from "../problem";
import { makeProject, type Project } from "./project";

/** Longest axis on which time is counted step by step. */
const MOST_STEPS = 20_000;

/** A problem that is a resource-constrained project, and the minutes in one step of its time. */
export interface Recognised {
  readonly project: Project;
  readonly step: number;
}

/**
 * The problem as a project when that is all it is: tasks without makers on machines that are always there, plain
 * precedence, one due date, and nothing kept or pinned. Null for any other problem.
 */
export function projectOf(problem: LevellingProblem): Recognised | null {
  const { nodes, machines, precedences, dues } = problem;
  if (problem.current !== null || dues.length !== 1 || nodes.length === 0) return null;
  if (machines.some(({ calendar }) => calendar !== null)) return null;
  if (precedences.some(({ lag, lagKind, maxLag }) => lag !== 0 || lagKind !== "elapsed" || maxLag !== null)) return null;
  const tasks: { duration: number; amounts: number[] }[] = [];
  let step = 0;
  for (const node of nodes) {
    if (node.kind !== "task" || node.crew.length > 0 || node.release !== 0 || node.pin !== null) return null;
    const amounts = machines.map(() => 0);
    // What takes no time takes no machine.
    if (node.minutes > 0) for (const { machine, count } of node.machines) amounts[machine] = amounts[machine]! + count;
    step = divisor(step, node.minutes);
    tasks.push({ duration: node.minutes, amounts });
  }
  step = Math.max(1, step);
  const length = tasks.reduce((sum, { duration }) => sum + duration / step, 0);
  if (!Number.isInteger(length) || length > MOST_STEPS || length * step > problem.horizon) return null;
  const project = makeProject(
    tasks.map(({ duration, amounts }) => ({ duration: duration / step, amounts })),
    machines.map(({ count }) => count),
    precedences,
  );
  // The due date must wait for everything: then it is the end of all that counts.
  return project === null || !waitsForAll(project, dues[0]!.node) ? null : { project, step };
}

function waitsForAll(project: Project, node: number): boolean {
  const { first, before } = project.sides[0];
  const seen = new Set([node]);
  for (const task of seen) for (let i = first[task]!; i < first[task + 1]!; i++) seen.add(before[i]!);
  return seen.size === project.count;
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
