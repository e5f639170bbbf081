import { splitWall } from "#lib/calendar/clock";
import type { PlainDate, WallMinute } from "#lib/calendar/plainDate";
import type { FittingKind } from "#lib/constructions/construction";
import type { PlannedFitting, StagingPlan } from "#lib/planning/stagingPlan";

/** One fitting of a visit. */
export interface VisitFitting extends PlannedFitting {
  readonly kind: FittingKind;
  /** What the page of the fitting is found by: `toile`, or `toile~2` of the second wearer. */
  readonly part: string;
}

/** One appointment: a performer in the fitting room, for one or more garments. */
export interface Visit {
  /** Number in order of time. */
  readonly visit: number;
  readonly date: PlainDate;
  readonly start: WallMinute;
  readonly end: WallMinute;
  readonly performer: string;
  readonly fitter: string;
  readonly room: string;
  readonly fittings: readonly VisitFitting[];
}

type Planned = Pick<StagingPlan, "fittings" | "nodes" | "works">;

/** Every fitting of a plan with its kind, in node order: those without a time too. */
export const fittingsIn = ({ fittings, nodes, works }: Planned): readonly VisitFitting[] => {
  const workOf = new Map(works.map((work) => [work.garment, work]));
  return fittings.map((fitting) => {
    const node = nodes[fitting.node]!;
    const kind = workOf.get(fitting.garment)?.fittings.find(({ code }) => code === fitting.fitting)?.kind ?? "first";
    return { ...fitting, kind, part: node.key.slice(fitting.garment.length + 1) };
  });
};

/** The appointments of a plan in order of time. */
export const visitsIn = (plan: Planned): readonly Visit[] => {
  const visits = new Map<number, VisitFitting[]>();
  for (const fitting of fittingsIn(plan))
    if (fitting.visit !== null) visits.set(fitting.visit, [...(visits.get(fitting.visit) ?? []), fitting]);
  return [...visits]
    .sort(([a], [b]) => a - b)
    .map(([visit, all]) => {
      const fittings = all.toSorted((a, b) => a.start! - b.start! || a.node - b.node);
      const [first] = fittings as [VisitFitting, ...VisitFitting[]];
      const start = first.start!;
      return {
        visit,
        date: splitWall(start).date,
        start,
        end: Math.max(...fittings.map(({ end }) => end!)),
        performer: first.performer,
        fitter: first.fitter ?? "",
        room: first.room ?? "",
        fittings,
      };
    });
};
