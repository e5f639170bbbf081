import { addDays, dayNumber, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import { SKILLS, type Skill } from "#lib/labour/skills";
import type { Maker } from "#lib/labour/workroom";
import { showHours } from "#lib/units/hours";
import { words } from "#lib/words/words";
import type { ProductionView } from "../../../../_data/stagingPlan";

export interface MakerRow {
  readonly code: string;
  readonly name: string;
  readonly trade: string;
  readonly employment: string;
  /** With the pace where it is not the standard one. */
  readonly skills: readonly { readonly skill: Skill; readonly name: string }[];
  /** Ordinary hours of a week. */
  readonly week: string;
  /** Hours planned, and free, in the next four weeks; null without a plan. */
  readonly load: { readonly planned: string; readonly free: string; readonly over: boolean } | null;
  /** When they are next away; empty when they are not. */
  readonly away: string;
}

const WEEKS = 4;

export const makerRows = ({
  prepared: { staging },
  plan,
  today,
}: Pick<ProductionView, "prepared" | "plan" | "today">): readonly MakerRow[] => {
  const usage = words(staging.production.words);
  const monday = plainDate(mondayOf(dayNumber(today)));
  const end = addDays(monday, WEEKS * 7);
  return staging.makers.map((maker) => {
    const cells = plan?.load.filter(({ by, code, week }) => by === "maker" && code === maker.code && week >= monday && week < end) ?? [];
    const sum = (of: (cell: (typeof cells)[number]) => number) => cells.reduce((minutes, cell) => minutes + of(cell), 0);
    const [planned, free] = [sum((cell) => cell.planned), sum((cell) => cell.free)];
    return {
      code: maker.code,
      name: maker.name,
      trade: maker.trade,
      employment: usage.employment[maker.employment],
      skills: SKILLS.filter((skill) => maker.skills[skill] !== undefined).map((skill) => ({
        skill,
        name: usage.skills[skill] + (maker.skills[skill] === 1000 ? "" : ` ${(maker.skills[skill] ?? 0) / 10}%`),
      })),
      week: showHours(maker.hours.reduce((minutes, { from, to }) => minutes + to - from, 0)),
      load: plan && { planned: showHours(planned), free: showHours(free), over: planned > free },
      away: nextAway(maker, staging.absences, today),
    };
  });
};

const nextAway = ({ code, starts, ends }: Maker, absences: ProductionView["prepared"]["staging"]["absences"], today: PlainDate): string => {
  if (starts !== null && starts > today) return `comes ${showDay(starts)}`;
  if (ends !== null && ends < today) return `left ${showDay(ends)}`;
  const next = absences.filter(({ maker, to }) => maker === code && to >= today).toSorted((a, b) => (a.from < b.from ? -1 : 1))[0];
  if (next) return `${showDay(next.from)}${next.to === next.from ? "" : ` to ${showDay(next.to)}`}${next.reason && `, ${next.reason}`}`;
  return ends === null ? "" : `leaves ${showDay(ends)}`;
};
