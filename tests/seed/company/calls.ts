import { addDays, dayNumber, weekdayOf } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Chance } from "#lib/levelling/random";
import type { CastRow } from "./casting";
import { EVERYBODY } from "./people";

const FIRST = "2027-01-11" as PlainDate;
const OPENING = "2027-04-22" as PlainDate;
const LAST = "2027-06-18" as PlainDate;
/** The workroom and the studios are closed: a holiday. */
const CLOSED = ["2027-03-26", "2027-03-29"];
const SLOTS = [
  ["11:45", "13:45"],
  ["14:45", "16:15"],
  ["16:30", "18:00"],
] as const;

/** Every weekday: span, class and midday rest for all; two scenes in each slot are rehearsed by all who dance them; students come after school. */
export const callRows = (
  casting: readonly CastRow[],
  scenesOf: ReadonlyMap<string, readonly string[]>,
  chance: Chance,
): (readonly string[])[] => {
  const scenes = [...new Set([...scenesOf.values()].flat())].sort();
  const dancersOf = new Map(scenes.map((scene) => [scene, dancers(scene, casting, scenesOf)]));
  const rows: string[][] = [];
  for (let date = FIRST; date <= LAST; date = addDays(date, 1)) {
    if (weekdayOf(dayNumber(date)) > 5 || CLOSED.includes(date)) continue;
    const everybody = (from: string, to: string, kind: string) => rows.push(["", date, from, to, kind]);
    everybody("10:00", "18:30", "span");
    everybody("10:15", "11:30", "class");
    everybody("13:45", "14:30", "rest");
    for (const { code } of EVERYBODY.filter(({ minor }) => minor)) rows.push([code, date, "10:00", "16:30", "rest"]);
    if (date >= OPENING) everybody("17:00", "18:30", "performance");
    for (const [from, to] of date < OPENING ? SLOTS : SLOTS.slice(0, 1)) {
      const called = dancersOf.get(scenes[chance.below(scenes.length)]!)!;
      for (const code of called) rows.push([code, date, from, to, "rehearsal"]);
    }
  }
  return [["performer", "date", "from", "to", "kind"], ...rows];
};

const dancers = (scene: string, casting: readonly CastRow[], scenesOf: ReadonlyMap<string, readonly string[]>): string[] => {
  const codes = casting.filter(({ role }) => scenesOf.get(role)?.includes(scene)).map(({ person }) => person.code);
  return EVERYBODY.map(({ code }) => code).filter((code) => codes.includes(code));
};
