import type { WallMinute } from "#lib/calendar/plainDate";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Minutes } from "#lib/units/quantities";

/** Where a piece of work stands in a plan. */
export interface Standing {
  /** Code of the maker or fitter; null when it has none. */
  readonly who: string | null;
  readonly start: WallMinute | null;
  readonly end: WallMinute | null;
}

/** A task or a fitting that stands elsewhere in the later plan: another maker, another time, or in only one of the two. */
export interface Move {
  readonly key: string;
  readonly name: string;
  readonly garments: readonly string[];
  readonly kind: "task" | "fitting";
  /** Null: it is new, or falls away. */
  readonly before: Standing | null;
  readonly after: Standing | null;
}

/** A garment that ends at another time than before. */
export interface Shift {
  readonly garment: string;
  readonly before: WallMinute | null;
  readonly after: WallMinute | null;
  readonly minutesLateBefore: Minutes;
  readonly minutesLateAfter: Minutes;
}

/** What one plan of a production has become in another. */
export interface PlanMoves {
  /** By time of where they were, or are. */
  readonly moved: readonly Move[];
  /** How many stand just as they stood. */
  readonly stayed: number;
  /** Garments that end sooner, and later; those of one plan only are neither. */
  readonly sooner: readonly Shift[];
  readonly later: readonly Shift[];
  readonly overtimeBefore: Minutes;
  readonly overtimeAfter: Minutes;
}

/** Two plans of one production laid over each other: work is the same when its key is. */
export const planMoves = (before: StagingPlan, after: StagingPlan): PlanMoves => {
  const [was, is] = [workOf(before), workOf(after)];
  const keys = [...new Set([...was.keys(), ...is.keys()])];
  const moved = keys.flatMap((key): Move[] => {
    const [from, to] = [was.get(key), is.get(key)];
    if (from && to && same(from.standing, to.standing)) return [];
    const { name, garments, kind } = (to ?? from)!;
    return [{ key, name, garments, kind, before: from?.standing ?? null, after: to?.standing ?? null }];
  });
  const time = ({ before: from, after: to }: Move) => from?.start ?? to?.start ?? 0;
  const shifts = shiftsOf(before, after);
  return {
    moved: moved.sort((a, b) => time(a) - time(b) || (a.key < b.key ? -1 : 1)),
    stayed: keys.length - moved.length,
    sooner: shifts.filter((shift) => ended(shift.after) < ended(shift.before)),
    later: shifts.filter((shift) => ended(shift.after) > ended(shift.before)),
    overtimeBefore: before.answer.measures.overtimeMinutes,
    overtimeAfter: after.answer.measures.overtimeMinutes,
  };
};

interface Work {
  readonly name: string;
  readonly garments: readonly string[];
  readonly kind: Move["kind"];
  readonly standing: Standing;
}

const workOf = (plan: StagingPlan): ReadonlyMap<string, Work> => {
  const tasks = plan.tasks.map(({ key, name, garments, maker, start, end }): [string, Work] => [
    key,
    { name, garments, kind: "task", standing: { who: maker, start, end } },
  ]);
  const fittings = plan.fittings.map(({ node, name, garment, fitter, start, end }): [string, Work] => [
    plan.nodes[node]!.key,
    { name, garments: [garment], kind: "fitting", standing: { who: fitter, start, end } },
  ]);
  return new Map([...tasks, ...fittings]);
};

const same = (a: Standing, b: Standing) => a.who === b.who && a.start === b.start && a.end === b.end;

/** What has no end ends last. */
const ended = (minute: WallMinute | null): number => minute ?? Number.POSITIVE_INFINITY;

const shiftsOf = (before: StagingPlan, after: StagingPlan): readonly Shift[] => {
  const was = new Map(before.garmentStates.map((state) => [state.garment, state]));
  return after.garmentStates.flatMap((state): Shift[] => {
    const from = was.get(state.garment);
    if (!from || from.finish === state.finish) return [];
    return [
      {
        garment: state.garment,
        before: from.finish,
        after: state.finish,
        minutesLateBefore: from.minutesLate,
        minutesLateAfter: state.minutesLate,
      },
    ];
  });
};
