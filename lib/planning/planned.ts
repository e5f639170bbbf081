import type { GarmentWork } from "#lib/breakdown/work";
import type { LevellingAnswer } from "#lib/levelling/problem";
import { toWall } from "./axis";
import { overtimeOf } from "./labourCost";
import type { Prepared } from "./prepared";
import type { PlannedFitting, PlannedTask } from "./stagingPlan";

/** Every operation with who does it and when, in node order. */
export const plannedTasks = (prepared: Prepared, { plan }: LevellingAnswer): PlannedTask[] => {
  const { staging, problem, axis } = prepared;
  const works = worksByGarment(prepared);
  return prepared.nodes.flatMap((node, at): PlannedTask[] => {
    if (node.kind !== "operation") return [];
    const operation = works.get(node.garments[0]!)!.operations.find(({ code }) => code === node.operation)!;
    const placed = plan.placed[at] ?? null;
    const maker = placed?.makers[0]?.maker ?? null;
    return [
      {
        node: at,
        key: node.key,
        garments: node.garments,
        operation: node.operation,
        name: operation.name[staging.production.words],
        skill: operation.skill,
        machine: operation.machine,
        minutes: problem.nodes[at]!.minutes,
        maker: maker === null ? null : problem.makers[maker]!.id,
        start: placed && toWall(axis, placed.start),
        end: placed && toWall(axis, placed.end),
        stretches: (placed?.stretches ?? []).map(({ start, end }) => ({ start: toWall(axis, start), end: toWall(axis, end) })),
        overtimeMinutes: placed && maker !== null ? overtimeOf(problem, maker, placed.stretches) : 0,
      },
    ];
  });
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
