import { garmentsOf } from "#lib/casting/garments";
import type { Piece, Source } from "#lib/casting/wardrobe";
import { versionMeant } from "#lib/constructions/versions";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import type { StockGarment } from "#lib/stock/stock";
import type { MinorUnits } from "#lib/units/quantities";

/** What a hirer or a seller asks for one garment, and how many days after today it is there; null when nobody said. */
export interface Quote {
  readonly price: MinorUnits;
  readonly days: number | null;
}

export type Quotes = Readonly<Partial<Record<"hire" | "buy", Quote>>>;

interface Variant {
  readonly staging: Staging;
  readonly why: string;
}

/** The staging with one piece from another source, and why it can be had so; or why it cannot. */
export const sourceVariant = (staging: Staging, piece: Piece, source: Source, quotes: Quotes): Result<Variant, string> => {
  if (source === "hire" || source === "buy") {
    const price = quotes[source]?.price ?? ownPrice(piece, source);
    if (price === null && source === piece.source)
      return ok({ staging, why: "As it is planned now; no price is known: it counts as nothing." });
    if (price === null) return failed("No price is known.");
    const why = quotes[source] ? "At the price given." : "At the price in the piece list.";
    return ok(withPiece(staging, { ...piece, source, price, stock: null }, why));
  }
  if (source === piece.source) return ok({ staging, why: "As it is planned now." });
  const made = { ...piece, source, price: null };
  if (source === "build") return asBuilt(staging, { ...made, stock: null });
  return asPulled(staging, made, source);
};

/** The one price of the piece list is that of its own source; of a piece from elsewhere it may be either. */
const ownPrice = ({ source, price }: Piece, wanted: "hire" | "buy"): MinorUnits | null =>
  source === wanted || (source !== "hire" && source !== "buy") ? price : null;

const withPiece = (staging: Staging, piece: Piece, why: string): Variant => ({
  staging: { ...staging, pieces: staging.pieces.map((one) => (one.code === piece.code ? piece : one)) },
  why,
});

const asBuilt = (staging: Staging, piece: Piece): Result<Variant, string> => {
  if (!saysHow(staging, piece)) return failed(noWork(piece, "built"));
  return ok(withPiece(staging, piece, `As ${piece.construction} says.`));
};

const asPulled = (staging: Staging, piece: Piece, source: "pull" | "alter"): Result<Variant, string> => {
  const needed = garmentsOf(staging).filter((garment) => garment.piece === piece.code).length;
  const found = onTheShelf(staging, piece, source);
  // A number in stock is one garment, unless the piece list gives the piece that number: then it is enough for the whole piece.
  const isGiven = found[0]?.number === piece.stock;
  if (found.length === 0) return failed("Nothing of the kind is in stock.");
  if (found.length < needed && !isGiven)
    return failed(`${needed} are needed; in stock ${found.length === 1 ? "is" : "are"} ${found.map(said).join("; ")}.`);
  if (source === "alter" && !saysHow(staging, piece)) return failed(noWork(piece, "altered"));
  const ofStock = found.slice(0, isGiven ? 1 : needed);
  return ok(withPiece(staging, { ...piece, stock: ofStock[0]?.number ?? null }, `In stock: ${ofStock.map(said).join("; ")}.`));
};

const noWork = ({ construction }: Piece, done: string): string =>
  construction === null ? `Nothing says how it is ${done}.` : `${construction} has no work for a garment that is ${done}.`;

const said = ({ number, name, condition, note }: StockGarment): string =>
  [number, name, condition, note].filter((part) => part !== "").join(", ");

/** Garments in stock that no other piece takes: the one the piece names, then those made the same way, the best first. */
const onTheShelf = ({ stock, pieces }: Staging, piece: Piece, source: "pull" | "alter"): readonly StockGarment[] => {
  const taken = new Set(pieces.filter((one) => one.code !== piece.code).map((one) => one.stock));
  const fit = source === "pull" ? ["good"] : ["good", "worn", "repair"];
  const alike = stock.filter(
    ({ number, construction }) => number === piece.stock || (construction !== null && construction === piece.construction),
  );
  const rank = ({ number, condition }: StockGarment) => (number === piece.stock ? -1 : fit.indexOf(condition));
  return alike.filter(({ number, condition }) => !taken.has(number) && fit.includes(condition)).sort((a, b) => rank(a) - rank(b));
};

/** Whether its construction has any work for its source. */
const saysHow = ({ constructions }: Staging, { construction, version, source }: Piece): boolean =>
  construction !== null &&
  (versionMeant(constructions, construction, version)?.operations.some(({ sources }) => sources.includes(source)) ?? false);
