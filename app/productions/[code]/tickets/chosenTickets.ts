import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { PlannedTask } from "#lib/planning/stagingPlan";
import { type Ticket, ticketsOf } from "#lib/sheets/ticket";
import type { ProductionView } from "../../../_data/stagingPlan";
import { garmentRows } from "../garments/garmentRows";
import { selectGarments } from "../garments/selectGarments";
import type { TicketQuery } from "./ticketQuery";

const WEEK = 7 * MINUTES_PER_DAY;

/** The tickets a query asks for, in the order of the piece list. Without a plan nobody and no week has any. */
export const chosenTickets = (view: ProductionView, query: TicketQuery): readonly Ticket[] => {
  if (query.idle) return [];
  const { garments, works, staging } = view.prepared;
  const numbers = new Set(
    query.numbers.length > 0 ? query.numbers : selectGarments(garmentRows(view), query.list).map(({ number }) => number),
  );
  const workOf = new Map(works.map((work) => [work.garment, work]));
  const byPlan = query.maker !== "" || query.week !== null;
  const from = query.week === null ? 0 : dayNumber(query.week) * MINUTES_PER_DAY;
  const isWanted = (task: PlannedTask | undefined): boolean => {
    if (!byPlan) return true;
    if (!task || (query.maker !== "" && task.maker !== query.maker)) return false;
    return query.week === null || (task.start !== null && from <= task.start && task.start < from + WEEK);
  };
  const source = { staging, tasks: view.plan?.tasks ?? [], fittings: view.plan?.fittings ?? [] };
  return garments
    .filter(({ number }) => numbers.has(number))
    .flatMap((garment) => ticketsOf(garment, workOf.get(garment.number)!, source, isWanted));
};
