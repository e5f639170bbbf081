import { type Compiled, compile } from "./compiled";
import type { EngineNode, Interval, LevellingProblem } from "./problem";
import type { Schedule } from "./schedule";

/** The problem with time run backwards: links reversed, calendars reflected in the horizon, nothing pinned or released. */
export function mirrored(problem: LevellingProblem): Compiled {
  const { horizon } = problem;
  const back = <T extends Interval>(intervals: readonly T[]): T[] =>
    intervals.toReversed().map((one) => ({ ...one, start: horizon - one.end, end: horizon - one.start }));
  return compile({
    ...problem,
    makers: problem.makers.map((maker) => ({ ...maker, calendar: back(maker.calendar) })),
    machines: problem.machines.map((machine) => ({
      ...machine,
      calendar: machine.calendar && back(machine.calendar),
      taken: back(machine.taken ?? []),
    })),
    rooms: problem.rooms.map((room) => ({ ...room, free: back(room.free), taken: back(room.taken ?? []) })),
    performers: problem.performers.map((performer) => ({ ...performer, free: back(performer.free) })),
    nodes: problem.nodes.map((node): EngineNode => ({ ...node, release: 0, pin: null })),
    precedences: problem.precedences.map((link) => ({ ...link, before: link.after, after: link.before, maxLag: null })),
    week: { ...problem.week, offset: horizon - problem.week.offset },
    dues: [],
    current: null,
  });
}

/**
 * What the backward pass is held by: no due may end later than its date, or than it does now when it is late already. Given as
 * releases of the mirrored problem.
 */
export function mirroredReleases(problem: LevellingProblem, { start, end }: Schedule): Int32Array {
  const releases = new Int32Array(problem.nodes.length);
  const finish = end.reduce((latest, at) => Math.max(latest, at), 0);
  releases.fill(Math.max(0, problem.horizon - finish));
  for (const due of problem.dues) {
    if (start[due.node]! < 0) continue;
    releases[due.node] = Math.max(releases[due.node]!, problem.horizon - Math.max(due.at, end[due.node]!));
  }
  return releases;
}
