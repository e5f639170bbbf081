import { minutesWithin, totalMinutes } from "#lib/labour/intervals";
import type { Interval, LevellingProblem, Plan } from "#lib/levelling/problem";
import type { MinorUnits, Minutes } from "#lib/units/quantities";

/** What a maker's part of a plan comes to. */
export interface MakerCost {
  readonly maker: string;
  /** Clock minutes worked and fitted, overtime among them. */
  readonly minutes: Minutes;
  readonly overtime: Minutes;
  readonly cost: MinorUnits;
}

/** Clock minutes worked and fitted at each maker's rate, overtime at hers for overtime; rounded once for each maker. */
export const makerCosts = (problem: LevellingProblem, plan: Plan): readonly MakerCost[] => {
  const worked = problem.makers.map(() => ({ all: 0, over: 0 }));
  for (const placed of plan.placed)
    for (const { maker } of placed?.makers ?? []) {
      const stretches = placed!.stretches.length > 0 ? placed!.stretches : [placed!];
      worked[maker]!.all += totalMinutes(stretches);
      worked[maker]!.over += overtimeOf(problem, maker, stretches);
    }
  return problem.makers.map(({ id, costPerHour, overtimeCostPerHour }, maker) => {
    const { all, over } = worked[maker]!;
    return { maker: id, minutes: all, overtime: over, cost: Math.round(((all - over) * costPerHour + over * overtimeCostPerHour) / 60) };
  });
};

/** Clock minutes of overtime in the work of a maker. */
export const overtimeOf = ({ makers }: LevellingProblem, maker: number, stretches: readonly Interval[]): Minutes => {
  const overtime = makers[maker]!.calendar.filter((stretch) => stretch.overtime);
  return stretches.reduce((sum, stretch) => sum + minutesWithin(stretch, overtime), 0);
};
