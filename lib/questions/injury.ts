import type { PlainDate } from "#lib/calendar/plainDate";
import type { CastPlace } from "#lib/casting/casting";
import { recast } from "#lib/casting/recast";
import { bodyOf } from "#lib/measurements/body";
import type { Measurement } from "#lib/measurements/measurement";
import type { Staging } from "#lib/staging/staging";
import { LENGTH_PER_MM, type Length, type Minutes } from "#lib/units/quantities";
import { castingEffect, type RecastKind } from "#lib/whatif/castingEffect";
import type { Asked } from "./answer";
import { begunBy } from "./recastCorps";

/** How far a begun garment must go for the cover's body. */
export type Reach = "as it is" | "rows of bars" | "bars and side seams" | "beyond letting out";

export interface CoverGarment {
  readonly garment: string;
  readonly cover: string;
  readonly kind: RecastKind;
  readonly minutes: Minutes;
  readonly fittings: number;
  /** Largest girth of the cover beyond that of the injured dancer; negative when she is smaller everywhere. Null: not measured. */
  readonly larger: Length | null;
  readonly reach: Reach | null;
}

export interface Injury {
  readonly performer: string;
  readonly day: PlainDate;
  /** Places with nobody to dance them. */
  readonly uncovered: readonly CastPlace[];
  readonly garments: readonly CoverGarment[];
  /** Garments late when all is planned again with the covers, and those late before. */
  readonly late: readonly string[];
  readonly lateBefore: readonly string[];
}

const GIRTHS: readonly Measurement[] = ["bust", "waist", "highHip", "hip", "girth"];

/** Two or three rows of bars give 5 cm, side seams 8 cm more: common practice, no source. */
const CM = 10 * LENGTH_PER_MM;
const REACH: readonly (readonly [Length, Reach])[] = [
  [0, "as it is"],
  [5 * CM, "rows of bars"],
  [13 * CM, "bars and side seams"],
];

/** What it takes to put the covers on for somebody who is injured. */
export const injury = async ({ plan, replan }: Pick<Asked, "plan" | "replan">, performer: string, day: PlainDate): Promise<Injury> => {
  const { staging } = plan;
  const danced = staging.casting.filter((row) => row.performer === performer && row.standing === "cast");
  const covers = danced.map((row) => ({ row, cover: coverOf(staging, row) }));
  const uncovered = covers.filter(({ cover }) => cover === null).map(({ row }) => row);
  const changed = recast(
    staging,
    covers.flatMap(({ row: { cast, role, place }, cover }) =>
      cover === null
        ? []
        : [
            { cast, role, place, standing: "cast" as const, performers: [cover] },
            { cast, role, place, standing: "cover" as const, performers: [] },
          ],
    ),
  );
  const effect = castingEffect(plan, changed, begunBy(plan, day));
  const after = await replan(changed);
  const late = (of: typeof plan) => of.garmentStates.filter(({ minutesLate }) => minutesLate > 0).map(({ garment }) => garment);
  return {
    performer,
    day,
    uncovered,
    garments: effect.garments.flatMap(({ garment, kind, minutes }): CoverGarment[] => {
      const cover = garment.wearers[0]?.performer ?? null;
      if (cover === null || !covers.some((one) => one.cover === cover)) return [];
      const larger = largerBy(staging, performer, cover);
      const fittings = effect.fittings.filter((one) => one.garment === garment.number && one.change !== "removed").length;
      return [{ garment: garment.number, cover, kind, minutes, fittings, larger, reach: larger === null ? null : reachOf(larger) }];
    }),
    late: late(after),
    lateBefore: late(plan),
  };
};

/** Who stands by for the place; else who dances it in another cast. */
const coverOf = ({ casting }: Staging, { cast, role, place, performer }: CastPlace): string | null => {
  const others = casting.filter((row) => row.role === role && row.place === place && row.performer !== null && row.performer !== performer);
  const own = others.find((row) => row.standing === "cover" && row.cast === cast);
  return (own ?? others.find((row) => row.standing === "cast"))?.performer ?? null;
};

const largerBy = (staging: Staging, performer: string, cover: string): Length | null => {
  const body = (code: string) =>
    bodyOf(staging, { performer: code, sizeGroup: staging.performers.find((one) => one.code === code)!.sizeGroup }).values;
  const [was, is] = [body(performer), body(cover)];
  const differences = GIRTHS.flatMap((name) => (was[name] === undefined || is[name] === undefined ? [] : [is[name] - was[name]]));
  return differences.length === 0 ? null : Math.max(...differences);
};

const reachOf = (larger: Length): Reach => REACH.find(([most]) => larger <= most)?.[1] ?? "beyond letting out";
