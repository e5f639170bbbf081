import type { DayMinute, PlainDate } from "#lib/calendar/plainDate";
import type { MinorUnits, Minutes, PerMille } from "#lib/units/quantities";
import type { Skill } from "./skills";

/** Hours of a weekday: 1 Monday to 7 Sunday. */
export interface WeekHours {
  readonly weekday: number;
  readonly from: DayMinute;
  readonly to: DayMinute;
}

/** A person who works. */
export interface Maker {
  readonly code: string;
  readonly name: string;
  /** As the trade says it: cutter, first hand, tutu maker ... */
  readonly trade: string;
  readonly employment: "staff" | "casual" | "outworker";
  /** Pace per skill: 1000 does a task in its standard minutes, 500 takes twice as long. */
  readonly skills: Readonly<Partial<Record<Skill, PerMille>>>;
  readonly hours: readonly WeekHours[];
  readonly overtime: readonly WeekHours[];
  /** Part of the hours that goes into tasks; the rest goes to questions and tidying. Planned fittings are counted apart. */
  readonly productive: PerMille;
  /** Kept back each week for repairs of the repertoire. */
  readonly reservedMinutesPerWeek: Minutes;
  /** From which day which pace applies to everything (a newcomer's first week); sorted by date. */
  readonly paceFrom: readonly { readonly date: PlainDate; readonly pace: PerMille }[];
  readonly costPerHour: MinorUnits;
  readonly overtimeCostPerHour: MinorUnits;
  readonly starts: PlainDate | null;
  readonly ends: PlainDate | null;
}

/** Nobody (maker null: the workroom is closed) or one maker is away, whole days or part of one day. */
export interface Absence {
  readonly maker: string | null;
  readonly from: PlainDate;
  readonly to: PlainDate;
  readonly fromTime: DayMinute | null;
  readonly toTime: DayMinute | null;
  readonly reason: string;
}

/** A machine, a vat, a table or the fitting room (kind `fitting room`): `count` of them are alike. */
export interface Machine {
  readonly code: string;
  readonly name: string;
  readonly kind: string;
  readonly count: number;
}
