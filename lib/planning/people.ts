import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { freeTime } from "#lib/fittings/freeTime";
import { DEFAULT_RULES } from "#lib/fittings/rules";
import { type Days, makerCalendar, workroomHours } from "#lib/labour/calendars";
import { shared } from "#lib/labour/intervals";
import { SKILLS } from "#lib/labour/skills";
import type { EngineMachine, EngineMaker, EnginePerformer, EngineRoom, Interval } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import { type Axis, onAxis } from "./axis";

export const FITTING_ROOM = "fitting room";

/** Makers in the order of the staging, on the engine's axis. */
export const engineMakers = (
  { makers, absences }: Staging,
  axis: Axis,
  days: Days,
  overtime: ReadonlyMap<string, readonly Interval[]>,
): EngineMaker[] =>
  makers.map((maker) => ({
    id: maker.code,
    pace: SKILLS.map((skill) => maker.skills[skill] ?? 0),
    calendar: onAxis(axis, makerCalendar(maker, absences, days, overtime.get(maker.code))),
    costPerHour: maker.costPerHour,
    overtimeCostPerHour: maker.overtimeCostPerHour,
  }));

/** Fitting rooms keep the workroom's hours. */
export const engineRooms = ({ machines }: Staging, open: readonly Interval[]): EngineRoom[] =>
  machines.filter(({ kind }) => kind === FITTING_ROOM).map(({ code, count }) => ({ id: code, count, free: open }));

/** Machines of a kind are alike; there for as long as there are people. A kind that is needed and nobody has counts none. */
export const engineMachines = ({ machines }: Staging, needed: readonly string[]): EngineMachine[] => {
  const kinds = new Set([...machines.map(({ kind }) => kind).filter((kind) => kind !== FITTING_ROOM), ...needed]);
  return [...kinds].sort().map((kind) => ({
    id: kind,
    count: machines.filter((machine) => machine.kind === kind).reduce((sum, { count }) => sum + count, 0),
    calendar: null,
  }));
};

/** Performers in the order of the staging. Before any calls are known at all, they may be fitted whenever the workroom is open. */
export const enginePerformers = (
  { production, performers, calls, makers, absences }: Staging,
  axis: Axis,
  days: Days,
): EnginePerformer[] => {
  const within = [{ start: days.from * MINUTES_PER_DAY, end: days.to * MINUTES_PER_DAY }];
  const open = calls.length === 0 ? workroomHours(makers, absences, days) : null;
  return performers.map(({ code }) => ({
    id: code,
    visitsAWeek: production.visitsPerWeek ?? DEFAULT_RULES.visitsPerWeek,
    free: onAxis(axis, open ?? shared(freeTime(code, calls, DEFAULT_RULES), within)),
  }));
};
