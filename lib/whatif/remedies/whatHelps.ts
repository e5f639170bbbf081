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

/** So many plans are searched for at once, where the search is in a thread of its own. What is found does not depend on it. */
const AT_ONCE = 2;

/** Tries each remedy from the plan as it stands. `onStep` hears how many of all plans are made. */
export const whatHelps = async (
  plan: StagingPlan,
  remedies: readonly Remedy[],
  options: TryOptions,
  onStep: (made: number, all: number) => unknown = () => {},
): Promise<WhatHelps> => {
  const all = remedies.length + 1;
  const found: RemedyAnswer[] = [];
  let unchanged = figuresOf(plan);
  let made = 0;
  onStep(made, all);
  const waiting = [null, ...remedies].entries();
  const search = async () => {
    for (const [at, remedy] of waiting) {
      if (remedy === null) unchanged = figuresOf(await untouched(plan, options));
      else found[at - 1] = await answerOf(plan, remedy, options);
      onStep(++made, all);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, search));
  return { now: figuresOf(plan), unchanged, answers: found.sort(byHelp) };
};

const answerOf = async (plan: StagingPlan, remedy: Remedy, options: TryOptions): Promise<RemedyAnswer> => {
  const tried = await tryRemedy(plan, remedy, options);
  const asks = remedyText(plan.staging, remedy);
  return tried.ok ? { remedy, asks, tried: tried.value, refused: null } : { remedy, asks, tried: null, refused: tried.error };
};

const byHelp = (a: RemedyAnswer, b: RemedyAnswer): number => {
  if (a.tried === null || b.tried === null) return Number(a.tried === null) - Number(b.tried === null);
  return compareFigures(a.tried.figures, b.tried.figures);
};
