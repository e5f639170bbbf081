import type { LevellingProblem, Plan } from "./problem";

/** The same problem with everything sorted by id, so that the order of the input cannot matter, and the way back. */
export interface Canonical {
  readonly problem: LevellingProblem;
  /** A plan of the sorted problem in the indices of the one given. */
  readonly toGiven: (plan: Plan) => Plan;
  /** Index in the given problem of each node of the sorted one. */
  readonly nodes: readonly number[];
}

interface Maps {
  readonly nodes: readonly number[];
  readonly makers: readonly number[];
  readonly skills: readonly number[];
  readonly machines: readonly number[];
  readonly rooms: readonly number[];
  readonly performers: readonly number[];
}

export function canonical(given: LevellingProblem): Canonical {
  const sorted: Maps = {
    nodes: sortedBy(given.nodes.map(({ id }) => id)),
    makers: sortedBy(given.makers.map(({ id }) => id)),
    skills: sortedBy(given.skills),
    machines: sortedBy(given.machines.map(({ id }) => id)),
    rooms: sortedBy(given.rooms.map(({ id }) => id)),
    performers: sortedBy(given.performers.map(({ id }) => id)),
  };
  const to: Maps = {
    nodes: inverse(sorted.nodes),
    makers: inverse(sorted.makers),
    skills: inverse(sorted.skills),
    machines: inverse(sorted.machines),
    rooms: inverse(sorted.rooms),
    performers: inverse(sorted.performers),
  };
  return { problem: sortedProblem(given, sorted, to), toGiven: (plan) => movedPlan(plan, to.nodes, sorted), nodes: sorted.nodes };
}

function sortedProblem(given: LevellingProblem, sorted: Maps, to: Maps): LevellingProblem {
  const nodes = sorted.nodes.map((index) => {
    const node = given.nodes[index]!;
    if (node.kind === "fitting") {
      const pin = node.pin === null ? null : { ...node.pin, fitter: to.makers[node.pin.fitter]!, room: to.rooms[node.pin.room]! };
      return { ...node, performer: to.performers[node.performer]!, fitterSkill: to.skills[node.fitterSkill]!, pin };
    }
    return {
      ...node,
      crew: node.crew.map(({ skill, count }) => ({ skill: to.skills[skill]!, count })),
      machines: node.machines
        .map(({ machine, count }) => ({ machine: to.machines[machine]!, count }))
        .sort((a, b) => a.machine - b.machine),
      pin: node.pin === null ? null : { ...node.pin, makers: node.pin.makers.map((maker) => to.makers[maker]!) },
    };
  });
  return {
    ...given,
    skills: sorted.skills.map((index) => given.skills[index]!),
    makers: sorted.makers.map((index) => {
      const maker = given.makers[index]!;
      return { ...maker, pace: sorted.skills.map((skill) => maker.pace[skill] ?? 0) };
    }),
    machines: sorted.machines.map((index) => given.machines[index]!),
    rooms: sorted.rooms.map((index) => given.rooms[index]!),
    performers: sorted.performers.map((index) => given.performers[index]!),
    nodes,
    precedences: given.precedences
      .map((link) => ({ ...link, before: to.nodes[link.before]!, after: to.nodes[link.after]! }))
      .sort((a, b) => a.before - b.before || a.after - b.after || a.lag - b.lag),
    dues: given.dues
      .map((due) => ({ ...due, node: to.nodes[due.node]! }))
      .sort((a, b) => a.node - b.node || a.at - b.at || a.weight - b.weight),
    current: given.current === null ? null : movedPlan(given.current, sorted.nodes, to),
  };
}

/** `places` gives, for each node of the result, the node of `plan` it is; `maps` the new index of everything else. */
function movedPlan(plan: Plan, places: readonly number[], maps: Maps): Plan {
  return {
    placed: places.map((index) => {
      const placement = plan.placed[index] ?? null;
      if (placement === null) return null;
      return {
        ...placement,
        makers: placement.makers.map(({ maker, skill }) => ({ maker: maps.makers[maker]!, skill: maps.skills[skill]! })),
      };
    }),
    visits: plan.visits.map((visit) => ({
      ...visit,
      performer: maps.performers[visit.performer]!,
      fitter: maps.makers[visit.fitter]!,
      room: maps.rooms[visit.room]!,
      fittings: visit.fittings.map((node) => maps.nodes[node]!),
    })),
    unplaced: plan.unplaced.map((one) => ({ ...one, node: maps.nodes[one.node]! })).sort((a, b) => a.node - b.node),
  };
}

function sortedBy(ids: readonly string[]): number[] {
  return ids.map((_, index) => index).sort((a, b) => (ids[a]! < ids[b]! ? -1 : ids[a]! > ids[b]! ? 1 : a - b));
}

function inverse(sorted: readonly number[]): number[] {
  const places = new Array<number>(sorted.length);
  sorted.forEach((index, place) => {
    places[index] = place;
  });
  return places;
}
