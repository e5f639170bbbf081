import type { CostumeChange } from "./changes";

type Body = Pick<CostumeChange, "performer" | "place">;

/** One change that several bodies make together: a corps, or one performer. */
export type GroupedChange<Change extends CostumeChange = CostumeChange> = Omit<Change, keyof Body> & { readonly bodies: readonly Body[] };

/** Changes of one cast that are the same for several bodies as one, the shortest time first. */
export const groupedChanges = <Change extends CostumeChange>(changes: readonly Change[]): readonly GroupedChange<Change>[] => {
  const groups = new Map<string, GroupedChange<Change> & { bodies: Body[] }>();
  for (const { performer, place, ...change } of changes) {
    const key = JSON.stringify([change.cast, change.from, change.to]);
    const group = groups.get(key) ?? { ...change, bodies: [] };
    group.bodies.push({ performer, place });
    groups.set(key, group);
  }
  return [...groups.values()].sort((a, b) => a.minutes - b.minutes);
};
