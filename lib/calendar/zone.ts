import { Temporal } from "temporal-polyfill";
import { splitWall } from "./clock";
import { dayNumber, isoDate } from "./days";
import { MINUTES_PER_DAY, type WallMinute } from "./plainDate";

/** Whether `zone` is an IANA time zone the platform knows. */
export const isZone = (zone: string): boolean => {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
};

/** A minute the clock skips is read as the same time after the jump; one it shows twice is the first of the two. */
const zoned = (wall: WallMinute, zone: string): Temporal.ZonedDateTime => {
  const { date, minute } = splitWall(wall);
  return Temporal.PlainDate.from(date).toPlainDateTime().add({ minutes: minute }).toZonedDateTime(zone, { disambiguation: "compatible" });
};

const wallOf = (time: Temporal.ZonedDateTime): WallMinute => {
  const date = isoDate(time.toPlainDate().toString());
  if (!date) throw new Error("A zoned time lies outside the years 0001 to 9999");
  return dayNumber(date) * MINUTES_PER_DAY + time.hour * 60 + time.minute;
};

/** Minutes that really pass between two minutes of the wall clock: over a night of clock change one hour more or less. */
export const elapsedBetween = (from: WallMinute, to: WallMinute, zone: string): number =>
  (zoned(to, zone).epochMilliseconds - zoned(from, zone).epochMilliseconds) / 60_000;

/** Where the wall clock stands when `minutes` have really passed. */
export const addElapsed = (from: WallMinute, minutes: number, zone: string): WallMinute => wallOf(zoned(from, zone).add({ minutes }));

/** The moment at which the wall clock shows a minute, in milliseconds since 1970-01-01 UTC. */
export const epochOf = (wall: WallMinute, zone: string): number => zoned(wall, zone).epochMilliseconds;
