import type { OtherTask } from "#lib/approvals/otherWork";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import { DEFAULT_RULES } from "#lib/fittings/rules";
import { SKILLS, type Skill } from "#lib/labour/skills";
import type { EngineMachine, EngineNode, EngineTask } from "#lib/levelling/problem";
import type { Batch } from "./batches";
import type { PlanNode } from "./stagingPlan";

/** What the nodes are made of, looked up by name. */
export interface Sources {
  readonly garments: ReadonlyMap<string, Garment>;
  readonly works: ReadonlyMap<string, GarmentWork>;
  readonly batchOf: ReadonlyMap<number, Batch>;
  readonly taskAt: ReadonlyMap<number, OtherTask>;
  readonly machines: readonly EngineMachine[];
  readonly performers: ReadonlyMap<string, number>;
  /** First minute at which the node's goods are there. */
  readonly release: (node: number) => number;
  /** Minutes by the clock that an operation takes out of the house; null when it is done here. */
  readonly out: (garment: string, operation: string) => number | null;
}

/** A node as the engine sees it. */
export const engineNode = (node: PlanNode, at: number, from: Sources): EngineNode => {
  const release = from.release(at);
  if (node.kind === "finished") return { ...instant(node.key, node.garment), release };
  if (node.kind === "approval") return { ...instant(node.key, node.approval), release };
  if (node.kind === "other") {
    const task = from.taskAt.get(at)!;
    return {
      ...instant(node.key, node.garment ?? node.key),
      minutes: task.minutes[1],
      ...workedWith(task.skill, task.machine, from),
      release,
      pauses: true,
    };
  }
  if (node.kind === "operation") {
    const { operation, minutes, garments } = from.batchOf.get(at)!;
    const out = from.out(garments[0]!, operation.code);
    if (out !== null) return { ...instant(node.key, garments[0]!), minutes: out, release };
    return {
      ...instant(node.key, garments.length === 1 ? garments[0]! : node.key),
      minutes,
      ...workedWith(operation.skill, operation.machine, from),
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

/** One maker with the skill, and a machine of the kind when there is one. */
const workedWith = (skill: Skill, kind: string | null, { machines }: Sources): Pick<EngineTask, "crew" | "machines"> => {
  const machine = machines.findIndex(({ id }) => id === kind);
  return { crew: [{ skill: SKILLS.indexOf(skill), count: 1 }], machines: machine < 0 ? [] : [{ machine, count: 1 }] };
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
