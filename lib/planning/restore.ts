import type { Skill } from "#lib/labour/skills";
import { explain } from "#lib/levelling/explain";
import type { LevellingAnswer, LevellingProblem, Placement, Plan, Unplaced, Visit } from "#lib/levelling/problem";
import { withStretches } from "#lib/levelling/withStretches";
import { toAxis, toWall } from "./axis";
import type { Prepared } from "./prepared";
import type { StoredPlan, StoredRow, StoredVisit } from "./storedPlan";

/** The answer as it is kept, by keys, codes and the wall clock. */
export const storePlan = (
  { problem, nodes, axis }: Pick<Prepared, "problem" | "nodes" | "axis">,
  answer: LevellingAnswer,
  inputRevision: number,
): StoredPlan => {
  const { plan, measures, bounds, seed, rounds, schedules, rule } = answer;
  const unplaced = new Map(plan.unplaced.map((one) => [one.node, one]));
  const rows = nodes.map(({ key }, at): StoredRow => {
    const placed = plan.placed[at] ?? null;
    const why = unplaced.get(at);
    return {
      key,
      start: placed && toWall(axis, placed.start),
      end: placed && toWall(axis, placed.end),
      makers: (placed?.makers ?? []).map(({ maker, skill }) => ({
        maker: problem.makers[maker]!.id,
        skill: problem.skills[skill]! as Skill,
      })),
      overtime: placed?.overtime ?? false,
      worked: (placed?.stretches ?? []).map(({ start, end }) => ({ start: toWall(axis, start), end: toWall(axis, end) })),
      machine: machineOf(problem, at),
      unplaced: why ? { reason: why.reason, detail: why.detail } : null,
    };
  });
  const visits = plan.visits.map(
    ({ performer, fitter, room, start, end, fittings }): StoredVisit => ({
      performer: problem.performers[performer]!.id,
      fitter: problem.makers[fitter]!.id,
      room: problem.rooms[room]!.id,
      start: toWall(axis, start),
      end: toWall(axis, end),
      fittings: fittings.map((node) => nodes[node]!.key),
    }),
  );
  return { seed, rounds, schedules, rule, inputRevision, measures, bounds, rows, visits };
};

const machineOf = ({ nodes, machines }: LevellingProblem, at: number): string | null => {
  const node = nodes[at]!;
  const first = node.kind === "task" ? node.machines[0] : undefined;
  return first ? machines[first.machine]!.id : null;
};

/** A plan of one problem as a plan of another, changed one: work is known by its key, people and rooms by their codes, and times by the clock. */
export const carriedPlan = (from: Pick<Prepared, "problem" | "nodes" | "axis">, answer: LevellingAnswer, to: Prepared): Plan =>
  restored(to, storePlan(from, answer, 0));

/**
 * A kept plan read beside the staging of today: work that is no longer needed falls away, and work that is new, or whose people have gone,
 * has no place until the production is levelled again.
 */
export const restorePlan = (prepared: Prepared, stored: StoredPlan): LevellingAnswer => {
  const plan = restored(prepared, stored);
  const { measures, bounds, seed, rounds, schedules, rule } = stored;
  return { plan, measures, bounds, late: explain(prepared.problem, plan), seed, rounds, schedules, rule };
};

const restored = (prepared: Prepared, stored: StoredPlan): Plan => {
  const { problem, nodes, axis } = prepared;
  const places = {
    node: new Map(nodes.map(({ key }, at) => [key, at])),
    maker: new Map(problem.makers.map(({ id }, at) => [id, at])),
    room: new Map(problem.rooms.map(({ id }, at) => [id, at])),
    performer: new Map(problem.performers.map(({ id }, at) => [id, at])),
  };
  const visits = stored.visits.flatMap((visit): Visit[] => {
    const fittings = visit.fittings.map((key) => places.node.get(key));
    const performer = places.performer.get(visit.performer);
    const fitter = places.maker.get(visit.fitter);
    const room = places.room.get(visit.room);
    if (performer === undefined || fitter === undefined || room === undefined || !fittings.every((node) => node !== undefined)) return [];
    return [{ performer, fitter, room, start: toAxis(axis, visit.start), end: toAxis(axis, visit.end), fittings }];
  });
  const visited = new Set(visits.flatMap(({ fittings }) => fittings));
  const rows = new Map(stored.rows.map((row) => [row.key, row]));
  const placed = nodes.map(({ key }, at): Placement | null => {
    const row = rows.get(key);
    if (!row || row.start === null || row.end === null || (problem.nodes[at]!.kind === "fitting" && !visited.has(at))) return null;
    const makers = row.makers.flatMap(({ maker, skill }) => {
      const index = places.maker.get(maker);
      return index === undefined ? [] : [{ maker: index, skill: problem.skills.indexOf(skill) }];
    });
    if (makers.length < row.makers.length) return null;
    return { start: toAxis(axis, row.start), end: toAxis(axis, row.end), makers, stretches: [], overtime: row.overtime };
  });
  const unplaced = placed.flatMap((one, node): Unplaced[] => {
    if (one) return [];
    const why = rows.get(nodes[node]!.key)?.unplaced;
    return [
      why ? { node, reason: why.reason as Unplaced["reason"], detail: why.detail } : { node, reason: "not in the kept plan", detail: "" },
    ];
  });
  return withStretches(problem, { placed, visits, unplaced });
};
