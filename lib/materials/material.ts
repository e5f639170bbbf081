import type { PlainDate } from "#lib/calendar/plainDate";
import type { Length, MinorUnits, PerMille } from "#lib/units/quantities";

/** Sold and counted by length, or by the piece. */
export type Measure = "length" | "count";

/** A length (`Length`) or a count, by the material's measure. */
export type Quantity = number;

export const MATERIAL_KINDS = [
  "net",
  "foundation",
  "cloth",
  "lining",
  "stretch",
  "bone",
  "hoop",
  "hook",
  "bar",
  "elastic",
  "ribbon",
  "thread",
  "trim",
  "wire",
  "fixing",
  "bought",
  "dye",
] as const;
export type MaterialKind = (typeof MATERIAL_KINDS)[number];

export const GRAINS = ["fixed", "free"] as const;
export type Grain = (typeof GRAINS)[number];

export const PRICE_BREAKS = ["all", "incremental"] as const;
/** At a break, all packs take the price reached, or each pack keeps the price of its own step. */
export type PriceBreaks = (typeof PRICE_BREAKS)[number];

export interface Material {
  readonly code: string;
  readonly name: string;
  readonly kind: MaterialKind;
  readonly measure: Measure;
  readonly colour: string;
  /** Full width of cloth on the roll; null for what has none. */
  readonly width: Length | null;
  /** Width less selvedges: what may be cut. */
  readonly cuttable: Length | null;
  /** Lost when washed before cutting (cotton bobbinet up to 300). */
  readonly shrinkage: PerMille;
  /** Bought beyond the need, for waste and repair. */
  readonly spare: PerMille;
  /** Lost at each cut: the saw through a rod, the nip of a steel. */
  readonly kerf: Length;
  /** Shortest rest worth keeping for another job; null when none is kept. */
  readonly keep: Length | null;
  /** Whether pieces may lie a quarter turn round. */
  readonly grain: Grain;
}

/** A supplier's pack of a material. */
export interface Offer {
  readonly material: string;
  readonly supplier: string;
  /** Length or count in one pack. */
  readonly pack: Quantity;
  readonly minimumPacks: number;
  /** Price of a pack from so many packs on; ascending, the first `from` is 1. */
  readonly prices: readonly { readonly from: number; readonly price: MinorUnits }[];
  readonly breaks: PriceBreaks;
  /** Carriage and handling of one order, whatever is in it. */
  readonly orderCost: MinorUnits;
  /** Calendar days from order to delivery. */
  readonly leadDays: number;
  /** Calendar days from delivery until it may be cut: counting, airing, washing. */
  readonly inspectionDays: number;
}

/** A dye lot on the shelf, or on order when `arrives` is set. */
export interface Lot {
  readonly code: string;
  readonly material: string;
  readonly dyeLot: string;
  readonly quantity: Quantity;
  readonly location: string;
  /** Of an off-cut narrower than the cloth; null: as wide as the material. */
  readonly breadth: Length | null;
  readonly arrives: PlainDate | null;
}
