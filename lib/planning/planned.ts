import type { GarmentWork } from "#lib/breakdown/work";
import type { LevellingAnswer } from "#lib/levelling/problem";
import { toWall } from "./axis";
import { overtimeOf } from "./labourCost";
import { workMinutes } from "./outwork";
import type { Prepared } from "./prepared";
import type { PlanNode, PlannedFitting, PlannedTask } from "./stagingPlan";

type Described = Pick<PlannedTask, "garments" | "origin" | "operation" | "name" | "skill" | "machine">;

/** Every operation, and other work, with who does it and when, in node order. */
export const plannedTasks = (prepared: Prepared, { plan }: LevellingAnswer): PlannedTask[] => {
  const { problem, axis } = prepared;
  const taskAt = describer(prepared);
  return prepared.nodes.flatMap((node, at): PlannedTask[] => {
    const task = taskAt(node);
    if (!task) return [];
    const placed = plan.placed[at] ?? null;
    const maker = placed?.makers[0]?.maker ?? null;
    return [
      {
        node: at,
        key: node.key,
        ...task,
        minutes: workMinutes(problem.nodes[at]!),
        maker: maker === null ? null : problem.makers[maker]!.id,
        start: placed && toWall(axis, placed.start),
        end: placed && toWall(axis, placed.end),
        stretches: (placed?.stretches ?? []).map(({ start, end }) => ({ start: toWall(axis, start), end: toWall(axis, end) })),
        overtimeMinutes: placed && maker !== null ? overtimeOf(problem, maker, placed.stretches) : 0,
      },
    ];
  });
};

const describer = (prepared: Prepared) => {
  const { staging } = prepared;
  const works = worksByGarment(prepared);
  const others = new Map(staging.otherWork.map((task) => [task.code, task]));
  return (node: PlanNode): Described | null => {
    if (node.kind === "other") {
      const { origin, code, title, garment, skill, machine } = others.get(node.task)!;
      return { garments: garment === null ? [] : [garment], origin, operation: code, name: title, skill, machine };
    }
    if (node.kind !== "operation") return null;
    const { garments, operation: code } = node;
    const { name, skill, machine } = works.get(garments[0]!)!.operations.find((one) => one.code === code)!;
    return { garments, origin: "operation", operation: code, name: name[staging.production.words], skill, machine };
  };
};

/** Every fitting of a named performer, in node order. */
export const plannedFittings = (prepared: Prepared, { plan }: LevellingAnswer): PlannedFitting[] => {
  const { staging, problem, axis } = prepared;
  const works = worksByGarment(prepared);
  const visits = [...plan.visits].sort((a, b) => a.start - b.start || a.performer - b.performer);
  const visitOf = new Map(visits.flatMap((visit, at) => visit.fittings.map((node) => [node, { ...visit, number: at + 1 }])));
  return prepared.nodes.flatMap((node, at): PlannedFitting[] => {
    const engine = problem.nodes[at]!;
    if (node.kind !== "fitting" || engine.kind !== "fitting") return [];
    const fitting = works.get(node.garment)!.fittings.find(({ code, wearer }) => code === node.fitting && wearer === node.wearer)!;
    const placed = plan.placed[at] ?? null;
    const visit = visitOf.get(at);
    return [
      {
        node: at,
        garment: node.garment,
        fitting: node.fitting,
        name: fitting.name[staging.production.words],
        performer: problem.performers[engine.performer]!.id,
        minutes: engine.minutes,
        fitter: visit ? problem.makers[visit.fitter]!.id : null,
        room: visit ? problem.rooms[visit.room]!.id : null,
        start: placed && toWall(axis, placed.start),
        end: placed && toWall(axis, placed.end),
        visit: visit?.number ?? null,
      },
    ];
  });
};

const worksByGarment = ({ works }: Prepared): ReadonlyMap<string, GarmentWork> => new Map(works.map((work) => [work.garment, work]));
