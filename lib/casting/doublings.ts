import type { Staging } from "#lib/staging/staging";
import type { CastPlace, Scene } from "./casting";

interface HeldPlace {
  readonly role: string;
  readonly place: number;
  readonly standing: "cast" | "cover";
}

/** A performer who holds two places of one cast. */
export interface Doubling {
  readonly performer: string;
  readonly cast: string;
  readonly places: readonly [HeldPlace, HeldPlace];
  /**
   * `clash`: dances both at one time, which nobody can. `cover`: stands by for one while dancing the other, so that one falls empty if
   * called on. `apart`: dances both, never at one time.
   */
  readonly kind: "clash" | "cover" | "apart";
  /** Scenes of the first place during which the other is wanted too; empty when apart. */
  readonly scenes: readonly string[];
}

/** Everybody who holds two places of one cast, pair by pair, in the order of the casting. Standing by for two, or standing by for a role that is never on at the same time, is no doubling. */
export const doublings = (staging: Pick<Staging, "casting" | "scenes" | "appearances">): readonly Doubling[] => {
  const scenesOf = scenesByRole(staging);
  const held = new Map<string, CastPlace[]>();
  for (const row of staging.casting) {
    if (row.performer === null) continue;
    const key = JSON.stringify([row.cast, row.performer]);
    held.set(key, [...(held.get(key) ?? []), row]);
  }
  return [...held.values()].flatMap((rows) =>
    rows.flatMap((one, at) => rows.slice(at + 1).flatMap((other) => doubling(one, other, scenesOf) ?? [])),
  );
};

const doubling = (one: CastPlace, other: CastPlace, scenesOf: ReadonlyMap<string, readonly Scene[]>): Doubling | null => {
  const samePlace = one.role === other.role && one.place === other.place;
  if (samePlace || (one.standing === "cover" && other.standing === "cover")) return null;
  const others = scenesOf.get(other.role) ?? [];
  const scenes = (scenesOf.get(one.role) ?? []).filter((scene) => others.some((each) => overlap(scene, each))).map(({ code }) => code);
  const both = one.standing === "cast" && other.standing === "cast";
  if (!both && scenes.length === 0) return null;
  const kind = both ? (scenes.length > 0 ? "clash" : "apart") : "cover";
  return { performer: one.performer!, cast: one.cast, places: [heldPlace(one), heldPlace(other)], kind, scenes };
};

const heldPlace = ({ role, place, standing }: CastPlace): HeldPlace => ({ role, place, standing });

/** The same scene, or two that run at one time. */
const overlap = (one: Scene, other: Scene): boolean =>
  one.code === other.code || (one.starts < other.starts + other.minutes && other.starts < one.starts + one.minutes);

const scenesByRole = ({ scenes, appearances }: Pick<Staging, "scenes" | "appearances">): ReadonlyMap<string, readonly Scene[]> => {
  const byRole = new Map<string, Scene[]>();
  for (const scene of scenes)
    for (const role of new Set(appearances.filter((each) => each.scene === scene.code).map((each) => each.role)))
      byRole.set(role, [...(byRole.get(role) ?? []), scene]);
  return byRole;
};
