import { isAfterGarment, isPartOfGarment, type OtherTask, openTasks } from "#lib/approvals/otherWork";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { Precedence } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import { type Graph, straightAfter } from "./graph";
import type { PlanNode } from "./stagingPlan";

/** Work that no construction lists, still to do. Its nodes follow those of the graph. */
export interface OtherNodes {
  readonly nodes: readonly PlanNode[];
  readonly precedences: readonly Precedence[];
  /** By node. */
  readonly taskAt: ReadonlyMap<number, OtherTask>;
  /** As the graph's; a garment that has no work but this is finished with it. */
  readonly finished: (garment: string) => number | undefined;
}

/** Part of its garment, after it, or on its own; before the operation it gates, and before its material is cut. */
export const otherNodes = (
  { otherWork }: Pick<Staging, "otherWork">,
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  graph: Graph,
): OtherNodes => {
  const tasks = openTasks(otherWork);
  const nodes: PlanNode[] = tasks.map(({ code, garment }) => ({ key: `other/${code}`, kind: "other", task: code, garment }));
  const taskAt = new Map(tasks.map((task, at) => [graph.nodes.length + at, task]));
  const finishes = new Map<string, number>();
  for (const task of tasks) {
    if (!isPartOfGarment(task) || graph.finished(task.garment!) !== undefined || finishes.has(task.garment!)) continue;
    finishes.set(task.garment!, graph.nodes.length + nodes.length);
    nodes.push({ key: `${task.garment}/finished`, kind: "finished", garment: task.garment! });
  }
  const finished = (garment: string) => graph.finished(garment) ?? finishes.get(garment);
  const precedences = [...taskAt].flatMap(([node, task]): Precedence[] => {
    const end = task.garment === null ? undefined : finished(task.garment);
    return [
      ...(end !== undefined && isPartOfGarment(task) ? [straightAfter(node, end)] : []),
      ...(end !== undefined && isAfterGarment(task) ? [straightAfter(end, node)] : []),
      ...heldBy(task, garments, works, graph).map((held) => straightAfter(node, held)),
    ];
  });
  return { nodes, precedences, taskAt, finished };
};

/** Operations that wait for it. A prototype whose approval it waits for goes on without it. */
const heldBy = (task: OtherTask, garments: readonly Garment[], works: readonly GarmentWork[], graph: Graph): number[] => {
  const waiting = garments.filter(({ set, prototype }) => !prototype || set === null || set !== task.waitsFor);
  const gated = waiting
    .filter(({ number, set }) => number === task.garment || (task.set !== null && set === task.set))
    .flatMap(({ number }) => (task.gates === null ? [] : graph.find(number, task.gates)));
  const numbers = new Set(waiting.map(({ number }) => number));
  const cut =
    task.material === null || task.origin === "sample"
      ? []
      : needing(
          task.material,
          works.filter(({ garment }) => numbers.has(garment)),
          graph,
        );
  return [...new Set([...gated, ...cut])];
};

/** Operations for which a material is cut, and those before them that dye it. */
export const needing = (material: string, works: readonly GarmentWork[], graph: Graph): number[] =>
  works.flatMap((work) =>
    work.needs
      .filter((need) => need.material === material)
      .flatMap(({ operation }) => [operation, ...dyedBefore(work, operation)])
      .flatMap((operation) => graph.find(work.garment, operation)),
  );

const dyedBefore = ({ operations }: GarmentWork, cut: string): string[] => {
  const of = new Map(operations.map((operation) => [operation.code, operation]));
  const before = new Set([cut]);
  for (const code of before) for (const { on } of of.get(code)?.waitsFor ?? []) before.add(on);
  return [...before].filter((code) => code !== cut && of.get(code)?.skill === "dye");
};
