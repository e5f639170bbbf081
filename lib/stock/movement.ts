import type { Measure, Quantity } from "#lib/materials/material";
import { showQuantity } from "#lib/materials/showQuantity";
import { failed, ok, type Result } from "#lib/result";
import type { LengthSystem } from "#lib/units/showLength";

/**
 * Why a lot's quantity changed. Movements are only ever added: a mistake is mended by another movement, so that every figure can be followed
 * back. `parted` is both sides of an off-cut that becomes a lot of its own; `moved` changes the location and nothing else.
 */
export const MOVEMENT_KINDS = ["received", "cut", "put back", "returned", "counted", "adjusted", "parted", "moved"] as const;
export type MovementKind = (typeof MOVEMENT_KINDS)[number];

export interface Movement {
  /** Code of the lot. */
  readonly lot: string;
  readonly kind: MovementKind;
  /** Positive in, negative out; 0 when moved, and when a count found what was there. */
  readonly quantity: Quantity;
  /** Reservation it uses up, when cloth is cut that was kept for something. */
  readonly reservation: string | null;
  /** Garments it was cut for. */
  readonly garments: readonly string[];
  /** In the person's words; required for `adjusted`. */
  readonly reason: string;
}

export const RESERVATION_STATES = ["held", "released", "used"] as const;
export type ReservationState = (typeof RESERVATION_STATES)[number];

/** So much of a lot is kept for a production, and in it for a set or for garments. */
export interface Reservation {
  readonly code: string;
  readonly lot: string;
  readonly production: string;
  /** A set, or numbers of garments; empty: for the production. */
  readonly set: string | null;
  readonly garments: readonly string[];
  readonly quantity: Quantity;
  readonly state: ReservationState;
}

/** What lies in a lot and how much of it is promised; never negative, and never promised beyond what lies there. */
export interface LotBalance {
  readonly onHand: Quantity;
  readonly reserved: Quantity;
}

/** Why a movement or a reservation was not taken: `short` is by how much. */
export interface StockRefusal {
  readonly kind: "too little" | "promised" | "not whole";
  readonly short: Quantity;
}

/** What may still be promised or taken. */
export const freeOf = ({ onHand, reserved }: LotBalance): Quantity => onHand - reserved;

/** The balance after a movement that uses up so much of what is reserved; refused where less would lie there than none, or than is promised. */
export const book = (balance: LotBalance, quantity: Quantity, used: Quantity = 0): Result<LotBalance, StockRefusal> =>
  kept({ onHand: balance.onHand + quantity, reserved: balance.reserved - used });

/** The balance with more of it promised. */
export const reserve = (balance: LotBalance, quantity: Quantity): Result<LotBalance, StockRefusal> =>
  kept({ ...balance, reserved: balance.reserved + quantity });

/** The balance with a promise given up. */
export const release = (balance: LotBalance, quantity: Quantity): Result<LotBalance, StockRefusal> => reserve(balance, -quantity);

const kept = (balance: LotBalance): Result<LotBalance, StockRefusal> => {
  const { onHand, reserved } = balance;
  if (!Number.isSafeInteger(onHand) || !Number.isSafeInteger(reserved)) return failed({ kind: "not whole", short: 0 });
  if (onHand < 0) return failed({ kind: "too little", short: -onHand });
  if (reserved < 0) return failed({ kind: "too little", short: -reserved });
  return onHand < reserved ? failed({ kind: "promised", short: reserved - onHand }) : ok(balance);
};

/** The movement of a count: what must be added to what the books say. */
export const countedBy = (balance: LotBalance, counted: Quantity): Quantity => counted - balance.onHand;

/**
 * Reservations to give up when a count finds less than is promised: the newest first (`held` is oldest first), until the rest is covered.
 * The count itself is a fact and is never refused for it.
 */
export const toRelease = (held: readonly Reservation[], counted: Quantity): readonly Reservation[] => {
  const given: Reservation[] = [];
  let reserved = held.reduce((sum, { quantity }) => sum + quantity, 0);
  for (const reservation of held.toReversed()) {
    if (reserved <= counted) break;
    given.push(reservation);
    reserved -= reservation.quantity;
  }
  return given;
};

/** The refusal as a sentence. */
export const refusalText = (refusal: StockRefusal, lot: string, measure: Measure, lengths: LengthSystem): string => {
  const short = showQuantity(refusal.short, measure, lengths);
  if (refusal.kind === "not whole") return `The quantity for lot ${lot} is not a whole number of its unit.`;
  return refusal.kind === "too little"
    ? `Lot ${lot} holds ${short} too little for that.`
    : `${short} more of lot ${lot} is promised than would be left: release it first.`;
};
