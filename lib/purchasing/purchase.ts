import type { PlainDate } from "#lib/calendar/plainDate";
import type { Source } from "#lib/casting/wardrobe";
import type { Measure, Quantity } from "#lib/materials/material";
import type { MinorUnits } from "#lib/units/quantities";
import type { PricedPacks } from "./packs";
import type { Carriage } from "./suppliers";

/** What one garment's need contributes to a line: the reason it is bought. */
export interface LineReason {
  readonly garment: string;
  readonly role: string;
  readonly quantity: Quantity;
  readonly arithmetic: string;
}

/** So much of a line, ordered at once. */
export interface LineDelivery {
  readonly packs: number;
  /** Packs by price: one part, or one for each step of incremental breaks. */
  readonly parts: readonly PricedPacks[];
  readonly cost: MinorUnits;
  readonly neededBy: PlainDate | null;
  readonly orderBy: PlainDate | null;
}

/** One line of the purchase list: what is ordered of one material. */
export interface PurchaseLine {
  readonly supplier: string;
  readonly material: string;
  readonly name: string;
  readonly colour: string;
  readonly measure: Measure;
  /** Sets whose garments must each be cut from one dye lot, by comma; null when it does not matter. */
  readonly oneLotSet: string | null;
  /** Sum of the garments' needs. */
  readonly gross: Quantity;
  /** Taken from lots on hand or on order. */
  readonly fromShelf: readonly { readonly lot: string; readonly quantity: Quantity }[];
  /** Added so that the need is left after washing. */
  readonly shrinkage: Quantity;
  /** Waste and spare added, by the material's own share and those of sets for repair. */
  readonly spare: Quantity;
  /** The part of the spare that sets keep for repair. */
  readonly repair: Quantity;
  /** Gross, shrinkage and spare, less what the shelf gives. */
  readonly toBuy: Quantity;
  readonly packs: number;
  readonly pack: Quantity;
  /** Of the last pack: where price breaks are incremental the earlier ones cost more. */
  readonly pricePerPack: MinorUnits;
  /** Of all its deliveries; carriage stands with the suppliers. */
  readonly cost: MinorUnits;
  /** Stocks its cutting opens, and the fewest that any plan can; null where packs are not cut one by one. */
  readonly cut: { readonly stocks: number; readonly bound: number; readonly proved: boolean } | null;
  /** The orders it is bought in: one, or several where keeping costs more than another order. */
  readonly deliveries: readonly LineDelivery[];
  /** First day it is cut in the plan; null when there is no plan for it. */
  readonly neededBy: PlainDate | null;
  /** Latest day to order: needed by, less lead time and inspection. */
  readonly orderBy: PlainDate | null;
  readonly arithmetic: string;
  readonly reasons: readonly LineReason[];
  readonly warnings: readonly string[];
}

export interface PurchaseList {
  /** By supplier, then order-by date, then material. */
  readonly lines: readonly PurchaseLine[];
  /** Materials nobody offers, with what is needed. */
  readonly unoffered: readonly {
    readonly material: string;
    readonly toBuy: Quantity;
    readonly reasons: readonly LineReason[];
    /** Why it cannot be bought, as a sentence. */
    readonly why: string;
  }[];
  /** Needs the shelf meets whole: nothing is bought for them. */
  readonly covered: readonly CoveredNeed[];
  /** What suppliers charge for orders, whatever is in them; none that charge nothing. */
  readonly carriage: readonly Carriage[];
  /** Garments bought or hired whole, at the price their piece says. */
  readonly garments: readonly BoughtGarment[];
  /** Lines and carriage. */
  readonly materials: MinorUnits;
  /** Materials and garments. */
  readonly total: MinorUnits;
}

/** A garment with a price of its own: bought or hired ready-made. */
export interface BoughtGarment {
  readonly garment: string;
  readonly name: string;
  readonly source: Source;
  readonly price: MinorUnits;
}

/** Needs of one material and set that lots on hand or on order meet whole. */
export interface CoveredNeed {
  readonly material: string;
  readonly name: string;
  readonly measure: Measure;
  readonly oneLotSet: string | null;
  readonly gross: Quantity;
  readonly fromShelf: readonly { readonly lot: string; readonly quantity: Quantity }[];
  readonly reasons: readonly LineReason[];
}
