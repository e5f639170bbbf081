import { wallMinute } from "#lib/calendar/clock";
import { addDays, dayNumber, isoDate, mondayOf, plainDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { answerTo } from "#lib/fittings/answer";
import { type Missing, missingFor } from "#lib/fittings/missing";
import { fittingsIn, type Visit, type VisitFitting, visitsIn } from "#lib/fittings/visits";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import { type FittingClash, fittingClashes } from "#lib/questions/fittingClashes";
import type { AuthorizedCompany } from "#prisma/authorized";
import { type KeptAnswer, listAnswers } from "#prisma/fittings/answers";
import { listMarks, markedAs, type TaskMark } from "#prisma/work/marks";
import { productionHref, slug } from "../../../_data/address";
import type { ProductionView } from "../../../_data/stagingPlan";

/** A fitting with what is known of it today. */
export interface SeenFitting extends VisitFitting {
  readonly answer: KeptAnswer | null;
  readonly missing: Missing;
  readonly clashes: readonly FittingClash["with"][];
  /** Address of its own page. */
  readonly href: string;
}

export interface SeenVisit extends Omit<Visit, "fittings"> {
  readonly fittings: readonly SeenFitting[];
}

export const fittingHref = (code: string, { garment, part }: Pick<VisitFitting, "garment" | "part">): string =>
  `${productionHref(code)}/fittings/${slug(garment)}/${slug(part)}`;

export interface SeenFittings {
  readonly visits: readonly SeenVisit[];
  /** Those the plan has no time for. */
  readonly unplaced: readonly SeenFitting[];
}

/** Every fitting of a plan, with the newest answers, what is missing, and what it runs into. */
export const seenFittings = (
  view: ProductionView,
  plan: StagingPlan,
  { answers, marks }: { readonly answers: readonly KeptAnswer[]; readonly marks: ReadonlyMap<string, TaskMark> },
): SeenFittings => {
  const isDone = (task: PlannedTask) => marks.get(markedAs(task))?.state === "done";
  const missing = missingFor(view.prepared, plan, wallMinute(view.today, 0), isDone);
  const clashes = fittingClashes(plan);
  const seen = (fitting: VisitFitting): SeenFitting => ({
    ...fitting,
    answer: answerTo(answers, fitting),
    missing: missing(fitting.node),
    clashes: clashes
      .filter((one) => one.garment === fitting.garment && one.name === fitting.name && one.performer === fitting.performer)
      .map((one) => one.with),
    href: fittingHref(plan.staging.production.code, fitting),
  });
  return {
    visits: visitsIn(plan).map((visit) => ({ ...visit, fittings: visit.fittings.map(seen) })),
    unplaced: fittingsIn(plan)
      .filter(({ start }) => start === null)
      .map(seen),
  };
};

/** What was said of the fittings and tasks of a production so far. */
export const loadSaid = async (company: AuthorizedCompany, code: string) => {
  const [answers, marks] = await Promise.all([listAnswers(company, code), listMarks(company, code)]);
  return { answers, marks };
};

/** Monday of the week asked for; else that of the first visit from today on, or of the last one. */
export const weekAsked = (
  given: string | readonly string[] | undefined,
  visits: readonly Pick<Visit, "date">[],
  today: PlainDate,
): PlainDate => {
  const asked = isoDate(typeof given === "string" ? given : "");
  const next = visits.find(({ date }) => date >= today) ?? visits.at(-1);
  return plainDate(mondayOf(dayNumber(asked ?? next?.date ?? today)));
};

/** The visits of one week, by day. */
export const daysOf = <V extends Pick<Visit, "date">>(
  visits: readonly V[],
  week: PlainDate,
): readonly { readonly date: PlainDate; readonly visits: readonly V[] }[] =>
  Array.from({ length: 7 }, (_, at) => addDays(week, at)).flatMap((date) => {
    const own = visits.filter((visit) => visit.date === date);
    return own.length === 0 ? [] : [{ date, visits: own }];
  });
