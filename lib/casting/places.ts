import type { Staging } from "#lib/staging/staging";
import type { CastPlace } from "./casting";
import type { Wearer } from "./wardrobe";

/** A place of a role in one cast: who dances it, and who covers it. */
export interface DancedPlace {
  readonly wearer: Wearer;
  readonly covers: readonly Wearer[];
}

const wearer = (row: CastPlace): Wearer => ({
  performer: row.performer,
  sizeGroup: row.sizeGroup,
  cast: row.cast,
  place: row.place,
  standing: row.standing,
});

/**
 * Places of every role: casts in the order the casting names them first, places of each in order; a cover stands with the place it covers.
 */
export const placesByRole = ({ casting }: Pick<Staging, "casting">): ReadonlyMap<string, readonly DancedPlace[]> => {
  const casts = new Map<string, number>();
  for (const { cast } of casting) if (!casts.has(cast)) casts.set(cast, casts.size);
  const covers = new Map<string, Wearer[]>();
  for (const row of casting) if (row.standing === "cover") put(covers, placeName(row), wearer(row));
  const danced = casting
    .filter((row) => row.standing === "cast")
    .sort((a, b) => (casts.get(a.cast) ?? 0) - (casts.get(b.cast) ?? 0) || a.place - b.place);
  const byRole = new Map<string, DancedPlace[]>();
  for (const row of danced) put(byRole, row.role, { wearer: wearer(row), covers: covers.get(placeName(row)) ?? [] });
  return byRole;
};

const placeName = ({ cast, role, place }: CastPlace): string => JSON.stringify([cast, role, place]);

const put = <T>(lists: Map<string, T[]>, key: string, value: T): void => {
  const list = lists.get(key);
  if (list) list.push(value);
  else lists.set(key, [value]);
};
