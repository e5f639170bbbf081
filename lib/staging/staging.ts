import type { Approval } from "#lib/approvals/approval";
import type { OtherTask } from "#lib/approvals/otherWork";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Appearance, Call, CastPlace, Performer, Role, Scene, SizeGroup } from "#lib/casting/casting";
import type { Costume, GarmentSet, Piece } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import type { Absence, Machine, Maker } from "#lib/labour/workroom";
import type { Lot, Material, Offer } from "#lib/materials/material";
import type { MeasurementSheet } from "#lib/measurements/measurement";
import type { StockGarment } from "#lib/stock/stock";
import type { MinorUnits } from "#lib/units/quantities";

export const MILESTONE_KINDS = [
  "measuring",
  "first fittings",
  "second fittings",
  "load-in",
  "dress parade",
  "dress rehearsal",
  "opening",
] as const;
export type MilestoneKind = (typeof MILESTONE_KINDS)[number];

export interface Milestone {
  readonly code: string;
  readonly kind: MilestoneKind;
  readonly name: string;
  readonly date: PlainDate;
  /** Minute of the day by which things are ready. */
  readonly at: number;
}

export interface Production {
  readonly code: string;
  readonly title: string;
  readonly subtitle: string;
  readonly workroom: string;
  /** First day for which work may be planned. */
  readonly starts: PlainDate;
  readonly budget: MinorUnits | null;
  /** ISO 4217. */
  readonly currency: string;
  /** IANA time zone of the workroom. */
  readonly zone: string;
  readonly words: "uk" | "us";
  readonly lengths: "in" | "cm";
  /** Letters before a garment's number. */
  readonly prefix: string;
  /** Most visits of one performer to the fitting room in a week; null: the usual. */
  readonly visitsPerWeek: number | null;
}

/** Everything known about one production and the workroom that makes it, as one value: what every computation starts from. */
export interface Staging {
  readonly production: Production;
  readonly milestones: readonly Milestone[];
  readonly sizeGroups: readonly SizeGroup[];
  readonly performers: readonly Performer[];
  readonly measurements: readonly MeasurementSheet[];
  readonly roles: readonly Role[];
  readonly casting: readonly CastPlace[];
  readonly scenes: readonly Scene[];
  readonly appearances: readonly Appearance[];
  readonly costumes: readonly Costume[];
  readonly sets: readonly GarmentSet[];
  readonly pieces: readonly Piece[];
  readonly makers: readonly Maker[];
  readonly absences: readonly Absence[];
  readonly machines: readonly Machine[];
  readonly calls: readonly Call[];
  readonly materials: readonly Material[];
  readonly offers: readonly Offer[];
  readonly lots: readonly Lot[];
  readonly stock: readonly StockGarment[];
  /** Those of prototypes stand with their sets. */
  readonly approvals: readonly Approval[];
  /** Work that no construction lists, done or not. */
  readonly otherWork: readonly OtherTask[];
  readonly constructions: readonly Construction[];
}
