import type { Schedule } from "./schedule";

/** Whether a performer may have one more visit that begins at this minute, not counting one of them: the limit is of the week it is in. */
export function mayVisit({ compiled, performers, visits }: Schedule, performer: number, start: number, besides = -1): boolean {
  const { week, performers: given } = compiled.problem;
  const most = given[performer]!.visitsAWeek;
  if (most === undefined) return true;
  const weekOf = (at: number): number => Math.floor((at - week.offset) / week.minutes);
  let there = 0;
  for (const number of performers[performer]!.ids) if (number !== besides && weekOf(visits[number]!.start) === weekOf(start)) there++;
  return there < most;
}

/** First minute of the next week. */
export const nextWeek = ({ compiled }: Schedule, at: number): number => {
  const { minutes, offset } = compiled.problem.week;
  return (Math.floor((at - offset) / minutes) + 1) * minutes + offset;
};
