import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { showWall } from "#lib/calendar/showDay";
import { minutesWithin, without } from "#lib/labour/intervals";
import type { Interval } from "#lib/levelling/problem";
import { toWall } from "#lib/planning/axis";
import { axisOf } from "#lib/planning/axisOf";
import { namesOf } from "#lib/planning/names";
import type { PlannedFitting, StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import type { Answer, Asked } from "./answer";
import { type DaySpan, isWithin, weekFrom } from "./dates";
import { freeByDay, freeTable } from "./freeTable";
import type { Options } from "./options";
import { counted, listed, sum } from "./told";

export interface WaitingOnFitting {
  readonly fitting: PlannedFitting;
  /** Nodes of the work that may not begin before it. */
  readonly work: readonly number[];
}

export interface FreeDancer {
  readonly performer: string;
  /** Inside the work span, outside class, calls and rests; fittings of the plan not taken off. Wall clock. */
  readonly free: readonly Interval[];
  /** What is left of it once the plan's fittings are taken off. */
  readonly left: Minutes;
}

export interface FittingsWaiting {
  readonly week: DaySpan;
  /** Fittings of the week in order of time. */
  readonly inWeek: readonly WaitingOnFitting[];
  /** All still to come, those of the week and those without a place among them. */
  readonly toCome: number;
  /** Standard minutes of the work that waits directly on the week's fittings. */
  readonly waiting: Minutes;
  /** Everybody with a fitting still to come. */
  readonly dancers: readonly FreeDancer[];
}

/** What waits on fittings, and when the dancers are free in a week. */
export const fittingsWaiting = (plan: StagingPlan, today: PlainDate, day: PlainDate): FittingsWaiting => {
  const week = weekFrom(day, today);
  const begins = dayNumber(week.from) * MINUTES_PER_DAY;
  const toCome = plan.fittings.filter(({ start }) => start === null || start >= begins);
  const inWeek = toCome
    .filter(({ start }) => start !== null && isWithin(week, start))
    .sort((a, b) => a.start! - b.start! || a.node - b.node)
    .map((fitting) => ({ fitting, work: workAfter(plan, fitting.node) }));
  const held = new Set(inWeek.flatMap(({ work }) => work));
  return {
    week,
    inWeek,
    toCome: toCome.length,
    waiting: sum([...held].map((node) => plan.problem.nodes[node]!.minutes)),
    dancers: plan.problem.performers
      .filter(({ id }) => toCome.some(({ performer }) => performer === id))
      .map(({ id }) => freeDancer(plan, id, week)),
  };
};

/** Tasks that wait for the node itself. */
const workAfter = ({ problem, tasks }: StagingPlan, fitting: number): number[] =>
  problem.precedences
    .filter(({ before, after }) => before === fitting && tasks.some(({ node }) => node === after))
    .map(({ after }) => after);

const freeDancer = (plan: StagingPlan, performer: string, week: DaySpan): FreeDancer => {
  const axis = axisOf(plan);
  const [from, to] = [dayNumber(week.from) * MINUTES_PER_DAY, dayNumber(week.to) * MINUTES_PER_DAY];
  const all = plan.problem.performers
    .find(({ id }) => id === performer)!
    .free.map(({ start, end }) => ({
      start: Math.max(from, toWall(axis, start)),
      end: Math.min(to, toWall(axis, end)),
    }));
  const free = all.filter(({ start, end }) => start < end);
  const fitted = plan.fittings.flatMap((one) =>
    one.performer === performer && one.start !== null ? [{ start: one.start, end: one.end! }] : [],
  );
  return { performer, free, left: sum(without(free, fitted).map((one) => minutesWithin(one, free))) };
};

export const answerFittingsWaiting = ({ plan, today }: Asked, options: Options): Answer => {
  const data = fittingsWaiting(plan, today, options.day("week") ?? today);
  const names = namesOf(plan);
  const dancer = new Map(plan.staging.performers.map(({ code, name }) => [code, name]));
  const free = data.dancers.map((one) => ({ ...one, name: dancer.get(one.performer) ?? one.performer }));
  return {
    says: [
      `${counted(data.inWeek.length, "fitting")} from ${data.week.from} to ${data.week.to} (that day not in it), of ${data.toCome} still to come; ` +
        `${showHours(data.waiting)} of work may not begin before ${data.inWeek.length === 1 ? "it" : "them"}.`,
      `Free then: ${
        listed(
          free.filter(({ left }) => left > 0).map(({ name, left }) => `${name} ${showHours(left)}`),
          12,
        ) || "nobody"
      }.`,
    ],
    tables: [
      {
        title: "Fittings, and the work that waits on them",
        headings: ["when", "dancer", "garment", "fitting", "then"],
        rows: data.inWeek.map(({ fitting, work }) => [
          showWall(fitting.start!),
          dancer.get(fitting.performer) ?? fitting.performer,
          fitting.garment,
          fitting.name,
          work.map((node) => `${names.node(node)} (${showHours(plan.problem.nodes[node]!.minutes)})`).join("; ") ||
            "nothing but the finish",
        ]),
      },
      freeTable(data.week, free),
    ],
    reasons: [
      "Free: inside the work span, not in class, rehearsal, performance or rest, nor in the free hour after three rehearsal hours, in steps of " +
        "fifteen minutes. What a dancer has left is that, less the fittings of this plan.",
      plan.staging.calls.length === 0
        ? "No calls are known: everybody counts as free whenever the workroom is open."
        : "Calls are those of calls.csv.",
    ],
    data: { ...data, dancers: data.dancers.map((one) => ({ ...one, days: freeByDay(data.week, one.free) })) },
  };
};
