import type { Scene } from "#lib/casting/casting";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";

/** One thing worn in one scene by one body. */
export interface Worn {
  readonly scene: string;
  readonly role: string;
  readonly costume: string;
}

/** Where a change is made. Common practice, no source: under a minute in the wings, up to five in a booth beside the stage, over five upstairs. */
export type ChangePlace = "wings" | "booth" | "dressing room";

/** A body that comes on in another costume than it went off in. */
export interface CostumeChange {
  readonly cast: string;
  /** Null: nobody is cast yet, and the place is meant. */
  readonly performer: string | null;
  readonly place: number;
  readonly from: Worn;
  readonly to: Worn;
  /** From the end of the one scene to the start of the other; 0 when it goes straight on, or changes within a scene. */
  readonly minutes: Minutes;
  readonly where: ChangePlace;
  /** An interval, or the end of an act, lies between. */
  readonly overInterval: boolean;
}

/** Up to so many minutes it is a quick change, to be rigged and rehearsed: common practice, no source. */
export const QUICK_MINUTES = 5;

const WINGS_MINUTES = 1;

export const isQuick = ({ minutes }: Pick<CostumeChange, "minutes">): boolean => minutes <= QUICK_MINUTES;

export const placeOfChange = (minutes: Minutes): ChangePlace =>
  minutes < WINGS_MINUTES ? "wings" : minutes <= QUICK_MINUTES ? "booth" : "dressing room";

interface Body {
  readonly cast: string;
  readonly performer: string | null;
  readonly place: number;
  readonly worn: (Worn & { readonly at: Scene })[];
}

/**
 * Every change of costume, cast by cast in the order of the casting, then in the order of the evening. A performer who dances two roles is
 * one body. Where a body is wanted twice at one time there is no change but a clash, which the casting tells.
 */
export const costumeChanges = (staging: Pick<Staging, "casting" | "scenes" | "appearances">): readonly CostumeChange[] =>
  bodiesOf(staging).flatMap(({ cast, performer, place, worn }) => {
    const evening = worn.toSorted((a, b) => a.at.starts - b.at.starts);
    return evening.slice(1).flatMap((to, index): readonly CostumeChange[] => {
      const from = evening[index]!;
      const between = to.at.starts - (from.at.starts + from.at.minutes);
      const within = from.scene === to.scene && from.role === to.role;
      if (from.costume === to.costume || (between < 0 && !within)) return [];
      const minutes = within ? 0 : between;
      const overInterval = from.at.act !== to.at.act;
      return [{ cast, performer, place, from: wornOf(from), to: wornOf(to), minutes, where: placeOfChange(minutes), overInterval }];
    });
  });

const wornOf = ({ scene, role, costume }: Worn): Worn => ({ scene, role, costume });

const bodiesOf = ({ casting, scenes, appearances }: Pick<Staging, "casting" | "scenes" | "appearances">): readonly Body[] => {
  const sceneOf = new Map(scenes.map((scene) => [scene.code, scene]));
  const bodies = new Map<string, Body>();
  for (const { cast, role, place, performer, standing } of casting) {
    if (standing !== "cast") continue;
    const key = JSON.stringify(performer === null ? [cast, role, place] : [cast, performer]);
    const body = bodies.get(key) ?? { cast, performer, place, worn: [] };
    for (const each of appearances) {
      const at = sceneOf.get(each.scene);
      if (each.role === role && at) body.worn.push({ scene: each.scene, role, costume: each.costume, at });
    }
    bodies.set(key, body);
  }
  return [...bodies.values()];
};
