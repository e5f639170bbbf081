import { dayNumber, mondayOf, weekdayOf } from "#lib/calendar/days";
import { type DayNumber, MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { without } from "#lib/labour/intervals";
import type { Maker } from "#lib/labour/workroom";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import type { Span, TimelineTask } from "./timeline";
import type { TimelineSpan } from "./timelineDays";

type Shown = Pick<StagingPlan, "staging" | "tasks" | "fittings">;

const dayOf = (wall: number): DayNumber => Math.floor(wall / MINUTES_PER_DAY);

/** The days and hours a plan is drawn over: whole weeks, from the week of `from` to the week of `to` or of the last work. */
export const timelineSpan = (plan: Shown, from: PlainDate, to: PlainDate | null): Omit<TimelineSpan, "left" | "width"> => {
  const { makers, absences } = plan.staging;
  const worked = [...plan.tasks.flatMap((task) => task.stretches), ...plan.fittings.filter(isPlaced)];
  const hours = makers.flatMap((maker) => [...maker.hours, ...maker.overtime]);
  const first = mondayOf(dayNumber(from));
  const last = to === null ? Math.max(first, ...worked.map(({ end }) => dayOf(end - 1))) : dayNumber(to);
  const closed = absences.filter(({ maker, fromTime }) => maker === null && fromTime === null);
  return {
    first,
    last: mondayOf(last) + 6,
    weekdays: new Set([
      ...makers.flatMap((maker) => maker.hours.map(({ weekday }) => weekday)),
      ...worked.map(({ start }) => weekdayOf(dayOf(start))),
    ]),
    closed: (day) => closed.find((absence) => dayNumber(absence.from) <= day && day <= dayNumber(absence.to))?.reason ?? null,
    from: Math.min(...(hours.length > 0 ? hours.map((one) => one.from) : [0])),
    to: Math.max(...(hours.length > 0 ? hours.map((one) => one.to) : [MINUTES_PER_DAY])),
  };
};

const isPlaced = <T extends { readonly start: number | null; readonly end: number | null }>(one: T): one is T & Span =>
  one.start !== null && one.end !== null;

/** `LM 014`, `LM 052–055` for numbers that follow each other, else `LM 052 +3`. */
export const numbersText = (garments: readonly string[]): string => {
  const [first = "", ...others] = garments;
  const parts = garments.map((number) => /^(.*?)(\d+)$/.exec(number));
  const start = Number(parts[0]?.[2]);
  const inRow = parts.every((part, at) => part?.[1] === parts[0]?.[1] && Number(part?.[2]) === start + at);
  if (others.length === 0) return first;
  return inRow ? `${first}–${parts.at(-1)![2]}` : `${first} +${others.length}`;
};

/** A plan's tasks as bars are made of, a row for each maker in their own order. */
export const timelineTasks = ({ staging, tasks }: Pick<Shown, "staging" | "tasks">): readonly TimelineTask[] =>
  tasks.flatMap((task) => {
    const row = staging.makers.findIndex((maker) => maker.code === task.maker);
    if (row === -1 || task.stretches.length === 0) return [];
    const overtime = task.overtimeMinutes > 0 ? outsideHours(task, staging.makers[row]!) : [];
    const number = numbersText(task.garments);
    return [{ key: task.key, row, number, short: number.replace(/^\D+/, ""), name: task.name, stretches: task.stretches, overtime }];
  });

const outsideHours = ({ stretches }: PlannedTask, maker: Maker): readonly Span[] => {
  const days = new Set(stretches.flatMap(({ start, end }) => [dayOf(start), dayOf(end - 1)]));
  const ordinary = [...days].flatMap((day) =>
    maker.hours
      .filter(({ weekday }) => weekday === weekdayOf(day))
      .map(({ from, to }) => ({ start: day * MINUTES_PER_DAY + from, end: day * MINUTES_PER_DAY + to })),
  );
  return without(stretches, ordinary);
};

/** Days a maker is away whole, as half-open spans of the wall clock. */
export const awaySpans = (staging: Pick<Staging, "absences">, maker: string): readonly (Span & { readonly reason: string })[] =>
  staging.absences
    .filter((absence) => absence.maker === maker && absence.fromTime === null)
    .map(({ from, to, reason }) => ({ start: dayNumber(from) * MINUTES_PER_DAY, end: (dayNumber(to) + 1) * MINUTES_PER_DAY, reason }));

/** Nodes the latest garment's finish hangs on, in the order of its links; empty when nothing is late. */
export const lateNodes = ({ answer }: Pick<StagingPlan, "answer">): readonly number[] => {
  const worst = answer.late.reduce<(typeof answer.late)[number] | null>(
    (most, chain) => (most === null || chain.minutesLate > most.minutesLate ? chain : most),
    null,
  );
  const nodes = (worst?.links ?? []).map((link) => link.node);
  return nodes.filter((node, at) => node !== nodes[at - 1]);
};
