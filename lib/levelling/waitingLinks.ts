import { joinedLinks } from "./insideLinks";
import { during, following, type PlanTimes } from "./planTimes";
import type { Link } from "./problem";

/** What the node waited for from `ready` until its start. */
export function waitingLinks(times: PlanTimes, node: number, ready: number): Link[] {
  const { compiled, plan } = times;
  const { start, makers, overtime } = plan.placed[node]!;
  const fitting = compiled.fittings[node];
  if (fitting) return [{ node, cause: "fitting", start: ready, end: start, on: { performer: fitting.performer } }];
  const people = makers.map(({ maker }) => maker);
  const machines = compiled.tasks[node]!.machines.map(({ machine }) => machine);
  const edges = times.edges(people, machines, ready, start);
  return joinedLinks(
    edges
      .slice(0, -1)
      .map((from, i): Link => ({ node, start: from, end: edges[i + 1]!, ...reasonAt(times, node, people, from, start, overtime) })),
  );
}

function reasonAt(
  times: PlanTimes,
  node: number,
  people: readonly number[],
  at: number,
  start: number,
  overtime: boolean,
): Pick<Link, "cause" | "on"> {
  const { compiled } = times;
  const { machines: all } = compiled.problem;
  const works = (maker: number): boolean => times.works(maker, at, overtime);
  const busyWith = (maker: number): Pick<Link, "cause" | "on"> | null => {
    const task = during(times.tasks[maker]!, at);
    if (task !== undefined && task.node !== node) return { cause: "maker busy", on: { maker, node: task.node } };
    const visit = during(times.visits[maker]!, at);
    return visit === undefined ? null : { cause: "fitting", on: { maker, performer: visit.performer!, node: visit.node } };
  };
  // A full machine is the cause only where somebody could have worked at it.
  const someoneFree = (): boolean =>
    compiled.seats[node]!.every(({ skill }) => compiled.skilled[skill]!.some((maker) => works(maker) && busyWith(maker) === null));
  for (const { machine, count } of compiled.tasks[node]!.machines) {
    if (times.machineUse(machine, at) + count > all[machine]!.count && someoneFree()) return { cause: "machine", on: { machine } };
  }
  for (const maker of people) {
    const reason = busyWith(maker);
    if (reason !== null) return reason;
  }
  for (const maker of people) if (!works(maker)) return { cause: "calendar", on: { maker } };
  // Everybody is there but the gap is too short: the next thing that somebody does is what is in the way.
  for (const maker of people) {
    const next = following(times.tasks[maker]!, at);
    if (next !== undefined && next.start < start) return { cause: "maker busy", on: { maker, node: next.node } };
  }
  const [machine] = compiled.tasks[node]!.machines;
  if (machine !== undefined) return { cause: "machine", on: { machine: machine.machine } };
  return { cause: "calendar", on: people[0] === undefined ? null : { maker: people[0] } };
}
