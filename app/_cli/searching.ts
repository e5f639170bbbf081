import { Temporal } from "temporal-polyfill";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { PlanOptions } from "#lib/planning/planStaging";
import type { Production } from "#lib/staging/staging";
import { levelInThread } from "../_worker/levelInThread";
import { startThread } from "../_worker/startThread";
import type { SearchOptions } from "./searchOptions";

/** More rounds than any search comes to, and longer than anybody waits. */
const NO_LIMIT = { rounds: 1_000_000_000, seconds: 1_000_000 };

/** How a staging is planned by what a command asks for. */
export const searching = (search: SearchOptions, production: Production): PlanOptions => ({
  today: search.today ?? dayFrom(production),
  level: (problem) =>
    levelInThread(
      problem,
      { seed: search.seed, rounds: search.rounds ?? NO_LIMIT.rounds, seconds: search.seconds ?? NO_LIMIT.seconds },
      startThread,
    ),
});

/** `, 10 s`, or nothing when rounds decide. */
export const timeText = ({ seconds }: SearchOptions): string => (seconds === null ? "" : `, ${seconds} s`);

/** Today in the workroom's zone, or the production's first day if that is later: a plan made early stands still until then. */
const dayFrom = ({ zone, starts }: Production): PlainDate => {
  const today = Temporal.Now.plainDateISO(zone).toString() as PlainDate;
  return today > starts ? today : starts;
};
