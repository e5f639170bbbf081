import type { PlainDate, WallMinute } from "#lib/calendar/plainDate";
import { showWall } from "#lib/calendar/showDay";
import type { Skill } from "#lib/labour/skills";
import type { EngineMaker, Interval } from "#lib/levelling/problem";
import { toAxis } from "#lib/planning/axis";
import { axisOf } from "#lib/planning/axisOf";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { dayOnAxis, milestoneMeant, milestoneWall } from "./dates";
import type { Options } from "./options";
import { counted, sum } from "./told";

export interface MakerHours {
  readonly maker: string;
  readonly trade: string;
  /** Productive minutes of her ordinary hours, without what is kept back for the repertoire. */
  readonly left: Minutes;
  /** The same in standard minutes of the skill, at her pace. */
  readonly worth: Minutes;
  /** Productive minutes the plan gives to the skill, and to other work and fittings. */
  readonly planned: Minutes;
  readonly other: Minutes;
}

export interface HoursLeft {
  readonly skill: Skill;
  readonly milestone: string;
  readonly until: WallMinute;
  /** Standard minutes of the skill on garments due by then. */
  readonly needed: Minutes;
  readonly makers: readonly MakerHours[];
}

/** Hours of one skill that are left before a milestone, and those that are needed. */
export const hoursLeft = (plan: StagingPlan, today: PlainDate, skill: Skill, milestone: string | null): HoursLeft => {
  const { staging, problem, answer } = plan;
  const meant = milestoneMeant(staging, milestone, "dress parade");
  const until = milestoneWall(meant);
  const axis = axisOf(plan);
  const span = { start: dayOnAxis(axis, today), end: toAxis(axis, until) };
  const due = new Map(plan.garmentStates.map((state) => [state.garment, state.due]));
  const index = problem.skills.indexOf(skill);
  const makers = problem.makers.flatMap((maker, at): MakerHours[] => {
    const pace = maker.pace[index] ?? 0;
    if (pace === 0) return [];
    const mine = answer.plan.placed.flatMap((placed) => {
      const place = placed?.makers.find((one) => one.maker === at);
      if (!place) return [];
      const worked = placed!.stretches.length > 0 ? placed!.stretches : [placed!];
      return [{ own: place.skill === index, minutes: productive(maker, worked, span, true) }];
    });
    const left = productive(maker, [span], span, false);
    return [
      {
        maker: maker.id,
        trade: staging.makers[at]!.trade,
        left: Math.round(left / 1000),
        worth: Math.round((left * pace) / 1_000_000),
        planned: Math.round(sum(mine.filter(({ own }) => own).map(({ minutes }) => minutes)) / 1000),
        other: Math.round(sum(mine.filter(({ own }) => !own).map(({ minutes }) => minutes)) / 1000),
      },
    ];
  });
  const isDue = (garment: string) => due.get(garment)! <= until;
  const tasks = plan.tasks.filter((task) => task.skill === skill && (task.garments.length === 0 || task.garments.some(isDue)));
  const fittings = skill === "fit" ? plan.fittings.filter(({ garment }) => isDue(garment)) : [];
  return { skill, milestone: meant.code, until, needed: sum([...tasks, ...fittings].map(({ minutes }) => minutes)), makers };
};

/** Minutes x speed of a maker's calendar in the intervals, within the span. */
const productive = ({ calendar }: EngineMaker, intervals: readonly Interval[], span: Interval, overtime: boolean): number =>
  sum(
    intervals.flatMap(({ start, end }) =>
      calendar
        .filter((stretch) => overtime || !stretch.overtime)
        .map((stretch) => Math.max(0, Math.min(end, stretch.end, span.end) - Math.max(start, stretch.start, span.start)) * stretch.speed),
    ),
  );

export const answerHoursLeft = ({ plan, today }: Asked, options: Options): Answer => {
  const data = hoursLeft(plan, today, (options.text("skill") ?? "net") as Skill, options.text("before"));
  const { staging } = plan;
  const skill = words(staging.production.words).skills[data.skill];
  const milestone = staging.milestones.find(({ code }) => code === data.milestone)!;
  const name = new Map(staging.makers.map((maker) => [maker.code, maker.name]));
  const [worth, left] = [sum(data.makers.map((maker) => maker.worth)), sum(data.makers.map((maker) => maker.left))];
  const [planned, other] = [sum(data.makers.map((maker) => maker.planned)), sum(data.makers.map((maker) => maker.other))];
  const short = data.needed - worth;
  return {
    says: [
      `${skill}: ${showHours(data.needed)} are needed before ${milestone.name}, ${showWall(data.until)}.`,
      data.makers.length === 0
        ? "Nobody has the skill."
        : `${counted(data.makers.length, "maker")} with the skill would have ${showHours(worth)} of it left if they did nothing else` +
          `${short > 0 ? `: ${showHours(short)} too few` : ""}.`,
      `In this plan they give ${showHours(planned)} to it and ${showHours(other)} to other work and fittings; ` +
        `${showHours(Math.max(0, left - planned - other))} of ${showHours(left)} stay free.`,
    ],
    tables: [
      {
        title: "By maker",
        headings: ["maker", "trade", "left", "worth in the skill", "planned on it", "planned on other work", "free"],
        rows: data.makers.map((maker) => [
          name.get(maker.maker) ?? maker.maker,
          maker.trade,
          showHours(maker.left),
          showHours(maker.worth),
          showHours(maker.planned),
          showHours(maker.other),
          showHours(Math.max(0, maker.left - maker.planned - maker.other)),
        ]),
      },
    ],
    reasons: [
      `Left: ordinary hours from ${today} to the milestone, without absences and without what is kept back for the repertoire, ` +
        "times the productive share. Worth: the same at the maker's pace in the skill.",
      "Needed: standard hours of the tasks of that skill on garments due by then, with the set-ups that batches share counted once.",
      "No overtime is counted as left.",
    ],
    data,
  };
};
