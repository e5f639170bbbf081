import type { LateChain, LevellingProblem, Link, Plan } from "./problem";

/** The same problem with everything sorted by id, so that the order of the input cannot matter, and the way back. */
export interface Canonical {
  readonly problem: LevellingProblem;
  /** A plan of the sorted problem in the indices of the one given. */
  readonly toGiven: (plan: Plan) => Plan;
  /** Explanations of the sorted problem in the indices of the one given, in the order of its dues. */
  readonly chainsToGiven: (chains: readonly LateChain[]) => LateChain[];
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
  const dues = sortedDues(given, to.nodes);
  return {
    problem: sortedProblem(given, sorted, to, dues),
    toGiven: (plan) => movedPlan(plan, to.nodes, sorted),
    chainsToGiven: (chains) => chains.map((chain) => movedChain(chain, sorted, dues)).sort((a, b) => a.due - b.due),
    nodes: sorted.nodes,
  };
}

/** Indices of the given dues in the order of the sorted problem. */
function sortedDues({ dues }: LevellingProblem, node: readonly number[]): number[] {
  return dues
    .map((_, index) => index)
    .sort((a, b) => node[dues[a]!.node]! - node[dues[b]!.node]! || dues[a]!.at - dues[b]!.at || dues[a]!.weight - dues[b]!.weight);
}

function movedChain({ due, minutesLate, links }: LateChain, maps: Maps, dues: readonly number[]): LateChain {
  const moved = ({ node, cause, start, end, on }: Link): Link => {
    const there = {
      ...(on?.maker === undefined ? {} : { maker: maps.makers[on.maker]! }),
      ...(on?.machine === undefined ? {} : { machine: maps.machines[on.machine]! }),
      ...(on?.performer === undefined ? {} : { performer: maps.performers[on.performer]! }),
      ...(on?.node === undefined ? {} : { node: maps.nodes[on.node]! }),
    };
    return { node: maps.nodes[node]!, cause, start, end, on: on === null ? null : there };
  };
  return { due: dues[due]!, minutesLate, links: links.map(moved) };
}

function sortedProblem(given: LevellingProblem, sorted: Maps, to: Maps, dues: readonly number[]): LevellingProblem {
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
    dues: dues.map((index) => ({ ...given.dues[index]!, node: to.nodes[given.dues[index]!.node]! })),
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
