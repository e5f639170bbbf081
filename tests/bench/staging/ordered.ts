import { dayNumber } from "#lib/calendar/days";
import { inventStagings } from "#lib/invented/inventStagings";
import { oneWorkroom } from "#lib/invented/oneWorkroom";
import type { Order } from "#lib/invented/order";
import { plant } from "#lib/invented/plant";
import type { LevellingProblem } from "#lib/levelling/problem";
import { prepare } from "#lib/planning/prepare";
import type { Prepared } from "#lib/planning/prepared";
import { library } from "../../seed/constructions/library";

/** The problem of an invented workroom, with its weeks until the last milestone; planted, or due at the parades. */
export const ordered = (order: Order, planted: boolean): { readonly problem: LevellingProblem; readonly weeks: number } => {
  const bare = inventStagings(order, library);
  const { stagings, problem } = planted ? plant(bare, order.tightness, order.seed) : { stagings: bare, problem: unplanted(bare) };
  const last = Math.max(...stagings.flatMap(({ milestones }) => milestones.map(({ date }) => dayNumber(date))));
  return { problem, weeks: Math.ceil((last - dayNumber(bare[0].production.starts)) / 7) };
};

const unplanted = (stagings: ReturnType<typeof inventStagings>): LevellingProblem =>
  oneWorkroom(stagings.map((staging) => prepare(staging, { today: staging.production.starts })) as [Prepared, ...Prepared[]]);
