import { addDays, dayNumber, plainDate, weekdayOf } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Call, Performer } from "#lib/casting/casting";
import type { Chance } from "#lib/levelling/random";
import type { Staging } from "#lib/staging/staging";
import { bodySheet, SIZES, sizeSheet } from "./bodies";
import { inventedName } from "./names";

/** Rehearsals begin at one of these, by group; each lasts three hours and earns a free one. */
const REHEARSALS = [705, 780, 900];

/** A company of so many dancers, measured in the week before. */
export const inventDancers = (
  count: number,
  starts: PlainDate,
  chance: Chance,
): Pick<Staging, "sizeGroups" | "performers" | "measurements"> => {
  const measured = addDays(starts, -5);
  const names = new Set<string>();
  const performers = Array.from({ length: count }, (_, index): Performer => {
    const size = SIZES[index % SIZES.length]!;
    return { code: `dancer-${index + 1}`, name: inventedName(chance, names), sizeGroup: size.code, minor: false };
  });
  const sizeOf = (code: string) => SIZES.find((size) => size.code === code)!;
  return {
    sizeGroups: SIZES.map(({ code, name }) => ({ code, name })),
    performers,
    measurements: [
      ...SIZES.map((size) => sizeSheet(size, measured)),
      ...performers.map(({ code, sizeGroup }) => bodySheet(code, sizeOf(sizeGroup), measured, chance)),
    ],
  };
};

/** Class and rehearsals on the weekdays of so many weeks. */
export const inventCalls = (performers: readonly Performer[], starts: PlainDate, weeks: number): readonly Call[] =>
  weekdays(starts, weeks).flatMap((date, day) => callsOf(date, day, performers));

const weekdays = (starts: PlainDate, weeks: number): PlainDate[] =>
  Array.from({ length: 7 * weeks }, (_, day) => dayNumber(starts) + day)
    .filter((day) => weekdayOf(day) <= 5)
    .map(plainDate);

/** Everybody's day and class, and a rehearsal for each on four days of five. */
const callsOf = (date: PlainDate, day: number, performers: readonly Performer[]): Call[] => [
  { performer: null, date, from: 600, to: 1110, kind: "span" },
  { performer: null, date, from: 615, to: 690, kind: "class" },
  ...performers.flatMap(({ code }, index): Call[] => {
    if ((day + index) % 5 === 0) return [];
    const from = REHEARSALS[index % REHEARSALS.length]!;
    return [{ performer: code, date, from, to: from + 180, kind: "rehearsal" }];
  }),
];
