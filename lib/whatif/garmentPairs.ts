import type { Garment, Piece } from "#lib/casting/wardrobe";
import type { StagingPlan } from "#lib/planning/stagingPlan";

/** One garment in both plans, or in one of them. Numbers may differ: they follow the piece list and the casting. */
export type GarmentPair =
  | { readonly before: Garment; readonly after: Garment }
  | { readonly before: Garment; readonly after: null }
  | { readonly before: null; readonly after: Garment };

type Listed = Pick<StagingPlan, "staging" | "garments">;

/** The same garment is the one of the same piece for the same place: casting a place keeps it. In the order after, then those that are gone. */
export const garmentPairs = (before: Listed, after: Listed): readonly GarmentPair[] => {
  const old = new Map(before.garments.map((garment) => [nameIn(before, garment), garment]));
  const pairs = after.garments.map((garment): GarmentPair => {
    const name = nameIn(after, garment);
    const was = old.get(name) ?? null;
    old.delete(name);
    return { before: was, after: garment };
  });
  return [...pairs, ...[...old.values()].map((garment) => ({ before: garment, after: null }))];
};

const nameIn = ({ staging }: Listed, { piece, wearers }: Garment): string => {
  const first = wearers[0];
  const each: Piece["each"] | undefined = staging.pieces.find(({ code }) => code === piece)?.each;
  if (each === "role") return JSON.stringify([piece]);
  return JSON.stringify(each === "place" ? [piece, first?.place] : [piece, first?.cast, first?.place]);
};
