import type { Staging } from "#lib/staging/staging";
import { type DancedPlace, placesByRole } from "./places";
import type { Garment, Piece, Wearer } from "./wardrobe";

/**
 * The garments of a staging, in the order of the piece list, numbered `HM 001`, `HM 002` ... with the production's prefix.
 * A piece makes one for each performer (or place not yet cast), for each place shared across casts, or one for the role.
 * Covers are further wearers of the garment of the place they cover.
 */
export const garmentsOf = (staging: Staging): readonly Garment[] => {
  const roleOf = new Map(staging.costumes.map((costume) => [costume.code, costume.role]));
  const prototypes = new Set(staging.sets.filter((set) => set.prototype).map((set) => set.code));
  const placesOf = placesByRole(staging);
  const counted = new Map<string, number>();
  const begun = new Set<string>();
  const garments: Garment[] = [];
  for (const piece of staging.pieces) {
    const role = roleOf.get(piece.costume) ?? "";
    const bodies = wearersOf(piece, placesOf.get(role) ?? []);
    for (const [index, wearers] of bodies.entries()) {
      const kind = `${piece.set}\n${piece.construction}`;
      const ordinal = piece.set === null ? 1 : (counted.get(kind) ?? 0) + 1;
      counted.set(kind, ordinal);
      const prototype = piece.set !== null && prototypes.has(piece.set) && !begun.has(piece.set);
      if (piece.set !== null) begun.add(piece.set);
      garments.push({
        number: `${staging.production.prefix} ${String(garments.length + 1).padStart(3, "0")}`,
        name: bodies.length === 1 ? piece.name : `${piece.name} (${index + 1} of ${bodies.length})`,
        piece: piece.code,
        costume: piece.costume,
        role,
        source: piece.source,
        construction: piece.construction,
        version: piece.version,
        set: piece.set,
        ordinal,
        prototype,
        wearers,
        parameters: piece.parameters,
        materials: piece.materials,
        due: piece.due,
        weight: piece.weight,
        price: piece.price,
        stock: piece.stock,
      });
    }
  }
  return garments;
};

/** Wearers of each garment of a piece. */
const wearersOf = (piece: Piece, places: readonly DancedPlace[]): readonly (readonly Wearer[])[] => {
  if (piece.each === "role") return places.length === 0 ? [] : [onceEach(places.flatMap((place) => [place.wearer, ...place.covers]))];
  const groups = new Map<string, Wearer[]>();
  const garmentOf = (place: DancedPlace) => {
    if (piece.each === "place") return `place ${place.wearer.place}`;
    return place.wearer.performer === null ? `unnamed ${place.wearer.cast} ${place.wearer.place}` : `performer ${place.wearer.performer}`;
  };
  for (const place of places) {
    const key = garmentOf(place);
    groups.set(key, [...(groups.get(key) ?? []), place.wearer, ...place.covers]);
  }
  return [...groups.values()].map(onceEach);
};

/** Those who dance first, then covers; a performer who dances it in two casts, or also covers it, counts once. */
const onceEach = (wearers: readonly Wearer[]): readonly Wearer[] => {
  const seen = new Set<string>();
  return [...wearers.filter((each) => each.standing === "cast"), ...wearers.filter((each) => each.standing === "cover")].filter((each) => {
    if (each.performer === null) return true;
    if (seen.has(each.performer)) return false;
    seen.add(each.performer);
    return true;
  });
};
