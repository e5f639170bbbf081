import { garmentsOf } from "#lib/casting/garments";
import type { Wearer } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";

/** Code of everything that is added. */
export const ADDED = "(added)";

/** More of what a piece is: how many, and by when. */
export interface Addition {
  readonly like: string;
  readonly count: number;
  /** Milestone; null: as the piece itself. */
  readonly due: string | null;
}

/**
 * The staging with costumes added at the end of its piece list: a design of their own, made as the piece is made, worn in turn by those who
 * wear the piece. As a set they share cloth and learning, and have a prototype to be approved, where the piece's own set has.
 */
export const addCostumes = (staging: Staging, { like, count, due }: Addition): Staging => {
  const piece = staging.pieces.find(({ code }) => code === like)!;
  const costume = staging.costumes.find(({ code }) => code === piece.costume)!;
  const role = staging.roles.find(({ code }) => code === costume.role)!;
  const set = staging.sets.find(({ code }) => code === piece.set);
  const wearers = garmentsOf(staging).flatMap((garment): Wearer[] => (garment.piece === like ? garment.wearers.slice(0, 1) : []));
  if (count === 0 || wearers.length === 0) return staging;
  const places = Array.from({ length: count }, (_, at) => {
    const { performer, sizeGroup } = wearers[at % wearers.length]!;
    return { cast: wearers[0]!.cast, role: ADDED, place: at + 1, performer, sizeGroup, standing: "cast" as const };
  });
  return {
    ...staging,
    roles: [...staging.roles, { ...role, code: ADDED, places: count }],
    casting: [...staging.casting, ...places],
    costumes: [...staging.costumes, { ...costume, code: ADDED, role: ADDED }],
    sets: set ? [...staging.sets, { ...set, code: ADDED, approvedOn: null }] : staging.sets,
    pieces: [
      ...staging.pieces,
      {
        ...piece,
        code: ADDED,
        costume: ADDED,
        name: `Added: ${piece.name}`,
        set: set ? ADDED : null,
        each: "place",
        due: due ?? piece.due,
        stock: null,
      },
    ],
  };
};

/** The piece with most garments that the workroom makes; the first of equals. Null when it makes none. */
export const mostMade = (staging: Staging): string | null => {
  const made = garmentsOf(staging).filter(({ source }) => source === "build");
  const counts = new Map<string, number>();
  for (const { piece } of made) counts.set(piece, (counts.get(piece) ?? 0) + 1);
  return [...counts].reduce<readonly [string | null, number]>((best, one) => (one[1] > best[1] ? one : best), [null, 0])[0];
};
