import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import { DEFAULT_RULES } from "#lib/fittings/rules";
import { SKILLS } from "#lib/labour/skills";
import type { EngineMachine, EngineNode, EngineTask } from "#lib/levelling/problem";
import type { Batch } from "./batches";
import type { PlanNode } from "./stagingPlan";

/** What the nodes are made of, looked up by name. */
export interface Sources {
  readonly garments: ReadonlyMap<string, Garment>;
  readonly works: ReadonlyMap<string, GarmentWork>;
  readonly batchOf: ReadonlyMap<number, Batch>;
  readonly machines: readonly EngineMachine[];
  readonly performers: ReadonlyMap<string, number>;
  /** First minute at which the node's goods are there. */
  readonly release: (node: number) => number;
}

/** A node as the engine sees it. */
export const engineNode = (node: PlanNode, at: number, from: Sources): EngineNode => {
  const release = from.release(at);
  if (node.kind === "finished") return { ...instant(node.key, node.garment), release };
  if (node.kind === "approval") return { ...instant(node.key, node.set), release };
  if (node.kind === "operation") {
    const { operation, minutes, garments } = from.batchOf.get(at)!;
    const machine = from.machines.findIndex(({ id }) => id === operation.machine);
    return {
      ...instant(node.key, garments.length === 1 ? garments[0]! : node.key),
      minutes,
      crew: [{ skill: SKILLS.indexOf(operation.skill), count: 1 }],
      machines: machine < 0 ? [] : [{ machine, count: 1 }],
      release,
      pauses: operation.pauses,
      straining: operation.straining,
    };
  }
  const performer = from.performers.get(from.garments.get(node.garment)!.wearers[node.wearer]?.performer ?? "");
  const fitting = from.works.get(node.garment)!.fittings.find(({ code, wearer }) => code === node.fitting && wearer === node.wearer)!;
  // A place without a performer has nobody to call: only the fitter's time is kept, so that the hours are those after casting.
  if (performer === undefined)
    return { ...instant(node.key, node.garment), minutes: fitting.minutes, crew: [{ skill: SKILLS.indexOf("fit"), count: 1 }], release };
  return {
    kind: "fitting",
    id: node.key,
    group: node.garment,
    performer,
    minutes: fitting.minutes,
    fitterSkill: SKILLS.indexOf("fit"),
    release,
    step: DEFAULT_RULES.step,
    pin: null,
  };
};

/** A point in the graph that takes nobody's time. */
const instant = (id: string, group: string): EngineTask => ({
  kind: "task",
  id,
  group,
  minutes: 0,
  crew: [],
  machines: [],
  release: 0,
  pauses: false,
  straining: null,
  pin: null,
});
