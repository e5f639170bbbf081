import { showClock } from "#lib/calendar/clock";
import { showDay } from "#lib/calendar/showDay";
import { namesOf } from "#lib/planning/names";
import type { Answer, Asked } from "./answer";
import type { Options } from "./options";
import { counted } from "./told";
import { clockOf, workOfDay } from "./workOfDay";

export const answerWorkOfDay = ({ plan, today }: Asked, options: Options): Answer => {
  const day = options.day("day") ?? today;
  const data = workOfDay(plan, day);
  const names = namesOf(plan);
  const name = new Map(plan.staging.makers.map((maker) => [maker.code, maker.name]));
  const busy = data.filter(({ items }) => items.length > 0);
  const idle = data.filter(({ items }) => items.length === 0).map(({ maker }) => name.get(maker) ?? maker);
  const time = (wall: number) => showClock(clockOf(wall, day));
  return {
    says: [
      `${showDay(day)}: ${counted(busy.length, "person has", "people have")} work in the plan${idle.length > 0 ? `; nothing for ${idle.join(", ")}` : ""}.`,
    ],
    tables: [
      {
        title: "What, and what instead",
        headings: ["maker", "times", "work", "if the first stalls"],
        rows: busy.map(({ maker, items, instead }) => [
          name.get(maker) ?? maker,
          items.map(({ start, end }) => `${time(start)}-${time(end)}`).join(" "),
          [...new Set(items.map(({ node }) => names.node(node)))].join("; "),
          instead === null
            ? "nothing else can be begun"
            : `${names.node(instead.node)}${instead.of === maker ? "" : ` (planned for ${name.get(instead.of) ?? instead.of})`}`,
        ]),
      },
    ],
    reasons: [
      "Read from the plan. Instead: the next task in her own list, else the earliest of anybody's that she has the skill for, all of whose earlier steps are " +
        "done by then and whose goods are there.",
      "Whoever has hours but no work here keeps them for the repertoire, or has no ready task that the plan gives her.",
    ],
    data,
  };
};
