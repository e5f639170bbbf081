import type { WallMinute } from "#lib/calendar/plainDate";
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
export const waitingOn = (plan: Planned): Waiting[] => {
  const after = new Map<number, number[]>();
  for (const { before, after: next } of plan.problem.precedences) after.set(before, [...(after.get(before) ?? []), next]);
  return plan.approvals.map(({ node, code, title, by, answer }) => {
    const behind = reached(node, after);
    const garments = new Set<string>();
    const otherWork: string[] = [];
    let minutes = 0;
    for (const at of behind) {
      const what = plan.nodes[at]!;
      minutes += plan.problem.nodes[at]!.minutes;
      if (what.kind === "operation") for (const garment of what.garments) garments.add(garment);
      else if (what.kind === "fitting" || what.kind === "finished") garments.add(what.garment);
      else if (what.kind === "other") otherWork.push(what.task);
    }
    const numbers = plan.garments.map(({ number }) => number).filter((number) => garments.has(number));
    return { approval: code, title, by, answer, garments: numbers, otherWork, minutes };
  });
};

/** Nodes that come after one, in node order. */
const reached = (from: number, after: ReadonlyMap<number, readonly number[]>): number[] => {
  const seen = new Set<number>();
  const open = [from];
  for (const node of open)
    for (const next of after.get(node) ?? [])
      if (!seen.has(next)) {
        seen.add(next);
        open.push(next);
      }
  return [...seen].sort((a, b) => a - b);
};
