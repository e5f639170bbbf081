import loadHighs from "highs";
import { highsProgram } from "#lib/cutting/fewest/highsProgram";
import { type CutAnswer, type CutQuestion, questionName } from "#lib/cutting/question";
import { checkAnswer, searchCuts } from "#lib/cutting/searchCuts";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { withFoundCuts } from "#lib/planning/withFoundCuts";

/** Answers change what is bought, and that what is asked: after so many rounds it is left at that. */
const ROUNDS = 3;

/** The plan with its cutting searched for, each question so long at most. @throws when a search gives an illegal plan: a defect */
export const proveCuts = async (plan: StagingPlan, seconds: number): Promise<StagingPlan> => {
  const open = highsProgram(await loadHighs());
  const answers = new Map<string, CutAnswer>();
  const asked = new Set<string>();
  let better = plan;
  for (let round = 0; round < ROUNDS; round++) {
    const questions = better.cutting.flatMap(({ question }) => (question && !asked.has(questionName(question)) ? [question] : []));
    if (questions.length === 0) break;
    for (const question of questions) {
      asked.add(questionName(question));
      answers.set(questionName(question), searched(question, seconds, open));
    }
    better = withFoundCuts(plan, (question) => answers.get(questionName(question)) ?? null);
  }
  return better;
};

const searched = (question: CutQuestion, seconds: number, open: ReturnType<typeof highsProgram>): CutAnswer => {
  const until = performance.now() + seconds * 1000;
  const search = searchCuts(question, open);
  let step = search.next();
  while (!step.done && step.value.used > step.value.bound && performance.now() < until) step = search.next();
  search.return(step.value);
  const faults = checkAnswer(question, step.value);
  if (faults.length > 0) throw new Error(`An illegal cutting plan: ${faults.join(" ")}`);
  return step.value;
};
