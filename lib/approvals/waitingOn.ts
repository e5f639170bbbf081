import type { WallMinute } from "#lib/calendar/plainDate";
import type { LevellingProblem } from "#lib/levelling/problem";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";

/** What may not go on before an answer. */
export interface Waiting {
  /** Code of the approval; for a prototype that of its set. */
  readonly approval: string;
  readonly title: string;
  readonly by: string;
  /** When the plan counts on the answer; null when what is looked at has no place in it. */
  readonly answer: WallMinute | null;
  /** Numbers, in the order of the piece list. */
  readonly garments: readonly string[];
  /** Codes of other work. */
  readonly otherWork: readonly string[];
  /** Standard minutes of the work and fittings that come after it. */
  readonly minutes: Minutes;
}

type Planned = Pick<StagingPlan, "approvals" | "garments" | "nodes" | "problem">;

/** Everything that waits for each approval still to be given, over however many steps between. */
export const waitingOn = (plan: Planned): Waiting[] =>
  plan.approvals.map(({ node, code, title, by, answer }) => {
    const garments = new Set<string>();
    const otherWork: string[] = [];
    let minutes = 0;
    for (const at of nodesAfter(plan.problem, node)) {
      const what = plan.nodes[at]!;
      minutes += plan.problem.nodes[at]!.minutes;
      if (what.kind === "operation") for (const garment of what.garments) garments.add(garment);
      else if (what.kind === "fitting" || what.kind === "finished") garments.add(what.garment);
      else if (what.kind === "other") otherWork.push(what.task);
    }
    const numbers = plan.garments.map(({ number }) => number).filter((number) => garments.has(number));
    return { approval: code, title, by, answer, garments: numbers, otherWork, minutes };
  });

/** Nodes that come after one, over however many between, in node order. */
const nodesAfter = ({ precedences }: LevellingProblem, from: number): number[] => {
  const next = new Map<number, number[]>();
  for (const { before, after } of precedences) next.set(before, [...(next.get(before) ?? []), after]);
  const seen = new Set<number>();
  const open = [from];
  for (const node of open)
    for (const other of next.get(node) ?? [])
      if (!seen.has(other)) {
        seen.add(other);
        open.push(other);
      }
  return [...seen].sort((a, b) => a - b);
};
