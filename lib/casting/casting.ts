import type { DayMinute, PlainDate } from "#lib/calendar/plainDate";

export interface SizeGroup {
  readonly code: string;
  readonly name: string;
}

export interface Performer {
  readonly code: string;
  readonly name: string;
  /** Where a missing measurement is taken from. */
  readonly sizeGroup: string;
  /** Under the local age of majority: fittings need a chaperone. */
  readonly minor: boolean;
}

/** A part to dance; a corps role has several places. */
export interface Role {
  readonly code: string;
  readonly name: string;
  readonly kind: "principal" | "soloist" | "corps" | "character";
  readonly places: number;
}

/** Who dances a place in a cast. `performer` is null before casting: the place stands on its size group. */
export interface CastPlace {
  readonly cast: string;
  readonly role: string;
  /** 1-based body of the role. */
  readonly place: number;
  readonly performer: string | null;
  readonly sizeGroup: string;
  /** A cover (understudy) stands by. */
  readonly standing: "cast" | "cover";
}

export interface Scene {
  readonly code: string;
  readonly name: string;
  readonly act: number;
  /** Minutes after curtain up. */
  readonly starts: number;
  readonly minutes: number;
}

export interface Appearance {
  readonly role: string;
  readonly scene: string;
  readonly costume: string;
}

/** A stretch of a performer's day: `span` is the working day itself, the rest lies within it. */
export interface Call {
  /** Null: everybody. */
  readonly performer: string | null;
  readonly date: PlainDate;
  readonly from: DayMinute;
  readonly to: DayMinute;
  readonly kind: "span" | "class" | "rehearsal" | "performance" | "rest";
}
