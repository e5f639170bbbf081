import type { Staging } from "#lib/staging/staging";

/** A performer who would have to be two bodies in one scene. */
export interface Clash {
  readonly performer: string;
  readonly cast: string;
  readonly scene: string;
  readonly places: readonly { readonly role: string; readonly place: number }[];
}

/** Performers cast in two places of one scene in the same cast, by scene, then cast, in the order of the lists. Covers stand by and do not clash. */
export const clashes = (staging: Pick<Staging, "casting" | "scenes" | "appearances">): readonly Clash[] => {
  const found: Clash[] = [];
  for (const scene of staging.scenes) {
    const roles = new Set(staging.appearances.filter((each) => each.scene === scene.code).map((each) => each.role));
    const bodies = new Map<string, Clash & { places: { role: string; place: number }[] }>();
    for (const { cast, role, place, performer, standing } of staging.casting) {
      if (performer === null || standing !== "cast" || !roles.has(role)) continue;
      const key = `${cast}\n${performer}`;
      const clash = bodies.get(key) ?? { performer, cast, scene: scene.code, places: [] };
      clash.places.push({ role, place });
      bodies.set(key, clash);
    }
    found.push(...[...bodies.values()].filter((clash) => clash.places.length > 1));
  }
  return found;
};
