import { showDay } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import type { RecastKind } from "#lib/whatif/castingEffect";
import type { Answer, Asked } from "./answer";
import type { Options } from "./options";
import { corpsRole, type RecastPlace, recastCorps } from "./recastCorps";
import { counted, listed, sum } from "./told";

const KINDS: Readonly<Record<RecastKind, string>> = {
  added: "comes",
  dropped: "goes",
  recut: "made for the other body",
  refit: "altered",
  wearers: "fitted to others too",
  turn: "another turn in its set",
};

export const answerRecast = ({ plan, today }: Asked, options: Options): Answer => {
  const { staging } = plan;
  const role = options.text("role") ?? corpsRole(plan);
  if (role === null) return { says: ["There is no corps: no role of the kind is cast."], tables: [], reasons: [], data: null };
  const day = options.day("day") ?? today;
  const data = recastCorps(plan, { role, place: options.whole("place"), performer: options.text("performer"), day });
  const name = new Map(staging.performers.map((performer) => [performer.code, performer.name]));
  const who = (code: string | null) => (code === null ? "somebody new" : (name.get(code) ?? code));
  const hours = (minutes: number) =>
    minutes === 0 ? "no more work" : minutes < 0 ? `${showHours(-minutes)} less work` : `${showHours(minutes)} more work`;
  const fitted = (one: RecastPlace) => one.effect.fittings.filter(({ change }) => change !== "removed");
  const title = staging.roles.find(({ code }) => code === role)?.name ?? role;
  return {
    says: [
      data.length === 0
        ? `Nobody dances ${title} whom this would replace.`
        : `${title}, recast on ${showDay(day)}${data.length === 1 ? "" : `, ${counted(data.length, "place")}, each by itself`}: ` +
          `${hours(sum(data.map(({ effect }) => effect.minutes)))}, and ` +
          `${counted(sum(data.map((one) => fitted(one).length)), "fitting")} of ${showHours(sum(data.flatMap((one) => fitted(one).map(({ minutesAfter }) => minutesAfter))))} for whoever comes in.`,
      ...data.map((one) => `${who(one.to)} for ${who(one.from)}: ${hours(one.effect.minutes)}, ${counted(fitted(one).length, "fitting")}.`),
    ],
    tables: [
      {
        title: "Garments",
        headings: ["place", "from", "to", "garment", "what", "work", "fittings"],
        rows: data.flatMap((one) =>
          one.effect.garments.map(({ garment, kind, minutes }) => [
            `${one.cast}, place ${one.place}`,
            who(one.from),
            who(one.to),
            garment.number,
            KINDS[kind],
            hours(minutes),
            listed(
              fitted(one)
                .filter((fitting) => fitting.garment === garment.number)
                .map((fitting) => fitting.name),
            ),
          ]),
        ),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "A garment on which the plan has begun by that day is altered, as its construction lists it; one not begun is made for the other body, and only the difference counts.",
      "Likely standard work, before batches. Somebody new has the figures of the size group until measured.",
    ],
    data: data.map(({ effect, ...place }) => ({
      ...place,
      minutes: effect.minutes,
      fittingMinutes: effect.fittingMinutes,
      garments: effect.garments.map(({ garment, kind, minutes, fittingMinutes }) => ({
        garment: garment.number,
        kind,
        minutes,
        fittingMinutes,
      })),
    })),
  };
};
