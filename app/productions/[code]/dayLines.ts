import { showClock, splitWall } from "#lib/calendar/clock";
import { addDays } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { nameOfMaker, nameOfPerformer } from "../../_data/names";

/** One line of a day: who, and what. */
export interface DayLine {
  readonly who: string;
  readonly what: string;
}

export interface NextDay {
  readonly date: PlainDate;
  readonly lines: readonly DayLine[];
}

interface Entry extends DayLine {
  readonly date: PlainDate;
  /** Orders first, then work by maker, then fittings by time. */
  readonly order: readonly [number, number];
}

const entriesOf = ({ staging, ...plan }: StagingPlan): readonly Entry[] => {
  const makers = staging.makers.map((maker) => maker.code);
  const orders = plan.purchase.lines.flatMap((line): Entry[] =>
    line.orderBy === null ? [] : [{ date: line.orderBy, order: [0, 0], who: "Last day to order", what: line.name }],
  );
  const tasks = plan.tasks.flatMap((task): Entry[] => {
    if (task.start === null || task.maker === null) return [];
    const { date, minute } = splitWall(task.start);
    const what = `${task.name.toLowerCase()} ${task.garments.join(", ")}`;
    return [{ date, order: [1 + makers.indexOf(task.maker), minute], who: nameOfMaker(staging, task.maker), what }];
  });
  const fittings = plan.fittings.flatMap((fitting): Entry[] => {
    if (fitting.start === null) return [];
    const { date, minute } = splitWall(fitting.start);
    const who = `${showClock(minute)} ${nameOfPerformer(staging, fitting.performer)}`;
    return [{ date, order: [1 + makers.length, minute], who, what: `${fitting.name.toLowerCase()} ${fitting.garment}` }];
  });
  return [...orders, ...tasks, ...fittings];
};

/** What must be ordered, is begun and is fitted in the seven days from `today`: one line for each maker, appointment and the orders. */
export const dayLines = (plan: StagingPlan, today: PlainDate): readonly NextDay[] => {
  const last = addDays(today, 6);
  const entries = entriesOf(plan)
    .filter(({ date }) => today <= date && date <= last)
    .toSorted((a, b) => a.date.localeCompare(b.date) || a.order[0] - b.order[0] || a.order[1] - b.order[1] || a.what.localeCompare(b.what));
  return [...grouped(entries, ({ date }) => date)].map(([date, own]) => ({
    date,
    lines: [...grouped(own, ({ who }) => who)].map(([who, alike]) => ({ who, what: alike.map(({ what }) => what).join("; ") })),
  }));
};

const grouped = <Key>(entries: readonly Entry[], keyOf: (entry: Entry) => Key): ReadonlyMap<Key, readonly Entry[]> => {
  const groups = new Map<Key, Entry[]>();
  for (const entry of entries) groups.set(keyOf(entry), [...(groups.get(keyOf(entry)) ?? []), entry]);
  return groups;
};
