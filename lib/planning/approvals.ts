import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment, GarmentSet } from "#lib/casting/wardrobe";
import type { Precedence } from "#lib/levelling/problem";
import type { Minutes } from "#lib/units/quantities";
import { awaitsApproval } from "./batches";
import { type Graph, straightAfter } from "./graph";
import type { PlanNode } from "./stagingPlan";

/** Approvals of prototypes, and what waits for them. Their nodes follow those of the graph. */
export interface Approvals {
  readonly nodes: readonly PlanNode[];
  readonly precedences: readonly Precedence[];
}

/**
 * The designer looks at a finished prototype for the working days the set allows; until then the rest of the set may not go on past the
 * operation named, or may not be begun when none is.
 */
export const approvals = (
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  sets: readonly GarmentSet[],
  graph: Graph,
  workingDay: Minutes,
): Approvals => {
  const nodes: PlanNode[] = [];
  const precedences: Precedence[] = [];
  const workOf = new Map(works.map((work) => [work.garment, work]));
  for (const set of sets) {
    const members = garments.filter((garment) => garment.set === set.code && graph.finished(garment.number) !== undefined);
    const prototype = members.find((garment) => awaitsApproval(garment, sets));
    if (!prototype) continue;
    const approval = graph.nodes.length + nodes.length;
    nodes.push({ key: `${set.code}/approval`, kind: "approval", set: set.code });
    precedences.push({
      before: graph.finished(prototype.number)!,
      after: approval,
      lag: set.approvalDays * workingDay,
      lagKind: "working",
      maxLag: null,
    });
    const held = members
      .filter((garment) => garment !== prototype)
      .flatMap((garment) => heldCodes(workOf.get(garment.number)!, set.freeUntil).flatMap((code) => graph.find(garment.number, code)));
    for (const node of new Set(held)) precedences.push(straightAfter(approval, node));
  }
  return { nodes, precedences };
};

/** The first operations and fittings that may not be begun: those that wait for `freeUntil`, or that wait for nothing. */
const heldCodes = (work: GarmentWork, freeUntil: string | null): string[] =>
  [...work.operations, ...work.fittings]
    .filter(({ waitsFor }) => (freeUntil === null ? waitsFor.length === 0 : waitsFor.some(({ on }) => on === freeUntil)))
    .map(({ code }) => code);
