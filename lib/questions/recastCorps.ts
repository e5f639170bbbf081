import { wallMinute } from "#lib/calendar/clock";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Recast } from "#lib/casting/castCell";
import { recast } from "#lib/casting/recast";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { type CastingEffect, castingEffect } from "#lib/whatif/castingEffect";

/** Who dances a place now, and who would; null: somebody new of the same size group. */
export interface RecastPlace {
  readonly cast: string;
  readonly place: number;
  readonly from: string | null;
  readonly to: string | null;
  readonly effect: CastingEffect;
}

/** Which places of a role are recast, to whom, and on which day. */
export interface RecastAsked {
  readonly role: string;
  readonly place: number | null;
  readonly performer: string | null;
  readonly day: PlainDate;
}

/** The first role of the corps that is cast; null when there is none. */
export const corpsRole = ({ staging: { roles, casting } }: StagingPlan): string | null =>
  roles.find(({ code, kind }) => kind === "corps" && casting.some(({ role }) => role === code))?.code ?? null;

/** What each recast place does by itself: garments on which the plan has begun by that day are altered, the others made for the new body. */
export const recastCorps = (plan: StagingPlan, { role, place, performer, day }: RecastAsked): readonly RecastPlace[] => {
  const { staging } = plan;
  const begun = begunBy(plan, day);
  return staging.casting
    .filter((row) => row.role === role && row.standing === "cast" && (place === null || row.place === place) && row.performer !== performer)
    .map((row): RecastPlace => {
      const change: Recast = {
        cast: row.cast,
        role,
        place: row.place,
        standing: "cast",
        performers: performer === null ? [] : [performer],
      };
      const effect = castingEffect(plan, recast(staging, [change]), begun);
      return { cast: row.cast, place: row.place, from: row.performer, to: performer, effect };
    });
};

/** Garments with a task that the plan has put before a day. */
export const begunBy = ({ tasks }: StagingPlan, day: PlainDate): ReadonlySet<string> => {
  const morning = wallMinute(day, 0);
  return new Set(tasks.filter(({ start }) => start !== null && start < morning).flatMap(({ garments }) => garments));
};
