import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import type { LevellingProblem } from "#lib/levelling/problem";
import { planStaging } from "#lib/planning/planStaging";
import type { Asked } from "#lib/questions/answer";
import { readOptions } from "#lib/questions/options";
import { questionMeant } from "#lib/questions/registry";
import type { Staging } from "#lib/staging/staging";
import type { AskCommand } from "./askCommand";
import { answerJson, answerLines, questionLines } from "./askLines";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";
import { searching, timeText } from "./searching";

/** Answers one question about a folder, or lists the questions; the exit code. */
export const ask = async (command: AskCommand, output: Output): Promise<number> => {
  const read = await readFolder(command.folder);
  if (!read.ok) {
    output.words(faultLines(read.error));
    return 2;
  }
  const staging = read.value;
  const usage = staging.production.words;
  if (command.question === null) {
    output.data(questionLines(usage, command.json));
    return 0;
  }
  const refused = (why: string): number => {
    output.words(why);
    return 2;
  };
  const meant = questionMeant(command.question);
  if (!meant.ok) return refused(meant.error);
  const question = meant.value;
  if (question.answer === null) return refused(`Not answered yet: ${question.number}. ${question.asks[usage]}`);
  const options = readOptions(question.options, command.options, staging);
  if (!options.ok) return refused(options.error);
  output.words(`Planning ${staging.production.title}${timeText(command)} ...`);
  const answer = await question.answer(await askedOf(command, staging), options.value);
  output.data(command.json ? answerJson(question, usage, answer) : answerLines(question, usage, answer));
  return 0;
};

/** The folder planned, and ways to plan it otherwise: in as many rounds as the plan took, so that they can be compared with it. */
const askedOf = async (command: AskCommand, staging: Staging): Promise<Asked> => {
  const options = searching(command, staging.production);
  const { today } = options;
  const plan = await planStaging(staging, options);
  const levelled = (problem: LevellingProblem, rounds: number) => level(problem, { seed: command.seed, rounds, stop: () => false });
  const relevel: Asked["relevel"] = (problem, rounds) => {
    const answer = levelled(problem, rounds ?? plan.answer.rounds);
    const wrong = checkPlan(problem, answer.plan);
    if (wrong.length > 0) throw new Error(`A plan breaks ${wrong.length} of its own rules; first: ${JSON.stringify(wrong[0])}`);
    return answer;
  };
  const glance: Asked["glance"] = (problem) => levelled(problem, 0);
  return { plan, today, relevel, glance, replan: (changed) => planStaging(changed, { today, level: (problem) => relevel(problem, null) }) };
};
