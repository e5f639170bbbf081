import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { garmentsOf } from "#lib/casting/garments";
import type { Measurement, MeasurementSheet } from "#lib/measurements/measurement";
import type { Staging } from "#lib/staging/staging";
import { LENGTH_PER_MM, type Length } from "#lib/units/quantities";

/** One measurement of a student, and what it will have grown by the opening. */
export interface Growth {
  readonly performer: string;
  readonly measurement: Measurement;
  readonly taken: PlainDate;
  /** Growth expected between the newest sheet and the opening. */
  readonly grows: Length;
  /** What a garment made to that sheet has in hand. */
  readonly allowed: Length;
  readonly garments: readonly string[];
}

export interface Outgrown {
  readonly opening: PlainDate;
  /** Those beyond what is allowed, the most first. */
  readonly outgrown: readonly Growth[];
  /** Students with one sheet, or sheets too near each other to tell growth from the tape. */
  readonly unknown: readonly string[];
  readonly students: number;
}

/** Two fingers round the body (an account of dance costumes for children, blog.dancedirect.com: growth room); a deep hem or a tuck along it, common practice, no source. */
const ROUND: Length = 35 * LENGTH_PER_MM;
const ALONG: Length = 50 * LENGTH_PER_MM;
const LENGTHWAYS: readonly Measurement[] = [
  "height",
  "napeToWaist",
  "armToWrist",
  "armToElbow",
  "insideLeg",
  "waistToKnee",
  "waistToFloor",
];
/** Sheets nearer than this measure the tape, not the child. Common practice, no source. */
const LEAST_DAYS = 28;

/** Growth goes on as it went between the two newest sheets of each student. */
export const outgrowing = (staging: Staging, opening: PlainDate): Outgrown => {
  const garments = garmentsOf(staging);
  const students = staging.performers.filter(({ minor }) => minor);
  const unknown: string[] = [];
  const outgrown = students.flatMap(({ code }): Growth[] => {
    const sheets = staging.measurements
      .filter(({ of }) => "performer" in of && of.performer === code)
      .sort((a, b) => (a.taken < b.taken ? 1 : -1));
    const [newest, before] = sheets;
    const days = newest && before ? dayNumber(newest.taken) - dayNumber(before.taken) : 0;
    if (!newest || !before || days < LEAST_DAYS) {
      unknown.push(code);
      return [];
    }
    const worn = garments.filter(({ wearers }) => wearers.some(({ performer }) => performer === code)).map(({ number }) => number);
    const ahead = Math.max(0, dayNumber(opening) - dayNumber(newest.taken));
    return changesOf(newest, before).flatMap(([measurement, change]): Growth[] => {
      const grows = Math.round((change * ahead) / days);
      const allowed = LENGTHWAYS.includes(measurement) ? ALONG : ROUND;
      return grows > allowed ? [{ performer: code, measurement, taken: newest.taken, grows, allowed, garments: worn }] : [];
    });
  });
  return { opening, outgrown: outgrown.sort((a, b) => b.grows - b.allowed - (a.grows - a.allowed)), unknown, students: students.length };
};

const changesOf = (newest: MeasurementSheet, before: MeasurementSheet): (readonly [Measurement, Length])[] =>
  (Object.keys(newest.values) as Measurement[]).flatMap((name) => {
    const [is, was] = [newest.values[name], before.values[name]];
    return is === undefined || was === undefined ? [] : [[name, is - was] as const];
  });
