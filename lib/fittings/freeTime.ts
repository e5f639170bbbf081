import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { Call } from "#lib/casting/casting";
import { inSteps, merged, shared, without } from "#lib/labour/intervals";
import type { Interval } from "#lib/levelling/problem";
import type { FittingRules } from "./rules";

/**
 * When a performer may be fitted, on the wall clock: inside the span of a day she is called, never in class, rehearsal, performance or
 * rest, nor in the free time that rehearsals earn. A day without a span is a day not called: no fitting.
 */
export const freeTime = (performer: string, calls: readonly Call[], rules: FittingRules): Interval[] => {
  const own = calls.filter((call) => call.performer === null || call.performer === performer);
  const of = (kind: Call["kind"]) => merged(own.filter((call) => call.kind === kind).map(intervalOf));
  const spans = shared(of("span"), longestDays(own, rules));
  const rehearsals = of("rehearsal");
  const taken = [...of("class"), ...rehearsals, ...of("performance"), ...of("rest"), ...restsAfter(rehearsals, rules)];
  return inSteps(without(spans, taken), rules.step);
};

const intervalOf = (call: Call): Interval => {
  const day = dayNumber(call.date) * MINUTES_PER_DAY;
  return { start: day + call.from, end: day + call.to };
};

/** From the start of each day's first span as long as a day may be. */
const longestDays = (calls: readonly Call[], rules: FittingRules): Interval[] => {
  const starts = new Map<number, number>();
  for (const { start } of calls.filter((call) => call.kind === "span").map(intervalOf)) {
    const day = Math.floor(start / MINUTES_PER_DAY);
    starts.set(day, Math.min(start, starts.get(day) ?? start));
  }
  return [...starts.values()].map((start) => ({ start, end: start + rules.longestSpan }));
};

/** Once the rehearsals since the last long break come to the limit, the time after them is free. */
const restsAfter = (rehearsals: readonly Interval[], rules: FittingRules): Interval[] => {
  const rests: Interval[] = [];
  let danced = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (const { start, end } of rehearsals) {
    if (start - before >= rules.restAfterRehearsal) danced = 0;
    danced += end - start;
    if (danced >= rules.rehearsalBeforeRest) rests.push({ start: end, end: end + rules.restAfterRehearsal });
    before = end;
  }
  return rests;
};
