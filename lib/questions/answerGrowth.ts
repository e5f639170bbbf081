import { showDay } from "#lib/calendar/showDay";
import { showLength } from "#lib/units/showLength";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { milestoneMeant } from "./dates";
import { outgrowing } from "./growth";
import type { Options } from "./options";
import { counted, listed } from "./told";

export const answerGrowth = ({ plan: { staging } }: Asked, options: Options): Answer => {
  const opening = milestoneMeant(staging, options.text("before"), "opening");
  const data = outgrowing(staging, opening.date);
  const name = new Map(staging.performers.map((performer) => [performer.code, performer.name]));
  const labels = words(staging.production.words).measurements;
  const { lengths } = staging.production;
  const who = [...new Set(data.outgrown.map(({ performer }) => name.get(performer) ?? performer))];
  return {
    says: [
      data.students === 0
        ? "No student is under age: nobody grows."
        : who.length === 0
          ? `Nobody, as far as it is known, before ${opening.name}, ${showDay(opening.date)}.`
          : `Before ${opening.name}, ${showDay(opening.date)}: ${listed(who)}.`,
      ...(data.unknown.length > 0
        ? [
            `Not known of ${counted(data.unknown.length, "student")}: ${listed(data.unknown.map((code) => name.get(code) ?? code))}. Measure again at least four weeks after the last sheet.`,
          ]
        : []),
    ],
    tables: [
      {
        title: "Outgrown",
        headings: ["student", "measurement", "sheet of", "grows by the opening", "in hand", "garments"],
        rows: data.outgrown.map((one) => [
          name.get(one.performer) ?? one.performer,
          labels[one.measurement],
          showDay(one.taken),
          showLength(one.grows, lengths),
          showLength(one.allowed, lengths),
          listed(one.garments),
        ]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "Growth goes on as it went between a student's two newest sheets; sheets less than four weeks apart say nothing.",
      "In hand: two fingers, 3.5 cm, round the body (growth room, an account of dance costumes for children); a hem or a tuck of 5 cm along it (common practice, no source).",
      "Say nothing of it to a child; ask a chaperone, and let out before the fitting.",
    ],
    data,
  };
};
