import type { Source } from "#lib/casting/wardrobe";
import type { Skill } from "#lib/labour/skills";
import type { MaterialKind, Measure } from "#lib/materials/material";
import type { Measurement } from "#lib/measurements/measurement";

/** Words in both usages of the trade. */
export interface BothWords {
  readonly uk: string;
  readonly us: string;
}

/**
 * How a kind of garment is made, as data a workroom can edit: parameters -> drivers -> operations and needs.
 * Formulas are small expressions over named quantities with units, checked when the construction is saved.
 */
export interface Construction {
  readonly code: string;
  readonly version: number;
  readonly name: BothWords;
  /** What the figures come from, and which are common practice. */
  readonly source: string;
  readonly cautions: readonly string[];
  /** The body its figures were set for: used for a preview, and with a note when neither the wearer nor the size group has a measurement. */
  readonly medianBody: Readonly<Partial<Record<Measurement, string>>>;
  readonly parameters: readonly Parameter[];
  /** The layer table of a net skirt, lowest first; empty for anything else. */
  readonly layers: readonly NetLayer[];
  readonly drivers: readonly Driver[];
  readonly operations: readonly Operation[];
  readonly fittings: readonly ConstructionFitting[];
  readonly needs: readonly NeedRule[];
}

export type Parameter = { readonly code: string; readonly label: BothWords } & (
  | { readonly kind: "count"; readonly value: number; readonly min: number; readonly max: number }
  /** As a person writes it: `15 1/4 in`, `38.7 cm`. */
  | { readonly kind: "length"; readonly value: string; readonly min: string; readonly max: string }
  /** A plain ratio, for example fullness 10.45. */
  | { readonly kind: "ratio"; readonly value: number; readonly min: number; readonly max: number }
  | { readonly kind: "choice"; readonly value: string; readonly options: readonly { readonly code: string; readonly label: BothWords }[] }
  | { readonly kind: "yes-no"; readonly value: boolean }
);

/**
 * One row of the layer table: everything about its cloth is computed from these. All but `net` are formulas, so that a row may follow the
 * parameters; `layer` is the layer's own number, 1 the lowest, and a row may stand for several alike.
 */
export interface NetLayer {
  /** How many layers this row stands for; a count. */
  readonly count: string;
  /** A length. */
  readonly depth: string;
  /** Gathered length as a ratio of the line it is sewn to. */
  readonly fullness: string;
  /** The line it is sewn to; a length. */
  readonly seam: string;
  /** Where its row leaves the knickers, below the basque line; a length. */
  readonly drop: string;
  /** Material role (see needs) of its net. */
  readonly net: string;
  /** Part of the depth that is dyed: "none", "whole", or the "edge" only. */
  readonly dyed: string;
  /** Whether it carries the casing of the hoop; yes or no. */
  readonly casing: string;
}

interface Driver {
  readonly code: string;
  readonly label: BothWords;
  readonly unit: "count" | "length" | "ratio";
  readonly formula: string;
}

/** Seconds for each unit of a driver: low, likely, high. A length driver is counted per metre. */
interface Rate {
  readonly driver: string;
  readonly seconds: readonly [number, number, number];
}

export type LagKind = "elapsed" | "working";

/** What must have ended before this may begin, and how long after. */
export interface Wait {
  /** Code of an operation or a fitting of the same construction. */
  readonly on: string;
  readonly lagMinutes: number;
  readonly lagKind: LagKind;
}

export interface Operation {
  readonly code: string;
  readonly name: BothWords;
  /** Lane of the drawing: skirt, bodice, decoration ... */
  readonly part: string;
  readonly skill: Skill;
  /** Kind of machine (machines.csv); null for work by hand. */
  readonly machine: string | null;
  readonly setupMinutes: readonly [number, number, number];
  readonly rates: readonly Rate[];
  readonly waitsFor: readonly Wait[];
  /** Garments of a set may share the set-up. */
  readonly batch: boolean;
  /** Learning percentage for repeats in a set: 1000 none, 900 each doubling takes 90% (Crawford unit curve). */
  readonly learning: number;
  /** May be put down for the night or an appointment and taken up again by the same maker. */
  readonly pauses: boolean;
  /** Straining work: longest run and the rest after it, in minutes; null when not. */
  readonly straining: { readonly run: number; readonly rest: number } | null;
  /** A yes or no over parameters and drivers; without it the operation falls away, and who waited for it waits for what it waited for. Empty: always. */
  readonly when: string;
  /** Sources of a garment it is done for. */
  readonly sources: readonly Source[];
}

export const FITTING_KINDS = ["measure", "toile", "first", "second", "final", "cover"] as const;
export type FittingKind = (typeof FITTING_KINDS)[number];

export interface ConstructionFitting {
  readonly code: string;
  readonly kind: FittingKind;
  readonly name: BothWords;
  readonly minutes: number;
  readonly waitsFor: readonly Wait[];
  readonly when: string;
  readonly sources: readonly Source[];
}

export interface NeedRule {
  /** Material role inside the construction: `net`, `basque`, `bone` ... a piece maps it to a material. */
  readonly role: string;
  readonly label: BothWords;
  readonly kind: MaterialKind;
  readonly measure: Measure;
  /** Material used when the piece names none; empty: the piece must name one. */
  readonly material: string;
  /** How the need is cut: strips across the roll by the layer table, pieces of equal or listed lengths, or nothing special. */
  readonly cut: "net layers" | "pieces" | "panels" | "plain";
  /** Quantity for `plain`; the length of one piece for `pieces`; ignored for `net layers`. */
  readonly formula: string;
  /** Number of pieces for `pieces` and `panels`; empty: 1. */
  readonly count: string;
  /** Breadth of one panel across the roll, for `panels`; empty otherwise. */
  readonly breadth: string;
  /** Operation that first needs it. */
  readonly operation: string;
  readonly when: string;
  readonly sources: readonly Source[];
}
