import type { PlainDate } from "#lib/calendar/plainDate";
import type { MinorUnits, PerMille } from "#lib/units/quantities";

export const SOURCES = ["build", "pull", "alter", "hire", "buy"] as const;
export type Source = (typeof SOURCES)[number];

/** What a role wears in some scenes. */
export interface Costume {
  readonly code: string;
  readonly name: string;
  readonly role: string;
}

/** Garments that must look alike: a corps, a pair. They share design, dye lot and prototype. */
export interface GarmentSet {
  readonly code: string;
  readonly name: string;
  readonly oneDyeLot: boolean;
  /** Net and cloth bought beyond the need in the same dye lot, and kept for repair. */
  readonly repair: PerMille;
  /** The first garment is a prototype that the designer approves. */
  readonly prototype: boolean;
  /** The rest may go on past this operation only after approval; null: they may not be begun. */
  readonly freeUntil: string | null;
  /** Working days the designer takes to look at the finished prototype. */
  readonly approvalDays: number;
  readonly approvedOn: PlainDate | null;
}

/** One line of a costume's piece list. */
export interface Piece {
  readonly code: string;
  readonly costume: string;
  readonly name: string;
  readonly source: Source;
  /** Code of the construction; null for a bought or hired thing that needs no work. */
  readonly construction: string | null;
  /** Version of the construction it keeps to; null: the newest there is. */
  readonly version: number | null;
  readonly set: string | null;
  /** `performer`: one garment each; `place`: shared across casts; `role`: one for everybody. */
  readonly each: "performer" | "place" | "role";
  /** As written, for example `{ layers: "12", hoop: "single" }`; the construction judges them. */
  readonly parameters: Readonly<Record<string, string>>;
  /** Material code for each material role of the construction, where it differs from the construction's own. */
  readonly materials: Readonly<Record<string, string>>;
  /** Code of the milestone by which the garment must be finished. */
  readonly due: string;
  /** Weight of a day late; 1 is ordinary. */
  readonly weight: number;
  /** Price of a bought or hired garment; null when it is made. */
  readonly price: MinorUnits | null;
  /** Number of a stock garment that is pulled or altered. */
  readonly stock: string | null;
}

/** A place in a cast that a garment is worn by. */
export interface Wearer {
  readonly performer: string | null;
  readonly sizeGroup: string;
  readonly cast: string;
  readonly place: number;
  readonly standing: "cast" | "cover";
}

/** One physical thing with a number. Derived from pieces and casting, in the order of the piece list. */
export interface Garment {
  /** Company number, for example `HM 014`. */
  readonly number: string;
  readonly name: string;
  readonly piece: string;
  readonly costume: string;
  readonly role: string;
  readonly source: Source;
  readonly construction: string | null;
  /** Version of the construction it keeps to; null: the newest there is. */
  readonly version: number | null;
  readonly set: string | null;
  /** 1-based place in its set, fixed here: learning follows it, never the order of the schedule. */
  readonly ordinal: number;
  readonly prototype: boolean;
  /** The first is the one it is made for; later ones are fitted to it. */
  readonly wearers: readonly Wearer[];
  readonly parameters: Readonly<Record<string, string>>;
  readonly materials: Readonly<Record<string, string>>;
  readonly due: string;
  readonly weight: number;
  readonly price: MinorUnits | null;
  readonly stock: string | null;
}
