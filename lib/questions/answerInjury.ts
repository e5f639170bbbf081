import { addDays, dayNumber, weekdayOf } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import { showLength } from "#lib/units/showLength";
import type { Answer, Asked } from "./answer";
import { injury } from "./injury";
import type { Options } from "./options";
import { counted, listed, sum } from "./told";

const TUESDAY = 2;

export const answerInjury = async (asked: Asked, options: Options): Promise<Answer> => {
  const { plan, today } = asked;
  const { staging } = plan;
  const name = new Map(staging.performers.map((performer) => [performer.code, performer.name]));
  const performer = options.text("performer") ?? principal(plan.staging);
  if (performer === null) return { says: ["No principal is cast."], tables: [], reasons: [], data: null };
  const day = options.day("day") ?? nextTuesday(today);
  const data = await injury(asked, performer, day);
  const { lengths } = staging.production;
  const who = (code: string) => name.get(code) ?? code;
  const roles = new Map(staging.roles.map((role) => [role.code, role.name]));
  const worse = data.late.filter((garment) => !data.lateBefore.includes(garment));
  const more = sum(data.garments.map(({ minutes }) => minutes));
  return {
    says: [
      data.garments.length === 0
        ? `Nothing is made for ${who(performer)} that a cover could wear.`
        : `${who(performer)} is out from ${showDay(day)}: ${counted(data.garments.length, "garment")} for ${listed([...new Set(data.garments.map(({ cover }) => who(cover)))])}, ` +
          `${more < 0 ? `${showHours(-more)} less` : showHours(more)} of work more and ${counted(sum(data.garments.map(({ fittings }) => fittings)), "fitting")}.`,
      ...(data.uncovered.length > 0
        ? [`Nobody covers ${listed(data.uncovered.map(({ role, cast }) => `${roles.get(role) ?? role} (${cast} cast)`))}.`]
        : []),
      worse.length === 0
        ? data.late.length === 0
          ? "Dress is still made: planned again with the covers, nothing is late."
          : `No garment becomes late by it; ${counted(data.late.length, "garment was", "garments were")} late already.`
        : `Dress is not made as things stand: ${listed(worse)} would be late.`,
    ],
    tables: [
      {
        title: "What the covers can wear",
        headings: ["garment", "cover", "what", "work more", "fittings", "larger by", "reach"],
        rows: data.garments.map((one) => [
          one.garment,
          who(one.cover),
          one.kind === "refit" ? "altered" : "cut for the cover",
          one.minutes < 0 ? `${showHours(-one.minutes)} less` : showHours(one.minutes),
          String(one.fittings),
          one.larger === null ? "not measured" : one.larger <= 0 ? "nowhere" : showLength(one.larger, lengths),
          one.reach ?? "",
        ]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "A garment on which the plan has begun by that day is altered, as its construction lists it; one not begun is cut for the cover.",
      "Reach, by the largest girth: two or three rows of bars give 5 cm, side seams 8 cm more; beyond that a gusset, a panel or a new bodice (common practice, no source).",
      "Whether dress is made: all is planned again from today with the covers cast, garments made anew. The one who is injured may need rest, not a new date: ask before anything is cut.",
    ],
    data,
  };
};

const principal = ({ roles, casting }: Asked["plan"]["staging"]): string | null => {
  const codes = roles.filter(({ kind }) => kind === "principal").map(({ code }) => code);
  return (
    casting.find(({ role, standing, performer }) => codes.includes(role) && standing === "cast" && performer !== null)?.performer ?? null
  );
};

const nextTuesday = (today: PlainDate): PlainDate => addDays(today, (TUESDAY - weekdayOf(dayNumber(today)) + 7) % 7);
