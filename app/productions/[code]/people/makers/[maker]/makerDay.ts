import { showClock, splitWall, wallMinute } from "#lib/calendar/clock";
import { addDays, dayNumber, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate, WallMinute } from "#lib/calendar/plainDate";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";

/** A stretch of a maker's day: part of a task, or a fitting to hold. */
export interface DayPart {
  readonly kind: "task" | "fitting";
  /** Key of the task, or of the fitting's place in the plan. */
  readonly key: string;
  readonly start: WallMinute;
  readonly from: string;
  readonly to: string;
  readonly minutes: Minutes;
  /** The whole of the task, at the maker's pace. */
  readonly whole: Minutes;
  readonly name: string;
  readonly garments: readonly string[];
  /** Null for a fitting. */
  readonly task: PlannedTask | null;
  /** Performer to be fitted, by code. */
  readonly performer: string | null;
  readonly room: string | null;
  /** It was begun on another day, and goes on on another. */
  readonly goesOn: { readonly before: boolean; readonly after: boolean };
}

/** What a maker does on a day, in order of time. */
export const makerDay = (plan: StagingPlan, maker: string, date: PlainDate): readonly DayPart[] => {
  const [dawn, night] = [wallMinute(date, 0), wallMinute(addDays(date, 1), 0)];
  const tasks = plan.tasks
    .filter((task) => task.maker === maker)
    .flatMap((task) => {
      const whole = task.stretches.reduce((sum, { start, end }) => sum + end - start, 0);
      return task.stretches
        .filter(({ start, end }) => start < night && end > dawn)
        .map((stretch): DayPart => {
          const [start, end] = [Math.max(stretch.start, dawn), Math.min(stretch.end, night)];
          const goesOn = { before: (task.start ?? start) < dawn, after: (task.end ?? end) > night };
          const of = { key: task.key, name: task.name, garments: task.garments, task, performer: null, room: null, goesOn };
          return { kind: "task", ...of, whole, ...clocks(start, end) };
        });
    });
  const fittings = plan.fittings.flatMap((fitting): readonly DayPart[] => {
    const { fitter, start, end, garment, name, performer, room } = fitting;
    if (fitter !== maker || start === null || end === null || start < dawn || start >= night) return [];
    const of = { key: `${garment}/${fitting.fitting}`, name, garments: [garment], task: null, performer, room };
    return [{ kind: "fitting", ...of, whole: end - start, goesOn: { before: false, after: false }, ...clocks(start, end) }];
  });
  return [...tasks, ...fittings].toSorted((a, b) => a.start - b.start || (a.key < b.key ? -1 : 1));
};

const clocks = (start: WallMinute, end: WallMinute) => ({
  start,
  from: showClock(splitWall(start).minute),
  to: showClock(splitWall(end).minute),
  minutes: end - start,
});

/** The seven days of the week a day is in. */
export const weekOf = (date: PlainDate): readonly PlainDate[] => {
  const monday = plainDate(mondayOf(dayNumber(date)));
  return Array.from({ length: 7 }, (_, day) => addDays(monday, day));
};
