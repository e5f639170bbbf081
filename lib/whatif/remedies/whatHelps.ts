import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Remedy } from "./remedy";
import { remedyText } from "./remedyText";
import { compareFigures, figuresOf, type PlanFigures, type Tried, type TryOptions, tryRemedy, untouched } from "./tryRemedy";

/** What would help a plan, the best first. */
export interface WhatHelps {
  /** The plan as it stands. */
  readonly now: PlanFigures;
  /** The same plan searched on for as long as each of those below, with nothing changed: what they are to be compared with. */
  readonly unchanged: PlanFigures;
  readonly answers: readonly RemedyAnswer[];
}

export interface RemedyAnswer {
  readonly remedy: Remedy;
  /** The remedy in words. */
  readonly asks: string;
  /** Null when it cannot be tried; then `refused` says why. */
  readonly tried: Tried | null;
  readonly refused: string | null;
}

/** Tries each remedy from the plan as it stands. `onStep` hears how many of all plans are made. */
export const whatHelps = async (
  plan: StagingPlan,
  remedies: readonly Remedy[],
  options: TryOptions,
  onStep: (made: number, all: number) => unknown = () => {},
): Promise<WhatHelps> => {
  const all = remedies.length + 1;
  onStep(0, all);
  const unchanged = figuresOf(await untouched(plan, options));
  const answers: RemedyAnswer[] = [];
  for (const remedy of remedies) {
    onStep(answers.length + 1, all);
    const tried = await tryRemedy(plan, remedy, options);
    const asks = remedyText(plan.staging, remedy);
    answers.push(tried.ok ? { remedy, asks, tried: tried.value, refused: null } : { remedy, asks, tried: null, refused: tried.error });
  }
  onStep(all, all);
  return { now: figuresOf(plan), unchanged, answers: answers.sort(byHelp) };
};

const byHelp = (a: RemedyAnswer, b: RemedyAnswer): number => {
  if (a.tried === null || b.tried === null) return Number(a.tried === null) - Number(b.tried === null);
  return compareFigures(a.tried.figures, b.tried.figures);
};
