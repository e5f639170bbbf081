import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type WallMinute } from "#lib/calendar/plainDate";
import { showWall } from "#lib/calendar/showDay";
import type { Call } from "#lib/casting/casting";
import { freeTime } from "#lib/fittings/freeTime";
import { DEFAULT_RULES } from "#lib/fittings/rules";
import type { Interval } from "#lib/levelling/problem";
import type { PlannedFitting, StagingPlan } from "#lib/planning/stagingPlan";
import type { Answer, Asked } from "./answer";
import { counted } from "./told";

export interface FittingClash {
  readonly garment: string;
  readonly name: string;
  readonly performer: string;
  readonly start: WallMinute;
  /** The call it runs into; outside the work span; in the free time after rehearsal; a room that is full. */
  readonly with: Exclude<Call["kind"], "span"> | "outside the work span" | "rest after rehearsal" | "room";
}

/** Fittings of the plan that run into something, read again from the calls and rooms themselves. */
export const fittingClashes = ({ staging, fittings }: Pick<StagingPlan, "staging" | "fittings">): readonly FittingClash[] => {
  const performers = [...new Set(fittings.map(({ performer }) => performer))];
  const days = new Map(performers.map((performer) => [performer, ownDays(staging.calls, performer)]));
  return fittings.flatMap((fitting) => {
    const { garment, name, performer, start } = fitting;
    if (start === null) return [];
    const called = staging.calls.length === 0 ? null : callClash(days.get(performer)!, fitting);
    const found = [called, isCrowded(staging, fittings, fitting) ? ("room" as const) : null];
    return found.flatMap((one) => (one === null ? [] : [{ garment, name, performer, start, with: one }]));
  });
};

/** What one performer is called to, and when that leaves them free. */
interface OwnDays {
  readonly own: readonly Call[];
  readonly free: readonly Interval[];
}

const ownDays = (calls: readonly Call[], performer: string): OwnDays => {
  const own = calls.filter((call) => call.performer === null || call.performer === performer);
  return { own, free: freeTime(performer, own, DEFAULT_RULES) };
};

const callClash = ({ own, free }: OwnDays, { start, end }: PlannedFitting): FittingClash["with"] | null => {
  const when = { start: start!, end: end! };
  const busy = own.find((call) => call.kind !== "span" && overlap(onWall(call), when));
  if (busy) return busy.kind as Exclude<Call["kind"], "span">;
  if (!own.some((call) => call.kind === "span" && holds(onWall(call), when))) return "outside the work span";
  return free.some((one) => holds(one, when)) ? null : "rest after rehearsal";
};

/** More visits at once than the room takes; the visits of one appointment follow each other. */
const isCrowded = (
  { machines }: StagingPlan["staging"],
  fittings: readonly PlannedFitting[],
  { room, start, end, visit }: PlannedFitting,
): boolean => {
  const together = fittings.filter(
    (one) => one.room === room && one.start !== null && overlap({ start: one.start, end: one.end! }, { start: start!, end: end! }),
  );
  return new Set([visit, ...together.map((one) => one.visit)]).size > (machines.find(({ code }) => code === room)?.count ?? 0);
};

const onWall = ({ date, from, to }: Call): Interval => {
  const zero = dayNumber(date) * MINUTES_PER_DAY;
  return { start: zero + from, end: zero + to };
};
const overlap = (a: Interval, b: Interval) => a.start < b.end && b.start < a.end;
const holds = (outer: Interval, inner: Interval) => outer.start <= inner.start && inner.end <= outer.end;

export const answerFittingClashes = ({ plan }: Asked): Answer => {
  const data = fittingClashes(plan);
  const name = new Map(plan.staging.performers.map((one) => [one.code, one.name]));
  const nowhere = plan.fittings.filter(({ start }) => start === null);
  const placed = plan.fittings.length - nowhere.length;
  return {
    says: [
      data.length === 0
        ? `None of the ${counted(placed, "fitting")} in the plan.`
        : `${counted(data.length, "clash", "clashes")} among ${counted(placed, "fitting")}.`,
      ...(nowhere.length > 0
        ? [`${counted(nowhere.length, "fitting has", "fittings have")} no time at all: the dancer is never free, or the room.`]
        : []),
    ],
    tables:
      data.length === 0
        ? []
        : [
            {
              title: "Clashes",
              headings: ["when", "dancer", "garment", "fitting", "clashes with"],
              rows: data.map((one) => [showWall(one.start), name.get(one.performer) ?? one.performer, one.garment, one.name, one.with]),
            },
          ],
    reasons: [
      plan.staging.calls.length === 0
        ? "No calls are known, so only the rooms could be looked at."
        : "Every fitting is held against the calls of its dancer, the free hour after three rehearsal hours, and the number of visits its room takes at once.",
    ],
    data,
  };
};
