import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { garmentsOf } from "#lib/casting/garments";
import type { Staging } from "#lib/staging/staging";
import type { Answer, Asked } from "./answer";
import type { Options } from "./options";
import { counted, dayOr, listed } from "./told";

/** Half a year; a term for who still grows. Common practice, no source. */
const ALLOWED_DAYS = 182;
const ALLOWED_DAYS_MINOR = 91;

export interface Measured {
  readonly performer: string;
  readonly name: string;
  readonly minor: boolean;
  /** Day of the newest sheet; null: never measured. */
  readonly taken: PlainDate | null;
  readonly days: number | null;
  readonly allowed: number;
  readonly tooOld: boolean;
  /** Garments made or fitted to the performer. */
  readonly garments: readonly string[];
}

/** How old everybody's measurements are, the oldest first; never measured before all. */
export const measuredAges = (
  staging: Staging,
  today: PlainDate,
  allowed: { readonly days: number | null; readonly minorDays: number | null },
): readonly Measured[] => {
  const garments = garmentsOf(staging);
  const age = ({ days }: Measured) => days ?? Number.POSITIVE_INFINITY;
  return staging.performers
    .map(({ code, name, minor }): Measured => {
      const taken = staging.measurements
        .filter(({ of }) => "performer" in of && of.performer === code)
        .map((sheet) => sheet.taken)
        .sort()
        .at(-1);
      const days = taken === undefined ? null : dayNumber(today) - dayNumber(taken);
      const most = minor ? (allowed.minorDays ?? ALLOWED_DAYS_MINOR) : (allowed.days ?? ALLOWED_DAYS);
      const worn = garments.filter(({ wearers }) => wearers.some(({ performer }) => performer === code)).map(({ number }) => number);
      return {
        performer: code,
        name,
        minor,
        taken: taken ?? null,
        days,
        allowed: most,
        tooOld: days === null || days > most,
        garments: worn,
      };
    })
    .sort((a, b) => (age(a) === age(b) ? 0 : age(b) - age(a)));
};

export const answerOldMeasurements = ({ plan, today }: Asked, options: Options): Answer => {
  const data = measuredAges(plan.staging, today, { days: options.whole("days"), minorDays: options.whole("minor-days") });
  const old = data.filter(({ tooOld }) => tooOld);
  const never = old.filter(({ taken }) => taken === null);
  const [oldest] = data.filter(({ taken }) => taken !== null);
  const allowed = (minor: boolean) =>
    minor ? (options.whole("minor-days") ?? ALLOWED_DAYS_MINOR) : (options.whole("days") ?? ALLOWED_DAYS);
  return {
    says: [
      old.length === 0
        ? `Nobody's: all ${counted(data.length, "performer")} were measured within the allowed age on ${today}.`
        : `${counted(old.length, "performer")} of ${data.length}: ${listed(
            old.map(({ name }) => name),
            12,
          )}.`,
      ...(never.length > 0
        ? [
            `Never measured, so they stand on their size group: ${listed(
              never.map(({ name }) => name),
              12,
            )}.`,
          ]
        : []),
      ...(oldest ? [`The oldest sheet is that of ${oldest.name}: ${dayOr(oldest.taken)}, ${counted(oldest.days!, "day")} old.`] : []),
    ],
    tables: [
      {
        title: "Newest sheets, the oldest first",
        headings: ["performer", "taken", "days", "allowed", "too old", "garments"],
        rows: data.map((one) => [
          one.name,
          one.taken ?? "never",
          one.days === null ? "" : String(one.days),
          String(one.allowed),
          one.tooOld ? "yes" : "no",
          listed(one.garments, 4),
        ]),
      },
    ],
    reasons: [
      `Allowed: ${allowed(false)} days, ${allowed(true)} for minors, who grow (half a year and a term unless told otherwise: common practice, no source).`,
      "Injury, long leave and pregnancy call for new measurements at any age of the sheet: ask in private.",
    ],
    data,
  };
};
