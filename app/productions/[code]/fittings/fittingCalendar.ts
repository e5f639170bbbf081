import ical, { ICalCalendarMethod, ICalEventStatus } from "ical-generator";
import type { WallMinute } from "#lib/calendar/plainDate";
import { COME_WITH } from "#lib/fittings/comeWith";
import type { Visit } from "#lib/fittings/visits";
import type { Staging } from "#lib/staging/staging";
import { nameOfMaker, nameOfPerformer } from "../../../_data/names";

/** What a calendar is made of beside the visits. */
export interface CalendarFrame {
  readonly staging: Staging;
  /** When the plan was made: a later plan's events replace an earlier one's. */
  readonly levelledAt: Date;
  /** A minute of the workroom's wall clock as a moment. */
  readonly moment: (wall: WallMinute) => Date;
  /** Where a fitting's page is. */
  readonly address: (visit: Visit) => string;
}

/**
 * The fittings as a calendar (RFC 5545), one event a visit, in UTC. An event keeps its UID from plan to plan as long as the same performer has
 * the same first fitting, and its SEQUENCE grows, so that a calendar moves it instead of doubling it. No measurement and no note is in it.
 */
export const fittingCalendar = (visits: readonly Visit[], { staging, levelledAt, moment, address }: CalendarFrame): string => {
  const { production } = staging;
  const calendar = ical({
    name: `Fittings, ${production.title}`,
    prodId: { company: "Tarlatan", product: "Fittings", language: "EN" },
    method: ICalCalendarMethod.PUBLISH,
  });
  const sequence = Math.floor(levelledAt.getTime() / 60_000);
  for (const visit of visits) {
    const garments = [...new Set(visit.fittings.map(({ garment }) => garment))];
    const bring = [...new Set(visit.fittings.map(({ kind }) => COME_WITH[kind]))];
    calendar.createEvent({
      id: uidOf(visit, production.code),
      sequence,
      stamp: levelledAt,
      start: moment(visit.start),
      end: moment(visit.end),
      summary: `Fitting: ${nameOfPerformer(staging, visit.performer)}, ${garments.join(", ")}`,
      description: `${visit.fittings.map(({ name, garment }) => `${garment}: ${name}`).join("\n")}\nWith ${nameOfMaker(staging, visit.fitter)}.\nCome with: ${bring.join("; ")}.`,
      location: staging.machines.find(({ code }) => code === visit.room)?.name ?? visit.room,
      status: ICalEventStatus.CONFIRMED,
      url: address(visit),
    });
  }
  return calendar.toString();
};

const uidOf = ({ performer, fittings: [first] }: Visit, production: string): string =>
  `${[performer, first?.garment, first?.part].join("-").replaceAll(/[^\w~-]+/g, "-")}@${production.replaceAll(/[^\w-]+/g, "-")}.tarlatan`;
