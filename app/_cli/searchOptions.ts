import { isoDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { failed, ok, type Result } from "#lib/result";

/** How long and from where a plan is searched for. */
export interface SearchOptions {
  /** Null: no limit. */
  readonly seconds: number | null;
  /** Null: until the time is up. */
  readonly rounds: number | null;
  readonly seed: number;
  /** Null: today, or the production's first day if that is later. */
  readonly today: PlainDate | null;
}

export const SEARCH_OPTIONS = ["seconds", "rounds", "seed", "today"] as const;

/** So that a company's staging is read, planned, judged and written within ten seconds. */
const SECONDS = 4;

/** Reads them; with neither time nor rounds given, `rounds` are taken, or `SECONDS` when that is null. */
export const readSearch = (options: ReadonlyMap<string, string>, usual: number | null = null): Result<SearchOptions, string> => {
  const whole = (name: string, least: number): number | null | undefined => {
    const text = options.get(name);
    if (text === undefined) return null;
    return /^\d{1,9}$/.test(text) && Number(text) >= least ? Number(text) : undefined;
  };
  const seconds = whole("seconds", 1);
  const written = whole("rounds", 0);
  const seed = whole("seed", 0);
  if (seconds === undefined) return failed("--seconds takes a whole number of seconds, 1 or more.");
  if (written === undefined) return failed("--rounds takes a whole number, 0 or more; 0 keeps the plain rule.");
  if (seed === undefined) return failed("--seed takes a whole number, 0 or more.");
  const rounds = written ?? (seconds === null ? usual : null);
  const day = options.get("today");
  const today = day === undefined ? null : isoDate(day);
  if (day !== undefined && today === null) return failed(`--today takes a day like 2027-01-11, not "${day}".`);
  // With rounds asked for, the time must not decide the plan.
  return ok({ seconds: seconds ?? (rounds === null ? SECONDS : null), rounds, seed: seed ?? 1, today });
};
