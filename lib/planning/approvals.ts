import type { OpenApproval } from "#lib/approvals/openApprovals";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { Precedence } from "#lib/levelling/problem";
import type { Minutes } from "#lib/units/quantities";
import { type Graph, straightAfter } from "./graph";
import { needing, type OtherNodes } from "./otherNodes";
import type { PlanNode } from "./stagingPlan";

/** Approvals still to be given, and what waits for them. Their nodes follow those of the other work. */
export interface Approvals {
  readonly nodes: readonly PlanNode[];
  readonly precedences: readonly Precedence[];
  /** By node. */
  readonly approvalAt: ReadonlyMap<number, OpenApproval>;
}

/**
 * Somebody looks at a finished prototype, or at all samples together, for the working days it takes; until then the set may not go on past the
 * operation named (or may not be begun when none is), the material may not be cut, and other work that waits for it may not begin.
 */
export const approvals = (
  open: readonly OpenApproval[],
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  graph: Graph,
  other: OtherNodes,
  workingDay: Minutes,
): Approvals => {
  const first = graph.nodes.length + other.nodes.length;
  const workOf = new Map(works.map((work) => [work.garment, work]));
  const given = open.filter(({ prototype }) => prototype === null || other.finished(prototype) !== undefined);
  const approvalAt = new Map(given.map((approval, at) => [first + at, approval]));
  const precedences = [...approvalAt].flatMap(([node, approval]): Precedence[] => {
    const { prototype, samples, days, set, freeUntil, material, code } = approval;
    const looked = [
      ...(prototype === null ? [] : [other.finished(prototype)!]),
      ...[...other.taskAt].filter(([, task]) => samples.includes(task)).map(([at]) => at),
    ];
    const members = garments.filter((garment) => set !== null && garment.set === set && garment.number !== prototype);
    const held = [
      ...members.flatMap(({ number }) => heldCodes(workOf.get(number), freeUntil).flatMap((one) => graph.find(number, one))),
      ...(material === null ? [] : needing(material, works, graph)),
      ...[...other.taskAt].filter(([, { waitsFor }]) => waitsFor === code).map(([at]) => at),
    ];
    return [
      ...looked.map((before): Precedence => ({ before, after: node, lag: days * workingDay, lagKind: "working", maxLag: null })),
      ...[...new Set(held)].map((after) => straightAfter(node, after)),
    ];
  });
  const nodes = given.map(({ code, set, prototype }): PlanNode => {
    const key = prototype === null ? `approval/${code}` : `${code}/approval`;
    return { key, kind: "approval", approval: code, set };
  });
  return { nodes, precedences, approvalAt };
};

/** The first operations and fittings that may not be begun: those that wait for `freeUntil`, or that wait for nothing. */
const heldCodes = (work: GarmentWork | undefined, freeUntil: string | null): string[] =>
  [...(work?.operations ?? []), ...(work?.fittings ?? [])]
    .filter(({ waitsFor }) => (freeUntil === null ? waitsFor.length === 0 : waitsFor.some(({ on }) => on === freeUntil)))
    .map(({ code }) => code);
