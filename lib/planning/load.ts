import { plainDate } from "#lib/calendar/days";
import type { Interval, LevellingAnswer } from "#lib/levelling/problem";
import type { Prepared } from "./prepared";
import type { LoadCell } from "./stagingPlan";

/** Minutes in sums of minute x speed / 1000, rounded once for each cell. */
interface Cell {
  readonly by: LoadCell["by"];
  readonly code: string;
  readonly week: number;
  planned: number;
  free: number;
}

/**
 * Productive minutes planned and free, by skill and by maker, week by week. Work and fittings count at the maker's speed of the moment, so
 * that a full week is as much as her ordinary hours give. A maker's free time of a week goes first to what she does in it, the rest is shared
 * out over her skills by the need for each in the whole plan. Over is what is planned beyond that: overtime.
 */
export const loadOf = (prepared: Prepared, answer: LevellingAnswer): LoadCell[] => {
  const { problem, dayZero } = prepared;
  const cells = new Map<string, Cell>();
  const cell = (by: LoadCell["by"], code: string, week: number) => {
    const key = JSON.stringify([by, code, week]);
    const known = cells.get(key) ?? { by, code, week, planned: 0, free: 0 };
    cells.set(key, known);
    return known;
  };
  const plannedBy = new Map<string, Map<number, number>>();
  const need = problem.skills.map(() => 0);
  for (const [at, node] of problem.nodes.entries()) {
    const placed = answer.plan.placed[at];
    for (const { maker, skill } of placed?.makers ?? []) {
      need[skill]! += node.minutes;
      const worked = placed!.stretches.length > 0 ? placed!.stretches : [placed!];
      for (const { week, minutes } of byWeek(prepared, maker, worked)) {
        const own = plannedBy.get(`${maker} ${week}`) ?? new Map<number, number>();
        own.set(skill, (own.get(skill) ?? 0) + minutes);
        plannedBy.set(`${maker} ${week}`, own);
        cell("maker", problem.makers[maker]!.id, week).planned += minutes;
        cell("skill", problem.skills[skill]!, week).planned += minutes;
      }
    }
  }
  for (const [maker, { id, pace }] of problem.makers.entries()) {
    const skills = pace.flatMap((own, skill) => (own > 0 ? [skill] : []));
    const total = skills.reduce((sum, skill) => sum + need[skill]!, 0);
    const ordinary = problem.makers[maker]!.calendar.filter(({ overtime }) => !overtime);
    for (const { week, minutes } of byWeek(prepared, maker, ordinary)) {
      cell("maker", id, week).free += minutes;
      const own = plannedBy.get(`${maker} ${week}`) ?? new Map<number, number>();
      const busy = [...own.values()].reduce((sum, planned) => sum + planned, 0);
      const kept = busy > minutes ? minutes / busy : 1;
      for (const [skill, planned] of own) cell("skill", problem.skills[skill]!, week).free += planned * kept;
      const idle = Math.max(0, minutes - busy);
      for (const skill of skills)
        cell("skill", problem.skills[skill]!, week).free += total > 0 ? (idle * need[skill]!) / total : idle / skills.length;
    }
  }
  const lastUsed = Math.max(-1, ...[...cells.values()].filter(({ planned }) => planned > 0).map(({ week }) => week));
  return [...cells.values()]
    .filter(({ week }) => week <= lastUsed)
    .map(({ by, code, week, planned, free }) => ({
      by,
      code,
      week: plainDate(dayZero + 7 * week),
      planned: rounded(planned),
      free: rounded(free),
      over: Math.max(0, rounded(planned) - rounded(free)),
    }))
    .sort((a, b) => orderOf(prepared, a) - orderOf(prepared, b) || (a.week < b.week ? -1 : 1));
};

const rounded = (minutes: number) => Math.round(minutes / 1000);

/** Skills in their own order, then makers in theirs. */
const orderOf = ({ problem }: Prepared, { by, code }: LoadCell): number =>
  by === "skill" ? problem.skills.indexOf(code) : problem.skills.length + problem.makers.findIndex(({ id }) => id === code);

/** Minute x speed that the intervals take of a maker's calendar, split at the ends of weeks. */
const byWeek = ({ problem }: Prepared, maker: number, intervals: readonly Interval[]) => {
  const parts = new Map<number, { week: number; minutes: number }>();
  for (const { start, end } of intervals)
    for (const stretch of problem.makers[maker]!.calendar) {
      if (stretch.end <= start) continue;
      if (stretch.start >= end) break;
      const week = Math.floor((Math.max(start, stretch.start) - problem.week.offset) / problem.week.minutes);
      const minutes = (Math.min(end, stretch.end) - Math.max(start, stretch.start)) * stretch.speed;
      const part = parts.get(week) ?? { week, minutes: 0 };
      part.minutes += minutes;
      parts.set(week, part);
    }
  return [...parts.values()];
};
