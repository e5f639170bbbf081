import type { PlainDate } from "#lib/calendar/plainDate";
import type { Measure, Quantity } from "#lib/materials/material";
import type { MinorUnits } from "#lib/units/quantities";

/** How far an order is, as it is kept. Whether goods came is told by its lines: `shownState`. */
export const ORDER_STATES = ["draft", "approved", "placed", "closed", "cancelled"] as const;
export type OrderState = (typeof ORDER_STATES)[number];

/** What a person sees: `placed` split by what has come. `closed` is settled: nothing more is expected. */
export type ShownOrderState = OrderState | "part received" | "received";

/** Goods of a line that came: they become a lot on the shelf. */
export interface Receipt {
  readonly day: PlainDate;
  readonly quantity: Quantity;
  readonly dyeLot: string;
  /** Code of the lot they became. */
  readonly lot: string;
  readonly location: string;
  /** What the supplier charged for them; null: as ordered. */
  readonly charged: MinorUnits | null;
}

/** Goods of a line sent back; `credit` is what the supplier gives for them. */
export interface GoodsReturn {
  readonly day: PlainDate;
  readonly quantity: Quantity;
  readonly lot: string;
  readonly why: string;
  readonly credit: MinorUnits;
}

/** What of a line may be put right once it is ordered, before and after. */
export interface LineTerms {
  readonly packs: number;
  readonly pricePerPack: MinorUnits;
  /** Day the supplier promises it for. */
  readonly promised: PlainDate | null;
}

export interface Correction {
  readonly day: PlainDate;
  readonly before: LineTerms;
  readonly after: LineTerms;
  readonly why: string;
}

/** What is ordered of one material; it keeps its names and figures as they were ordered. */
export interface OrderLine extends LineTerms {
  /** 1-based within the order. */
  readonly line: number;
  readonly material: string;
  readonly name: string;
  readonly colour: string;
  readonly measure: Measure;
  readonly pack: Quantity;
  /** Sets that must each be cut from one dye lot, by comma; null when it does not matter. */
  readonly oneLotSet: string | null;
  /** Calendar days from delivery until it may be cut. */
  readonly inspectionDays: number;
  /** First day it is cut, when it was ordered. */
  readonly neededBy: PlainDate | null;
  /** The arithmetic of the purchase line it came from; empty for a line written by hand. */
  readonly arithmetic: string;
  /** Numbers of the garments it is bought for. */
  readonly garments: readonly string[];
  readonly receipts: readonly Receipt[];
  readonly returns: readonly GoodsReturn[];
  readonly corrections: readonly Correction[];
}

export interface Order {
  /** The company's number. */
  readonly number: string;
  readonly supplier: string;
  readonly production: string;
  readonly currency: string;
  readonly state: OrderState;
  readonly approvedOn: PlainDate | null;
  readonly placedOn: PlainDate | null;
  /** Carriage and the like, for the whole order. */
  readonly freight: MinorUnits;
  readonly note: string;
  readonly lines: readonly OrderLine[];
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

export const orderedOf = ({ packs, pack }: OrderLine): Quantity => packs * pack;
/** Came and was kept. */
export const keptOf = ({ receipts, returns }: OrderLine): Quantity =>
  sum(receipts.map(({ quantity }) => quantity)) - sum(returns.map(({ quantity }) => quantity));
/** Still to come; what was sent back is not asked for again unless the line is corrected. */
export const openOf = (line: OrderLine): Quantity => Math.max(0, orderedOf(line) - sum(line.receipts.map(({ quantity }) => quantity)));

export const shownState = ({ state, lines }: Order): ShownOrderState => {
  if (state !== "placed" || lines.every((line) => line.receipts.length === 0)) return state;
  return lines.every((line) => openOf(line) === 0) ? "received" : "part received";
};
