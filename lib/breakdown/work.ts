import type { BothWords, FittingKind, LagKind } from "#lib/constructions/construction";
import type { Skill } from "#lib/labour/skills";
import type { Measure, Quantity } from "#lib/materials/material";
import type { Length, Minutes, PerMille } from "#lib/units/quantities";

/** Low, likely, high. */
export type ThreePoint = readonly [Minutes, Minutes, Minutes];

/** One garment broken down: what must be done, in which order, with what. */
export interface GarmentWork {
  readonly garment: string;
  readonly construction: { readonly code: string; readonly version: number } | null;
  readonly drivers: readonly DriverValue[];
  readonly operations: readonly WorkOperation[];
  readonly fittings: readonly WorkFitting[];
  readonly needs: readonly Need[];
  /** The computed layers of a net skirt, lowest first; empty for anything else. */
  readonly layers: readonly ComputedLayer[];
  readonly notes: readonly WorkNote[];
}

/** A driver with the figure it came to and the arithmetic behind it. */
export interface DriverValue {
  readonly code: string;
  readonly label: BothWords;
  readonly unit: "count" | "length" | "ratio";
  /** Count and ratio as a plain number, length in `Length`. */
  readonly value: number;
  readonly arithmetic: string;
}

export interface WorkWait {
  /** Code of an operation or fitting of this garment. */
  readonly on: string;
  readonly lagMinutes: Minutes;
  readonly lagKind: LagKind;
}

export interface WorkOperation {
  readonly code: string;
  readonly name: BothWords;
  readonly part: string;
  readonly skill: Skill;
  readonly machine: string | null;
  /** Whole time at standard pace, set-up and learning included, rounded up once. */
  readonly minutes: ThreePoint;
  /** The part of it a batch shares. */
  readonly setup: ThreePoint;
  readonly learningFactor: PerMille;
  /** `45 min + 12 layers x 36 min, x 0.90 as third of its set` */
  readonly arithmetic: string;
  readonly waitsFor: readonly WorkWait[];
  readonly batch: boolean;
  readonly pauses: boolean;
  readonly straining: { readonly run: Minutes; readonly rest: Minutes } | null;
}

export interface WorkFitting {
  readonly code: string;
  readonly kind: FittingKind;
  readonly name: BothWords;
  readonly minutes: Minutes;
  /** Index into the garment's wearers. */
  readonly wearer: number;
  readonly waitsFor: readonly WorkWait[];
}

/** Material one garment needs. `cuts` are the pieces a cutting plan lays out; empty when it is used by the length or count. */
export interface Need {
  readonly garment: string;
  readonly role: string;
  readonly label: BothWords;
  readonly material: string;
  readonly measure: Measure;
  /** Net quantity, before waste and spare. For strips across the roll: the roll length. */
  readonly quantity: Quantity;
  readonly cuts: readonly Cut[];
  /** Set whose garments must share a dye lot; null when it does not matter. */
  readonly oneLotSet: string | null;
  /** Operation that first needs it. */
  readonly operation: string;
  readonly arithmetic: string;
}

/** `count` alike pieces: `length` along the roll, rod or coil; `breadth` across the roll (null: no breadth, or the full width). */
export interface Cut {
  readonly label: string;
  readonly length: Length;
  readonly breadth: Length | null;
  readonly count: number;
}

/** One layer of a net skirt, computed. */
export interface ComputedLayer {
  /** 1 is the lowest. */
  readonly layer: number;
  readonly depth: Length;
  readonly fullness: number;
  /** The line it is sewn to. */
  readonly seam: Length;
  /** Role of its net among the needs, and the material that fills it. */
  readonly net: string;
  readonly material: string;
  readonly cuttable: Length;
  /** Widths of the roll joined into the strip. */
  readonly widths: number;
  /** Joined length of the cut strip. */
  readonly strip: Length;
  /** Off the roll: widths x depth. */
  readonly roll: Length;
  /** Where its row leaves the knickers, below the basque line. */
  readonly drop: Length;
  readonly dyed: "none" | "whole" | "edge";
  readonly casing: boolean;
}

/** Something a person must know: a fallback, a limit, a caution. */
export interface WorkNote {
  readonly garment: string;
  readonly kind: "measurement" | "parameter" | "material" | "caution";
  readonly text: string;
}
