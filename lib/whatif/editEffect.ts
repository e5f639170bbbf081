import { breakDown } from "#lib/breakdown/breakDown";
import type { GarmentWork } from "#lib/breakdown/work";
import { dayNumber } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { garmentsOf } from "#lib/casting/garments";
import type { Garment } from "#lib/casting/wardrobe";
import { makerCalendar } from "#lib/labour/calendars";
import type { Change } from "#lib/staging/change";
import { compareStagings } from "#lib/staging/compare";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import { garmentPairs } from "./garmentPairs";
import { type GoodsEffect, goodsEffect } from "./goodsEffect";

interface Beside<Value> {
  readonly before: Value;
  readonly after: Value;
}

/** What an edit does, before it is kept and before the workroom is levelled again. */
export interface EditEffect {
  /** Cell by cell. */
  readonly changes: readonly Change[];
  readonly added: readonly Garment[];
  readonly gone: readonly Garment[];
  /** Numbers, after, of garments that stay and are made or worn otherwise. */
  readonly otherwise: readonly string[];
  /** Likely minutes of standard work on all garments. */
  readonly work: Beside<Minutes>;
  /** How many fittings the garments ask for. */
  readonly fittings: Beside<number>;
  /** Ordinary minutes of the makers at their pace, from today to the last milestone. */
  readonly free: Beside<Minutes>;
  readonly goods: GoodsEffect;
}

/** Effect of going from one staging to another, as of a day. */
export const editEffect = (before: Staging, after: Staging, today: PlainDate): EditEffect => {
  const was = brokenDown(before);
  const is = brokenDown(after);
  const pairs = garmentPairs(was, is);
  const workBefore = byGarment(was.works);
  const workAfter = byGarment(is.works);
  return {
    changes: compareStagings(before, after),
    added: pairs.flatMap((pair) => (pair.before === null ? [pair.after] : [])),
    gone: pairs.flatMap((pair) => (pair.after === null ? [pair.before] : [])),
    otherwise: pairs.flatMap(({ before: old, after: now }) => {
      if (!old || !now) return [];
      const same = content(old, workBefore.get(old.number)) === content(now, workAfter.get(now.number));
      return same ? [] : [now.number];
    }),
    work: { before: minutesOf(was.works), after: minutesOf(is.works) },
    fittings: { before: fittingsOf(was.works), after: fittingsOf(is.works) },
    free: { before: freeMinutes(before, today), after: freeMinutes(after, today) },
    goods: goodsEffect(was, is),
  };
};

const brokenDown = (staging: Staging) => {
  const garments = garmentsOf(staging);
  return { staging, garments, works: breakDown(staging, garments) };
};

const byGarment = (works: readonly GarmentWork[]) => new Map(works.map((work) => [work.garment, work]));

/** Everything about a garment but its number. */
const content = (garment: Garment, work: GarmentWork | undefined): string =>
  JSON.stringify([{ ...garment, number: "", name: "" }, work && { ...work, garment: "", notes: [] }]);

const minutesOf = (works: readonly GarmentWork[]): Minutes =>
  works.reduce((sum, { operations }) => sum + operations.reduce((part, { minutes: [, likely] }) => part + likely, 0), 0);

const fittingsOf = (works: readonly GarmentWork[]): number => works.reduce((sum, { fittings }) => sum + fittings.length, 0);

const freeMinutes = ({ makers, absences, milestones }: Staging, today: PlainDate): Minutes => {
  const last = milestones
    .map(({ date }) => date)
    .toSorted()
    .at(-1);
  if (last === undefined || last < today) return 0;
  const days = { from: dayNumber(today), to: dayNumber(last) + 1 };
  const ordinary = makers.flatMap((maker) => makerCalendar(maker, absences, days).filter(({ overtime }) => !overtime));
  return Math.round(ordinary.reduce((sum, { start, end, speed }) => sum + ((end - start) * speed) / 1000, 0));
};
