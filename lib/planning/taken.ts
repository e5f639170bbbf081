import type { WallMinute } from "#lib/calendar/plainDate";
import { without } from "#lib/labour/intervals";
import type { Interval, LevellingProblem } from "#lib/levelling/problem";
import { toAxis } from "./axis";
import type { Prepared } from "./prepared";

/** A stretch of the wall clock that the plan of another production has already taken. */
export interface TakenSpan {
  /** Code of the maker, performer or room, or kind of the machine. */
  readonly of: string;
  readonly start: WallMinute;
  readonly end: WallMinute;
  /** Title of that production. */
  readonly by: string;
}

/** What the plans of the workroom's other productions have taken of the people and things that are shared. */
export interface Taken {
  readonly makers: readonly TakenSpan[];
  readonly performers: readonly TakenSpan[];
  readonly rooms: readonly TakenSpan[];
  readonly machines: readonly TakenSpan[];
}

/**
 * The same work with what others have taken away from everybody's time: nobody and nothing is booked twice. Work that may pause is put down for that of
 * another production as it is for a break.
 */
export const withTaken = (prepared: Prepared, taken: Taken): Prepared => {
  const { problem, axis } = prepared;
  const of = (spans: readonly TakenSpan[]) =>
    byCode(spans.map((span) => ({ ...span, start: toAxis(axis, span.start), end: toAxis(axis, span.end) })));
  const [makers, performers, rooms, machines] = [of(taken.makers), of(taken.performers), of(taken.rooms), of(taken.machines)];
  const less: LevellingProblem = {
    ...problem,
    makers: problem.makers.map((maker) => ({
      ...maker,
      calendar: maker.calendar.flatMap((stretch) => without([stretch], makers(maker.id)).map((left) => ({ ...stretch, ...left }))),
    })),
    performers: problem.performers.map((performer) => ({ ...performer, free: without(performer.free, performers(performer.id)) })),
    rooms: problem.rooms.map((room) => ({ ...room, taken: rooms(room.id) })),
    machines: problem.machines.map((machine) => ({ ...machine, taken: machines(machine.id) })),
  };
  return { ...prepared, problem: less, taken };
};

const byCode = (spans: readonly (Interval & { readonly of: string })[]): ((code: string) => readonly Interval[]) => {
  const found = new Map<string, Interval[]>();
  for (const { of, start, end } of spans) found.set(of, [...(found.get(of) ?? []), { start, end }]);
  return (code) => found.get(code) ?? [];
};
