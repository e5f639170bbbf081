import type { CostumeChange } from "./changes";

/** One change that several bodies make together: a corps, or one performer. */
export interface GroupedChange extends Omit<CostumeChange, "performer" | "place"> {
  readonly bodies: readonly Pick<CostumeChange, "performer" | "place">[];
}

/** Changes of one cast that are the same for several bodies as one, the shortest time first. */
export const groupedChanges = (changes: readonly CostumeChange[]): readonly GroupedChange[] => {
  const groups = new Map<string, GroupedChange & { bodies: Pick<CostumeChange, "performer" | "place">[] }>();
  for (const { performer, place, ...change } of changes) {
    const key = JSON.stringify([change.cast, change.from, change.to]);
    const group = groups.get(key) ?? { ...change, bodies: [] };
    group.bodies.push({ performer, place });
    groups.set(key, group);
  }
  return [...groups.values()].sort((a, b) => a.minutes - b.minutes);
};
