import type { PlainDate } from "#lib/calendar/plainDate";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import type { LevellingProblem } from "#lib/levelling/problem";
import { planStaging } from "#lib/planning/planStaging";
import type { Answer, Asked } from "#lib/questions/answer";
import { readOptions } from "#lib/questions/options";
import { questionMeant } from "#lib/questions/registry";
import type { Staging } from "#lib/staging/staging";
import { seedStaging, TODAY } from "../seed/plannedFolder";

export { TODAY } from "../seed/plannedFolder";

let read: Promise<Staging> | null = null;

/** The small staging, with whatever a test changes in it. */
export const small = async (change: (staging: Staging) => Partial<Staging> = () => ({})): Promise<Staging> => {
  read ??= seedStaging("small");
  const staging = await read;
  return { ...staging, ...change(staging) };
};

/** The small staging with only these lines of its piece list. */
export const only = (...codes: readonly string[]) =>
  small(({ pieces }) => ({ pieces: codes.map((code) => pieces.find((piece) => piece.code === code)!) }));

/** A staging ready to be asked; every plan made on the way is judged by the checker. */
export const askable = async (staging: Staging, rounds = 5, today: PlainDate = TODAY): Promise<Asked> => {
  const relevel = (problem: LevellingProblem, some: number | null) => {
    const answer = level(problem, { seed: 1, rounds: some ?? rounds, stop: () => false });
    const wrong = checkPlan(problem, answer.plan);
    if (wrong.length > 0) throw new Error(`The checker refuses a plan: ${JSON.stringify(wrong[0])}`);
    return answer;
  };
  const replan = (changed: Staging) => planStaging(changed, { today, level: (problem) => relevel(problem, null) });
  return { plan: await replan(staging), today, replan, relevel, glance: (problem) => relevel(problem, 0) };
};

/** Asks by number as the command line does. */
export const ask = async (number: number, asked: Asked, given: Readonly<Record<string, string>> = {}): Promise<Answer> => {
  const question = questionMeant(String(number));
  if (!question.ok || question.value.answer === null) throw new Error(`Question ${number} is not answered.`);
  const options = readOptions(question.value.options, new Map(Object.entries(given)), asked.plan.staging);
  if (!options.ok) throw new Error(options.error);
  return question.value.answer(asked, options.value);
};
