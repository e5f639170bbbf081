import { openApprovals } from "#lib/approvals/openApprovals";
import type { LevellingAnswer } from "#lib/levelling/problem";
import { toWall } from "./axis";
import type { Prepared } from "./prepared";
import type { PlannedApproval } from "./stagingPlan";

/** Every approval still to be given, and when the plan counts on it, in node order. */
export const plannedApprovals = ({ staging, garments, nodes, axis }: Prepared, { plan }: LevellingAnswer): PlannedApproval[] => {
  const open = new Map(openApprovals(staging, garments).map((approval) => [approval.code, approval]));
  return nodes.flatMap((node, at): PlannedApproval[] => {
    if (node.kind !== "approval") return [];
    const { code, title, by, prototype, samples, askedOn, expectedOn } = open.get(node.approval)!;
    const placed = plan.placed[at];
    const answer = placed ? toWall(axis, placed.end) : null;
    return [{ node: at, code, title, by, prototype, samples: samples.map((sample) => sample.code), askedOn, expectedOn, answer }];
  });
};
