import { dayNumber, isoDate, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { GarmentQuery } from "../garments/garmentQuery";
import { readQuery } from "../garments/garmentQuery";

/** Which tickets are asked for. */
export interface TicketQuery {
  /** Numbers chosen by hand; empty: those the list finds. */
  readonly numbers: readonly string[];
  readonly list: GarmentQuery;
  /** Code of a maker: only what is planned for that person. */
  readonly maker: string;
  /** Monday of a week: only what begins in it. */
  readonly week: PlainDate | null;
  /** Nothing was asked yet. */
  readonly idle: boolean;
}

type Given = Readonly<Record<string, string | readonly string[] | undefined>>;

const listed = (given: Given[string]): readonly string[] => (given === undefined ? [] : typeof given === "string" ? [given] : given);

/** Reads the address; what cannot be read is as if it were not there. */
export const readTicketQuery = (given: Given): TicketQuery => {
  const numbers = [...new Set(listed(given.number))];
  const maker = listed(given.maker).at(-1) ?? "";
  const day = isoDate(listed(given.week).at(-1) ?? "");
  const list = readQuery(given);
  const idle = numbers.length === 0 && maker === "" && day === null && given.all === undefined;
  return { numbers, list, maker, week: day && plainDate(mondayOf(dayNumber(day))), idle };
};
